// The results that leave the program (stylesheet, page, font size).
#pragma once

#include <QStringList>
#include <filesystem>
#include <optional>
#include <string>

#include "emit/stylesheet.h"
#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::desktop {

/// The stylesheet of these variants in the project's unit, for the project's markup; the same text as
/// `tenter-cli stylesheet` prints. Returns nothing if the imported markup is not a row; `problems` says why.
/// It can also contain warnings beside a result.
std::optional<std::string> stylesheetOf(const project::Project& project,
                                        const std::vector<std::size_t>& variants,
                                        project::Problems& problems);
/// The form of a stylesheet that a person chose.
struct SheetChoice {
    units::Unit unit = units::Unit::Rem;    ///< Rem or Px
    std::optional<project::Follow> follow;  ///< unset: as the project has it
    emit::SheetForm form;
    bool lateFonts = false;  ///< with fallback fonts for web fonts
};
/// The stylesheet in that form; the same text as `tenter-cli stylesheet` prints with these options. `notes`,
/// if not null, gets sentences about what the fallback fonts change. Can run on any thread with its own
/// `store`.
std::optional<std::string> stylesheetOf(const project::Project& project,
                                        const std::vector<std::size_t>& variants, const SheetChoice& choice,
                                        text::ParagraphStore& store, project::Problems& problems,
                                        QStringList* notes);
/// The project with ramps that follow the chosen width.
project::Project followingChoice(const project::Project& project, const std::vector<std::size_t>& variants,
                                 const SheetChoice& choice, text::ParagraphStore& store,
                                 project::Problems& problems);
/// The HTML of the row for Tenter’s stylesheet; the same text as `tenter-cli markup` prints.
std::string markupOf(const project::Project& project, std::size_t variant);
/// The classes that the elements of the row need, on one line.
std::string classesOf(const project::Project& project, std::size_t variant);
/// The font size of `role` around viewport width `width` (CSS px) as CSS: `clamp(…)` or a length.
std::string fontSizeOf(const project::Project& project, std::size_t variant, double width,
                       const std::string& role);
/// One HTML page with the row only, pictures and fonts embedded; the same text as `tenter-cli page` prints.
std::string pageOf(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                   text::ParagraphStore& store, project::Problems& problems);
/// A saved page with the stylesheet for the row that it has: what `tenter-cli page --around` prints.
std::string savedPageWithStylesheet(const project::Project& project, std::size_t variant,
                                    const std::filesystem::path& folder,
                                    const std::filesystem::path& savedPage, text::ParagraphStore& store,
                                    project::Problems& problems);
/// The project with every font size set by page width, band by band; `tenter-cli solve --follow viewport`
/// starts from it. `problems` lists the widths at which sizes differ from before.
project::Project sizesByPageWidth(const project::Project& project, text::ParagraphStore& store,
                                  const text::BreakProfile& profile, project::Problems& problems);
/// True if any part of `role` is a link or contains one.
bool containsLinks(const project::Project& project, const std::string& role);

}  // namespace tenter::desktop
