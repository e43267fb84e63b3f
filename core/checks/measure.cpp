// Lines of copy too long to find the next one by, or too short to read in a flow. WCAG 2.2 SC 1.4.8 (AAA);
// R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory).
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

bool isWrittenInIdeographs(const std::string& language) {
    const std::string primary = language.substr(0, language.find('-'));
    return primary == "zh" || primary == "ja" || primary == "ko";
}

double measureOf(const sweep::Piece& piece, double width) {
    const double advance = piece.advance.at(width - piece.from);
    return advance > 0 ? piece.width.at(width - piece.from) * piece.graphemes / advance : 0;
}

/// Where the measure is over `limit`, or under it: the quotient of two lines crosses it where their
/// difference, a line, is 0.
Cause measureBeyond(const Subject& subject, double limit, bool over) {
    Cause cause;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr || part.is("heading") || part.is("button")) continue;
        for (const sweep::Piece& piece : part.pieces.pieces) {
            if (piece.lines < static_cast<std::uint32_t>(subject.thresholds().measuredLines)) continue;
            const units::Linear more = piece.width * piece.graphemes - limit * piece.advance;
            const auto span = whereAbove(over ? more : -more, piece.from, piece.to);
            if (!span) continue;
            for (const double at : {span->from, span->to})
                cause.add(part.card, part.part, *span, over ? measureOf(piece, at) : -measureOf(piece, at));
        }
    }
    return cause;
}

}  // namespace

void checkMeasure(const Subject& subject, Findings& out) {
    const double share = isWrittenInIdeographs(subject.project.language) ? 0.5 : 1;
    const double most = subject.thresholds().mostMeasure * share;
    const double least = subject.thresholds().leastMeasure * share;
    const Cause wide = measureBeyond(subject, most, true);
    if (wide.any())
        tell(out, wide,
             {"measure", Severity::Warning, "WCAG 2.2 SC 1.4.8 (AAA)",
              "Lines of " + worstAndOthers(subject, wide) + " hold up to " + figure(wide.worst, 0) +
                  " characters, " + atWidths(wide.there) + ": beyond " + figure(most, 0) +
                  " the eye loses the next line. Larger type, a narrower row or one more column mends it.",
              "long"});
    Cause narrow = measureBeyond(subject, least, false);
    join(narrow.widths);
    if (narrow.any() && lengthOf(narrow.widths) >= subject.thresholds().leastRun)
        tell(out, narrow,
             {"measure", Severity::Note,
              "R. Bringhurst, The Elements of Typographic Style § 2.1.2 (from memory)",
              "Lines of " + worstAndOthers(subject, narrow) + " hold only " + figure(-narrow.worst, 0) +
                  " characters " + atWidths(narrow.there) + ": under " + figure(least, 0) +
                  " copy reads in jerks. Smaller type, less padding or one column fewer mends it.",
              "short"});
}

}  // namespace tenter::checks
