// Runs every check over all widths of a row.
#pragma once

#include <vector>

#include "checks/candidates.h"
#include "checks/finding.h"
#include "checks/options.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::checks {

/// A finding of a check that the project silences, with the reason.
struct Silenced {
    Finding finding;
    std::string reason;
};

struct Checked {
    std::vector<Finding> findings;   ///< errors first, then by share
    std::vector<Silenced> silenced;  ///< sorted the same way
};

/// All findings of variant `variant`. Takes little longer than two sweeps.
Checked checkAll(const project::Project& project, project::VariantRef variant, text::ParagraphStore& store,
                 const Options& options = {});

/// The findings of variant `variant` that are not silenced, errors first, then by share.
std::vector<Finding> check(const project::Project& project, project::VariantRef variant,
                           text::ParagraphStore& store, const Options& options = {});

/// What the check of `finding` proposes against it, in the order of the check. `finding` is one of `check`
/// with the same arguments. Nothing is tried: see remedy/remedies.h.
std::vector<Candidate> candidatesFor(const project::Project& project, std::size_t variant,
                                     const Finding& finding, text::ParagraphStore& store,
                                     const Options& options = {});

}  // namespace tenter::checks
