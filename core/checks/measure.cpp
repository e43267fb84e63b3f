// Lines with too many or too few characters. WCAG 2.2 SC 1.4.8 (AAA);
// R. Bringhurst, The Elements of Typographic Style § 2.1.2 (not verified).
#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/line_layouts.h"
#include "checks/phrases.h"
#include "checks/run_joiner.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Parts whose measure is beyond a wish.
struct MeasureBeyond {
    Cause cause;
    double limit = 0;  ///< the wish at the worst place, characters
};

/// The visible characters of clusters [first, end): a soft hyphen is visible only at the end of a line.
std::uint32_t visibleCharacters(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end) {
    std::uint32_t count = paragraph.graphemes(first, end);
    for (std::uint32_t i = first; i + 1 < end; ++i)
        if (paragraph.text()[paragraph.clusters()[i].begin] == u'\u00AD') --count;
    return count;
}

/// Calls `found` with each span of the piece and the longest line of the part there in characters, the last
/// line excluded.
void forEachLongestLine(const Subject& subject, const CheckedPart& part, const sweep::Piece& piece,
                        const std::function<void(const sweep::Interval&, double)>& found) {
    const text::Paragraph& paragraph = paragraphIn(subject, part, piece);
    forEachLineLayout(subject, part, piece,
                      [&](const sweep::Interval& span, const std::vector<std::uint32_t>& starts) {
                          std::uint32_t longest = 0;
                          for (std::size_t i = 0; i + 1 < starts.size(); ++i) {
                              // The space at the end of a line does not count.
                              std::uint32_t end = starts[i + 1];
                              while (end > starts[i] && paragraph.clusters()[end - 1].space)
                                  --end;
                              longest = std::max(longest, visibleCharacters(paragraph, starts[i], end));
                          }
                          found(span, longest);
                      });
}

/// The parts whose lines are longer (`over`) or shorter than wished. Two figures must be beyond the wish: the
/// characters that fit the column, which the solver uses too, and the characters of the real lines, which are
/// reported. The first is a quotient of two straight lines; it crosses the wish where their difference is 0.
MeasureBeyond measureBeyond(const Subject& subject, bool over) {
    MeasureBeyond found;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        const auto wishes = project::wishRanges(
            subject.wishes, part.text->role,
            over ? &project::RoleWishes::mostMeasure : &project::RoleWishes::leastMeasure);
        for (const auto& wish : wishes) {
            RunJoiner runs(sweep::leastStep, 0.0, [&](const sweep::Interval& run, double longest) {
                if (found.cause.add(part.place, run, over ? longest : -longest)) found.limit = wish.value;
            });
            for (const sweep::Piece& piece : part.pieces.pieces) {
                if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) continue;
                const auto cut = within(piece, wishedWidths(subject, wish));
                if (!cut) continue;
                const units::Linear more =
                    (piece.width * piece.graphemes - wish.value * piece.advance).from(cut->from - piece.from);
                const auto span = whereAbove(over ? more : -more, cut->from, cut->to);
                if (!span) continue;
                sweep::Piece there = piece;
                there.from = span->from;
                there.to = span->to;
                forEachLongestLine(subject, part, there, [&](const sweep::Interval& run, double longest) {
                    if (over ? longest > wish.value : longest < wish.value) runs.add(run, longest);
                });
            }
            runs.finish();
        }
    }
    return found;
}

void checkMeasure(const Subject& subject, Findings& out) {
    const auto [wide, most] = measureBeyond(subject, true);
    if (wide.any())
        report(out, wide,
               {Severity::Warning,
                "WCAG 2.2 SC 1.4.8 (AAA)",
                {wording::say("%1, lines of %2 hold up to %3 characters; the wish is at most %4 characters",
                              {atWidths(subject, wide.there), worstAndOthers(subject, wide),
                               units::figure(wide.worst, 0), units::figure(most, 0)}),
                 wording::say("The eye loses the start of the next line"),
                 wording::say("Use larger text, a narrower row, or one more column")},
                "long"});
    auto [narrow, least] = measureBeyond(subject, false);
    join(narrow.widths);
    if (narrow.any() && lengthOf(narrow.widths) >= subject.limits().leastRun)
        report(
            out, narrow,
            {Severity::Note,
             wording::say("R. Bringhurst, The Elements of Typographic Style § 2.1.2 (we did not verify this "
                          "section)"),
             {wording::say("%1, lines of %2 hold only %3 characters; the wish is at least %4 characters",
                           {atWidths(subject, narrow.there), worstAndOthers(subject, narrow),
                            units::figure(-narrow.worst, 0), units::figure(least, 0)}),
              wording::say("Reading such short lines is tiring"),
              wording::say("Use smaller text, less padding, or one column fewer")},
             "short"});
}

void remedyMeasure(Candidates& out) {
    const bool over = out.isFor("long");
    const Need need = over ? Need::Filling : Need::Room;
    for (const std::string& role : out.roles())
        proposeSizes(out, role, need);
    proposeColumns(out, need);
    proposeBreakpoints(out);
    if (over)
        for (const double share : {0.9, 0.8, 0.7, 0.6, 0.5})
            proposeRowWidth(out, share);
    else
        proposeTighterCards(out);
    out.solveSizes();
}

}  // namespace

extern const Check measureCheck{
    .name = "measure", .run = checkMeasure, .dependsOnBreaks = true, .remedies = remedyMeasure};

}  // namespace tenter::checks
