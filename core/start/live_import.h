// A project from a page or a stylesheet that is live, whoever wrote it.
#pragma once

#include "intake/own_project.h"
#include "start/page_project.h"

namespace tenter::start {

/// What is read: a page, or a stylesheet alone.
struct LiveSource : intake::OwnSource {
    bool isSheet = false;
};

/// The project of what Tenter wrote, as it was. Empty if it did not, or if no project can have its values,
/// which `problems` then names. `wantsFound`: also gives what the rules declare.
std::optional<Imported> importOwn(const LiveSource& source, bool wantsFound, text::ParagraphStore& store,
                                  project::Problems& problems);

/// An import, and whether Tenter wrote its source.
struct LiveImport {
    Imported import;
    bool isOwn = false;
};

/// The project of what Tenter wrote, as it was; of anything else by what its rules declare. Empty, with
/// problems, if there is no row.
std::optional<LiveImport> importLive(const LiveSource& source, bool wantsFound, text::ParagraphStore& store,
                                     project::Problems& problems);

}  // namespace tenter::start
