// Tight fits: lines that another browser or platform may break differently. They are reported over a wide
// range, or where a different break would violate a wish. Measured: rounding in engines moves lines by 0.15 %
// or less.
#include <cmath>
#include <map>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "layout/inline_sizes.h"
#include "text/breaker.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// A part's lines at one width.
struct LaidOut {
    const text::Paragraph* paragraph = nullptr;
    text::LineQuery query;
    std::vector<text::Line> lines;
};

/// The lines at `width` if the column were narrower by the share `narrower`.
LaidOut linesAt(const Subject& subject, const CheckedPart& part, double width, double narrower = 0) {
    const layout::IntervalPlan& interval = subject.row.at(width);
    const layout::PartPlan& plan = interval.part(part.place);
    LaidOut out;
    out.paragraph = plan.paragraph.get();
    out.query = layout::textInlineSizes<double>(interval.roles[plan.role], *plan.paragraph,
                                                layout::inlineSizesAt(interval, width))
                    .query;
    out.query.available *= 1 - narrower;
    text::breakLines(*out.paragraph, out.query, subject.row.profile(), out.lines);
    return out;
}

/// The line count of a part at `width` if its words are wider by the slack of a tight fit.
std::uint32_t linesIfWider(const Subject& subject, const CheckedPart& part, double width) {
    return static_cast<std::uint32_t>(linesAt(subject, part, width, text::tightSlack).lines.size());
}

/// The line count that a different break would give, if it is above `wished` and the computed counts there
/// and just beside are not; else 0.
std::uint32_t linesTooMany(const Subject& subject, const CheckedPart& part, const sweep::Interval& tight,
                           std::size_t wished) {
    for (const sweep::Piece& piece : part.pieces.pieces)
        if (piece.from <= tight.to + sweep::leastStep && piece.to >= tight.from - sweep::leastStep &&
            piece.lines > wished)
            return 0;
    std::uint32_t most = 0;
    // The start itself may be the last width of the band below.
    for (const double width : {(tight.from + tight.to) / 2, tight.to})
        most = std::max(most, linesIfWider(subject, part, width));
    return most > wished ? most : 0;
}

/// The last word of clusters [first, end).
std::string lastWordOf(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end) {
    std::uint32_t from = end;
    while (from > first && !paragraph.clusters()[from - 1].space)
        --from;
    return paragraph.utf8(from, end);
}

/// The first word from cluster `first` on.
std::string wordFrom(const text::Paragraph& paragraph, std::uint32_t first) {
    std::uint32_t end = first;
    while (end < paragraph.clusters().size() && !paragraph.clusters()[end].space)
        ++end;
    return paragraph.utf8(first, end);
}

/// A wish on lines that would be violated if tight fits broke differently.
struct ViolatedWish {
    Cause cause;
    std::uint32_t lines = 0;  ///< with the different break, at the worst place
    std::size_t wished = 0;   ///< there
};

/// The tightest line of the cause's worst place.
std::string whatOf(const Subject& subject, const Cause& cause) {
    const CheckedPart part{cause.place, nullptr, nullptr, {}};
    // The width at which the window shows the finding.
    const double at = shownWidth(cause.there, cause.at, subject.least);
    const LaidOut laid = linesAt(subject, part, at);
    const std::string widths = atWidths(subject, cause.there);
    const std::string place = inWorstAndOthers(subject, cause);
    const auto line = std::ranges::min_element(laid.lines, {}, &text::Line::slack);
    if (line == laid.lines.end())
        return wording::say("%1, a line of %2 is a tight fit", {widths, worstAndOthers(subject, cause)});
    const double room = laid.query.available - line->width;
    const bool fits = room >= -text::fitTolerance && room <= line->width * (line->slack + 1e-9);
    if (fits || line->next >= laid.paragraph->clusters().size())
        return wording::say("%1, the line that ends with %2 %3 has only about %4 of free space",
                            {widths, inQuotation(lastWordOf(*laid.paragraph, line->first, line->end)), place,
                             units::px(std::max(room, 0.0))});
    const double needed = laid.query.available / (1 - line->slack) - laid.query.available;
    return wording::say(
        "%1, the word %2 %3 would fit on the previous line with only about %4 more space",
        {widths, inQuotation(wordFrom(*laid.paragraph, line->next)), place, units::px(needed)});
}

/// A tight fit; `why` says what a different break leads to.
Description descriptionOf(const Subject& subject, const Cause& cause, const std::string& why,
                          const std::string& key) {
    return {Severity::Warning,
            wording::say("measured in two browsers"),
            {whatOf(subject, cause), why, changeSizeSlightly()},
            key};
}

void checkTightFits(const Subject& subject, Findings& out) {
    std::map<std::string, Cause> lasting;
    std::map<std::string, ViolatedWish> violated;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        const std::string& role = part.text->role;
        const auto wishes = project::wishRanges(subject.wishes, role, &project::RoleWishes::lines);
        const std::size_t forced = subject.row.band(0).part(part.place).paragraph->forcedLines();
        for (const sweep::Interval& tight : part.pieces.tight) {
            if (tight.to - tight.from > subject.limits().tightRun) {
                lasting[role].add(part.place, tight, tight.to - tight.from);
                continue;
            }
            for (const auto& wish : wishes) {
                const auto span = within(tight, wishedWidths(subject, wish));
                if (!span) continue;
                const std::size_t wished = std::max(static_cast<std::size_t>(wish.value), forced);
                const std::uint32_t lines = linesTooMany(subject, part, *span, wished);
                if (lines == 0) continue;
                ViolatedWish& found = violated[role];
                if (found.cause.add(part.place, *span, span->to - span->from)) {
                    found.lines = lines;
                    found.wished = wished;
                }
            }
        }
    }
    for (const auto& [role, cause] : lasting)
        report(out, cause,
               descriptionOf(subject, cause, wording::say("Another browser may break this line differently"),
                             role));
    for (const auto& [role, found] : violated)
        report(out, found.cause,
               descriptionOf(
                   subject, found.cause,
                   wording::say(
                       "Another browser may break this line differently, into %1; the wish is at most %2",
                       {lineCount(found.lines), lineCount(found.wished)}),
                   role + "-wish"));
}

void remedyTightFits(Candidates& out) {
    for (const std::string& role : out.roles()) {
        proposeSlightSizes(out, role);
        for (const double em : {0.002, -0.002, 0.004, -0.004, 0.006, -0.006})
            out.set(
                wording::say("Change the letter spacing of %1 by %2",
                             {roleText(role), units::figure(em, 3) + "\u00A0em"}),
                Candidates::Scope::Layout,
                [&](project::Settings& settings, std::size_t band) {
                    const auto& now = out.settings(band).text.find(role)->letterSpacing;
                    const units::Length spacing = now.value_or(units::Length());
                    if (spacing.isZero() || spacing.unit() == units::Unit::Em)
                        settings.text.of(role).letterSpacing = units::Length::em(spacing.value() + em);
                },
                "letter-spacing-of-" + role);
    }
    out.solveSizes();
}

}  // namespace

extern const Check tightFitCheck{
    .name = "tight-fit", .run = checkTightFits, .dependsOnBreaks = true, .remedies = remedyTightFits};

}  // namespace tenter::checks
