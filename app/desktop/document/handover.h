// What is handed over, for callers that include Qt: there, `emit` is a macro, and core's namespace of that
// name cannot be written.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::desktop {

/// The stylesheet of these variants, in the project's unit, for the markup that the project has: what
/// `tenter-cli stylesheet` prints. Empty, with problems, if the markup given is no row; problems may come
/// beside it.
std::optional<std::string> stylesheetOf(const project::Project& project,
                                        const std::vector<std::size_t>& variants,
                                        project::Problems& problems);
/// `clamp(…)` or a plain length: the font size of `role` in band `band`.
std::string fontSizeOf(const project::Project& project, std::size_t variant, std::size_t band,
                       const std::string& role);
/// The row alone as one HTML page, its pictures and fonts within: what `tenter-cli page` prints.
std::string pageOf(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                   text::ParagraphStore& store, project::Problems& problems);
/// A saved page with the stylesheet for the row that it has: what `tenter-cli page --around` prints.
std::string dressedPageOf(const project::Project& project, std::size_t variant,
                          const std::filesystem::path& folder, const std::filesystem::path& savedPage,
                          text::ParagraphStore& store, project::Problems& problems);
/// Every size by the page's width, band by band: what `tenter-cli solve --follow viewport` starts from.
/// `problems` tells where sizes come out otherwise.
project::Project sizesByPage(const project::Project& project, text::ParagraphStore& store,
                             const text::BreakProfile& profile, project::Problems& problems);
/// True if some part of `role` is a link or holds one.
bool carriesLinks(const project::Project& project, const std::string& role);

}  // namespace tenter::desktop
