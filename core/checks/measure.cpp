// Lines of copy too long to find the next one by, or too short to read in a flow. WCAG 2.2 SC 1.4.8 (AAA);
// R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory).
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

double measureOf(const sweep::Piece& piece, double width) {
    const double advance = piece.advance.at(width - piece.from);
    return advance > 0 ? piece.width.at(width - piece.from) * piece.graphemes / advance : 0;
}

struct MeasureBeyond {
    Cause cause;
    double limit = 0;  ///< where it is worst
};

/// Where the measure is over what is wished, or under it: the quotient of two lines crosses a limit where
/// their difference, a line, is 0.
MeasureBeyond measureBeyond(const Subject& subject, bool over) {
    MeasureBeyond found;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        const auto wishes =
            project::held(subject.wishes, part.text->role,
                          over ? &project::RoleWishes::mostMeasure : &project::RoleWishes::leastMeasure);
        for (const auto& wish : wishes) {
            for (const sweep::Piece& piece : part.pieces.pieces) {
                if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) continue;
                const auto cut = within(piece, wishedWidths(subject, wish));
                if (!cut) continue;
                const units::Linear more =
                    (piece.width * piece.graphemes - wish.value * piece.advance).from(cut->from - piece.from);
                const auto span = whereAbove(over ? more : -more, cut->from, cut->to);
                if (!span) continue;
                for (const double at : {span->from, span->to})
                    if (found.cause.add(part.card, part.part, *span,
                                        over ? measureOf(piece, at) : -measureOf(piece, at), at))
                        found.limit = wish.value;
            }
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
                  " characters, " + atWidths(wide.there) + ": beyond " + figure(most, 0) +
                  " the eye loses the next line. Larger type, a narrower row or one more column mends it.",
              "long"});
    auto [narrow, least] = measureBeyond(subject, false);
    join(narrow.widths);
    if (narrow.any() && lengthOf(narrow.widths) >= subject.limits().leastRun)
        tell(out, narrow,
             {"measure", Severity::Note,
              "R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory)",
              "Lines of " + worstAndOthers(subject, narrow) + " hold only " + figure(-narrow.worst, 0) +
                  " characters " + atWidths(narrow.there) + ": under " + figure(least, 0) +
                  " copy reads in jerks. Smaller type, less padding or one column fewer mends it.",
              "short"});
}

}  // namespace tenter::checks
