// What a check reports.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"
#include "sweep/pieces.h"
#include "text/profile.h"
#include "wording/say.h"

namespace tenter::checks {

enum class Severity { Note, Warning, Error };

/// `note`, `warning` or `error`: as files and commands name it.
std::string_view word(Severity severity);
/// The same for people, in the language in use.
std::string title(Severity severity);
/// The severity that `word` names; empty for any other word.
std::optional<Severity> severityOf(std::string_view word);

/// The text of a finding in three sentences, without full stops. `what` may start in lower case.
struct Statement {
    std::string what;  ///< what is wrong and where: card and part, or widths
    std::string why;   ///< why it matters
    std::string fix;   ///< what to do; empty if nothing can be done
};

/// Break profiles, in the order of `text::profiles()`.
using Profiles = std::vector<const text::BreakProfile*>;

/// `statement` as one text. Unless `profiles` is empty it starts with the names of their browsers: `Firefox
/// only: …`.
std::string textOf(const Statement& statement, const Profiles& profiles = {});

/// One problem with one cause, however many cards and widths show it.
struct Finding {
    std::string check;
    Severity severity = Severity::Note;
    /// Identifies the cause among all findings of a variant. It changes if the severity does.
    std::string key = {};
    std::size_t row = 0;                    ///< index of the row in the project
    std::optional<project::PartRef> place;  ///< the worst
    std::vector<project::PartRef> places;   ///< all parts that show it, by card, then part
    /// Ranges of viewport widths in CSS px, rising, without overlaps. A range excludes its `from`, as a band
    /// does, unless it is the first of the project or consists of one width.
    std::vector<sweep::Interval> widths;
    double at = 0;        ///< viewport width of the worst place, a whole number if possible, CSS px
    double share = 0;     ///< 0 to 1, of the range of widths or of the audience's visits
    Statement statement;  ///< the sentences of `says`
    std::string says;     ///< `textOf(statement, profiles)`
    std::string source;   ///< standard or practice that calls it a problem
    Profiles profiles;    ///< those under which it holds; empty: all that were checked
};

/// Sentences that accompany every list of findings. `wording::say` translates them.
inline constexpr std::string_view caution = wording::noted(
    "Automated checks cover only a part of WCAG 2.2. They do not prove conformance. That needs a "
    "qualified audit, and local law can require more.");

}  // namespace tenter::checks
