// Cards that stand half empty beside a fuller one. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// The curve that has the card's body line height; null if it has no text.
const sweep::Curve* bodyLine(const Subject& subject, std::size_t card) {
    const sweep::Curve* any = nullptr;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        const PartSeen& part = subject.parts[i];
        if (part.card != card || part.text == nullptr) continue;
        if (part.is("body")) return &subject.curves.parts[i].lineHeight;
        if (any == nullptr) any = &subject.curves.parts[i].lineHeight;
    }
    return any;
}

}  // namespace

void checkSpareRoom(const Subject& subject, Findings& out) {
    Cause cause;
    const double lines = subject.limits().spareLines;
    for (std::size_t card = 0; card < subject.curves.cards.size(); ++card) {
        const sweep::Curve& spare = subject.curves.cards[card].spare;
        const sweep::Curve* line = bodyLine(subject, card);
        if (line == nullptr) continue;
        for (std::size_t i = 0; i + 1 < spare.size(); ++i) {
            const sweep::Vertex& a = spare[i];
            const sweep::Vertex& b = spare[i + 1];
            if (!(a.width < b.width)) continue;
            const double middle = (a.width + b.width) / 2;
            if (subject.row.band(subject.row.bandAt(middle)).columns < 2) continue;
            // Line heights climb evenly between two events of the row.
            const double height = sweep::valueAt(*line, middle);
            const units::Linear more(a.value - lines * height, (b.value - a.value) / (b.width - a.width));
            const auto span = whereAbove(more, a.width, b.width);
            if (span)
                cause.add(card, 0, *span, std::max(a.value, b.value) / height,
                          a.value > b.value ? span->from : span->to);
        }
    }
    join(cause.widths);
    if (!cause.any() || lengthOf(cause.widths) < subject.limits().leastRun) return;
    std::size_t part = 0;
    bool heading = false;
    const std::vector<project::Part>& parts = subject.project.cards[cause.card].parts;
    for (std::size_t i = parts.size(); i-- > 0;)
        if (const auto* text = std::get_if<project::TextPart>(&parts[i]))
            if (text->role == "heading" || !heading) {
                part = i;
                heading = text->role == "heading";
            }
    tell(out, cause,
         {"spare-room", Severity::Note, "common practice, no source",
          "The card of " + named(subject, cause.card, part) + " stands empty for up to " +
              figure(cause.worst, 0) + " lines beside a fuller one, " + atWidths(cause.there) +
              ": copy of more even length, or another order of the cards, fills it.",
          ""});
}

}  // namespace tenter::checks
