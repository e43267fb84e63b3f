// Lines of copy too long to find the next one by, or too short to read in a flow. WCAG 2.2 SC 1.4.8 (AAA);
// R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory).
#include "checks/laid_lines.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/runs.h"

namespace tenter::checks {

namespace {

struct MeasureBeyond {
    Cause cause;
    double limit = 0;  ///< where it is worst
};

/// How many characters of clusters [first, end) are seen: of soft hyphens only one at the end is.
std::uint32_t seen(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end) {
    std::uint32_t count = paragraph.graphemes(first, end);
    for (std::uint32_t i = first; i + 1 < end; ++i)
        if (paragraph.text()[paragraph.clusters()[i].begin] == u'\u00AD') --count;
    return count;
}

/// The most characters a line of the part holds on a piece, its last line left out.
void overLongest(const Subject& subject, const PartSeen& part, const sweep::Piece& piece,
                 const std::function<void(const sweep::Interval&, double)>& found) {
    const text::Paragraph& paragraph = paragraphIn(subject, part, piece);
    overLaidLines(subject, part, piece,
                  [&](const sweep::Interval& span, const std::vector<std::uint32_t>& starts) {
                      std::uint32_t longest = 0;
                      for (std::size_t i = 0; i + 1 < starts.size(); ++i) {
                          // The space at a line's end is not read.
                          std::uint32_t end = starts[i + 1];
                          while (end > starts[i] && paragraph.clusters()[end - 1].space)
                              --end;
                          longest = std::max(longest, seen(paragraph, starts[i], end));
                      }
                      found(span, longest);
                  });
}

/// Where lines are over what is wished, or under it: both by what the column comfortably holds, as wishes go,
/// and by what the lines really hold, which is what is told. The quotient of two lines crosses a limit where
/// their difference, a line, is 0.
MeasureBeyond measureBeyond(const Subject& subject, bool over) {
    MeasureBeyond found;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        const auto wishes =
            project::held(subject.wishes, part.text->role,
                          over ? &project::RoleWishes::mostMeasure : &project::RoleWishes::leastMeasure);
        for (const auto& wish : wishes) {
            Runs runs(sweep::leastStep, 0.0, [&](const sweep::Interval& run, double longest) {
                if (found.cause.add(part.card, part.part, run, over ? longest : -longest))
                    found.limit = wish.value;
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
                overLongest(subject, part, there, [&](const sweep::Interval& stretch, double longest) {
                    if (over ? longest > wish.value : longest < wish.value) runs.add(stretch, longest);
                });
            }
            runs.finish();
        }
    }
    return found;
}

}  // namespace

void checkMeasure(const Subject& subject, Findings& out) {
    const auto [wide, most] = measureBeyond(subject, true);
    if (wide.any())
        tell(out, wide,
             {"measure", Severity::Warning, "WCAG 2.2 SC 1.4.8 (AAA)",
              "Lines of " + worstAndOthers(subject, wide) + " hold up to " + figure(wide.worst, 0) +
                  " characters, " + atWidths(subject, wide.there) + ": beyond " + figure(most, 0) +
                  " the eye loses the next line. Larger type, a narrower row or one more column mends it.",
              "long"});
    auto [narrow, least] = measureBeyond(subject, false);
    join(narrow.widths);
    if (narrow.any() && lengthOf(narrow.widths) >= subject.limits().leastRun)
        tell(out, narrow,
             {"measure", Severity::Note,
              "R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory)",
              "Lines of " + worstAndOthers(subject, narrow) + " hold only " + figure(-narrow.worst, 0) +
                  " characters " + atWidths(subject, narrow.there) + ": under " + figure(least, 0) +
                  " copy reads in jerks. Smaller type, less padding or one column fewer mends it.",
              "short"});
}

}  // namespace tenter::checks
