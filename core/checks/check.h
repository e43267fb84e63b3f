// A check: a question about a row that is answered over all widths.
#pragma once

#include <string_view>

#include "checks/candidates.h"
#include "checks/cause.h"

namespace tenter::checks {

/// A check. Each is defined in a file of its own, as `extern const Check …Check`, and listed in checks.def.
/// It has either `run` or `compare`.
struct Check {
    /// The name that findings give and that project files silence: `late-font`. Lower-case words joined by
    /// hyphens. Two checks may share a name.
    std::string_view name;
    /// Adds the findings about one variant under one profile. Their check's name is filled in afterwards.
    void (*run)(const Subject& subject, Findings& out) = nullptr;
    /// True if the findings depend on where lines break: `run` is then called under each profile, and a
    /// finding says under which it holds.
    bool dependsOnBreaks = false;
    /// The same, comparing profiles. Called once, with at least two subjects.
    void (*compare)(const Subjects& subjects, Findings& out) = nullptr;
    /// Adds the changes that may remove one finding of this check. Null: nothing that the project holds can.
    void (*remedies)(Candidates& out) = nullptr;
};

}  // namespace tenter::checks
