// Remedies: changes of a project that were tried and remove a finding.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "checks/checks.h"
#include "project/trial.h"
#include "remedy/effects.h"
#include "remedy/moves.h"

namespace tenter::remedy {

/// A change that removes a finding, or at least halves its widths, and what else it does: the other findings
/// that it removes, adds or widens. Those that it adds or widens are less severe than the finding.
struct Remedy : Effects {
    std::string label;      ///< what it does, in the words of the window: `Align parts of neighbouring cards`
    std::string where;      ///< what it changes: `in the band 591–930 px (2 columns)`; may be empty
    bool removes = true;    ///< false: the finding stays at less than half of its widths
    double share = 0;       ///< of the finding before, 0 to 1
    double shareAfter = 0;  ///< of what stays of it, 0 to 1
    Move move;
    project::Project project;  ///< with the remedy applied, without a text test
};

struct Options {
    checks::Options checks;  ///< `untried` is ignored
    /// The findings are those of the project under this text test. Remedies that change texts of cards are
    /// then left out.
    std::optional<project::Trial> trial = std::nullopt;
    std::stop_token cancellation = {};
    std::size_t most = 4;  ///< remedies to return
};

/// Remedies against `finding`, which is a finding of variant `variant` of `project` with the same options:
/// those with the fewest side effects first (findings that they add, then px that boxes move). Each was
/// applied to a copy of the project; the copy is valid (`project::validate`), has the finding no more or at
/// less than half of its widths, and has no new or wider finding that is an error or as severe as the
/// finding, in any variant. Empty if nothing was found, or if the work was cancelled.
std::vector<Remedy> remediesFor(const project::Project& project, std::size_t variant,
                                const checks::Finding& finding, text::ParagraphStore& store,
                                const Options& options = {});

}  // namespace tenter::remedy
