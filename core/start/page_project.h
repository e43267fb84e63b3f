// A new project for the row of a page.
#pragma once

#include "markup/adopt.h"
#include "project/project.h"
#include "start/page_findings.h"
#include "start/page_piece.h"
#include "text/paragraph_store.h"

namespace tenter::start {

/// A project for the row of a page, and what to check in it.
struct PageProject {
    project::Project project;
    std::vector<PageNote> notes;                            ///< what to check; see PageLook
    std::vector<FoundElement> found;                        ///< what the page declares; see PageLook
    [[nodiscard]] std::vector<std::string> report() const;  ///< the sentences of the notes
};

/// The project into which the row of a page is imported if there is no other: its name is the title of the
/// page, its class that of the row, its settings those of the page (page_look.h). `markup::adopt` puts the
/// row into it. If the page has no CSS for the row, columns by the number of cards and usual settings. If no
/// row is found, a project with one column and usual settings.
PageProject projectForPage(const markup::PageToAdopt& page, text::ParagraphStore& store);

/// An import and what it is from.
struct Imported {
    project::Project project;
    std::vector<std::string>
        report;  ///< one sentence each: first what to check (`Warning: …`), then what was found
    std::vector<PageNote> notes;  ///< what a project cannot hold, and where that is written
    std::vector<FoundElement> found;
};

/// A new project with the row of a page, with what the page declares. Empty, with problems, if no row is
/// found.
std::optional<Imported> importPage(const markup::PageToAdopt& page, text::ParagraphStore& store,
                                   project::Problems& problems);

/// A new project with the row of a page: `projectForPage` and `markup::adopt` with both reports. Empty, with
/// problems, if no row is found.
std::optional<markup::Adopted> newProjectFrom(const markup::PageToAdopt& page, text::ParagraphStore& store,
                                              project::Problems& problems);

/// The sentences of an import with those about the look of the page: cautions first.
std::vector<std::string> withLook(std::vector<std::string> report, const std::vector<std::string>& look);

}  // namespace tenter::start
