// What a check reports.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sweep/pieces.h"
#include "text/profile.h"

namespace tenter::checks {

enum class Severity { Note, Warning, Error };

/// `note`, `warning` or `error`.
std::string_view word(Severity severity);
/// The severity that `word` names; empty for any other word.
std::optional<Severity> severityOf(std::string_view word);

/// One thing to mend: one cause, however many cards and widths it shows at.
struct Finding {
    std::string check;
    Severity severity = Severity::Note;
    std::optional<std::size_t> card;  ///< where it is worst, in the project's cards
    std::optional<std::size_t> part;  ///< and in the card's parts
    /// Viewport widths in CSS px, rising, apart. A span starts past its `from`, as a band does, but where it
    /// is the range's first or the span's only one.
    std::vector<sweep::Interval> widths;
    double at = 0;       ///< a viewport width at which it is worst, a whole one if there is any. CSS px
    double share = 0;    ///< 0 to 1: of the range of widths, or of an audience's visits
    std::string says;    ///< what it is, why it matters, what would mend it
    std::string source;  ///< by which source it is a fault
    const text::BreakProfile* only = nullptr;  ///< the one profile of several it is found under; null: all
};

/// What stands beside every list of findings.
inline constexpr std::string_view caution =
    "Automated checks cover a part of WCAG 2.2 and are no claim of conformance; local law and a qualified "
    "audit decide.";

}  // namespace tenter::checks
