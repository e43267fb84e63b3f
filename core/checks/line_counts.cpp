// Headings and button labels with more lines than wished. Common practice, no source.
#include <algorithm>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Parts with more lines than wished.
struct TooManyLines {
    Cause cause;             ///< worst: the most lines, then the widest range
    std::size_t wished = 0;  ///< at the worst place
};

/// The parts of `role` that have more lines than wished and than the breaks in their text force.
TooManyLines linesOver(const Subject& subject, const char* role) {
    TooManyLines found;
    const auto wishes = project::wishRanges(subject.wishes, role, &project::RoleWishes::lines);
    for (const CheckedPart& part : subject.parts) {
        if (!part.is(role)) continue;
        const std::vector<sweep::Piece>& pieces = part.pieces.pieces;
        const std::size_t forced = subject.row.band(0).part(part.place).paragraph->forcedLines();
        for (std::size_t i = 0; i < pieces.size();) {
            std::size_t next = i + 1;
            while (next < pieces.size() && pieces[next].lines == pieces[i].lines)
                ++next;
            const sweep::Interval run{pieces[i].from, pieces[next - 1].to};
            for (const auto& wish : wishes) {
                const std::size_t wished = std::max(static_cast<std::size_t>(wish.value), forced);
                const auto span = within(run, wishedWidths(subject, wish));
                if (span && pieces[i].lines > wished &&
                    found.cause.add(part.place, *span, pieces[i].lines + (span->to - span->from) / 1e6))
                    found.wished = wished;
            }
            i = next;
        }
    }
    return found;
}

/// `from 591 to 629 px the button “Book” has 3 lines; the wish is at most 2 lines`.
std::string whatOf(const Subject& subject, const TooManyLines& found) {
    return wording::say("%1, %2 has %3; the wish is at most %4",
                        {atWidths(subject, found.cause.there), worstAndOthers(subject, found.cause),
                         lineCount(static_cast<std::size_t>(found.cause.worst)), lineCount(found.wished)});
}

void checkHeadingLines(const Subject& subject, Findings& out) {
    const TooManyLines found = linesOver(subject, "heading");
    if (!found.cause.any()) return;
    report(out, found.cause,
           {Severity::Warning,
            commonPractice(),
            {whatOf(subject, found), wording::say("It pushes the text below it down"),
             wording::say("Reduce its font size at these widths (Text › Font size), widen the column, or "
                          "shorten the heading")}});
}

void checkButtonLines(const Subject& subject, Findings& out) {
    const TooManyLines found = linesOver(subject, "button");
    if (!found.cause.any()) return;
    report(
        out, found.cause,
        {Severity::Warning,
         commonPractice(),
         {whatOf(subject, found), wording::say("It no longer looks like a button"),
          wording::say("Reduce its font size (Text › Font size) or its padding at these widths, or shorten "
                       "its text")}});
}

void remedyLines(Candidates& out) {
    for (const std::string& role : out.roles()) {
        proposeLetterSpacing(out, role);
        proposeSizes(out, role, Need::Room);
    }
    proposeTighterCards(out);
    proposeBreakpoints(out);
    proposeColumns(out, Need::Room);
    out.solveSizes();
}

void remedyButtonLines(Candidates& out) {
    for (const std::string& role : out.roles())
        for (const double factor : {0.75, 0.5})
            out.set(
                wording::say("Reduce the side padding of %1 to %2", {roleText(role), units::percent(factor)}),
                Candidates::Scope::Layout,
                [&](project::Settings& settings, std::size_t band) {
                    const project::Sides& now = out.settings(band).text.find(role)->padding;
                    project::Sides& padding = settings.text.of(role).padding;
                    if (now.left && !now.left->isZero()) padding.left = scaled(*now.left, factor);
                    if (now.right && !now.right->isZero()) padding.right = scaled(*now.right, factor);
                },
                "padding-of-" + role);
    remedyLines(out);
}

}  // namespace

extern const Check headingLinesCheck{
    .name = "heading-lines", .run = checkHeadingLines, .dependsOnBreaks = true, .remedies = remedyLines};
extern const Check buttonLinesCheck{
    .name = "button-lines", .run = checkButtonLines, .dependsOnBreaks = true, .remedies = remedyButtonLines};

}  // namespace tenter::checks
