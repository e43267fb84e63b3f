// Cards with a lot of empty space beside a fuller card. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Narrower ranges are not reported, CSS px.
constexpr double leastWidthSpan = 5;

/// How much taller than the card's picture the tallest one in its line of cards is at `width`, CSS px; 0 if
/// the card has none.
double missingPictureHeight(const Subject& subject, std::size_t card, double width) {
    const auto columns = static_cast<std::size_t>(subject.row.band(subject.row.bandAt(width)).columns);
    double own = 0;
    double tallest = 0;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        if (subject.parts[i].picture == nullptr || subject.parts[i].place.card / columns != card / columns)
            continue;
        const double height = sweep::valueAt(subject.curves.parts[i].slotHeight, width);
        if (subject.parts[i].place.card == card) own = std::max(own, height);
        tallest = std::max(tallest, height);
    }
    return own > 0 ? tallest - own : 0;
}

/// The curve of the line height of the card's body text, or of its first text; null if it has no text.
const sweep::Curve* bodyLineHeight(const Subject& subject, std::size_t card) {
    const sweep::Curve* any = nullptr;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        const CheckedPart& part = subject.parts[i];
        if (part.place.card != card || part.text == nullptr) continue;
        if (part.is("body")) return &subject.curves.parts[i].lineHeight;
        if (any == nullptr) any = &subject.curves.parts[i].lineHeight;
    }
    return any;
}

/// The card's first heading, or else its first text; 0 if it has neither.
std::size_t headingOf(const project::Card& card) {
    std::size_t first = 0;
    bool heading = false;
    for (std::size_t i = card.parts.size(); i-- > 0;)
        if (const auto* text = std::get_if<project::TextPart>(&card.parts[i]))
            if (text->role == "heading" || !heading) {
                first = i;
                heading = text->role == "heading";
            }
    return first;
}

void checkSpareRoom(const Subject& subject, Findings& out) {
    Cause cause;
    // A height nearer to that many lines than to one more counts as that many.
    const double lines = subject.limits().spareLines + 0.5;
    for (std::size_t card = 0; card < subject.curves.cards.size(); ++card) {
        const sweep::Curve& spare = subject.curves.cards[card].spare;
        const sweep::Curve* line = bodyLineHeight(subject, card);
        if (line == nullptr) continue;
        for (std::size_t i = 0; i + 1 < spare.size(); ++i) {
            const sweep::Vertex& a = spare[i];
            const sweep::Vertex& b = spare[i + 1];
            if (!(a.width < b.width)) continue;
            const double middle = (a.width + b.width) / 2;
            if (subject.row.band(subject.row.bandAt(middle)).columns < 2) continue;
            // Line heights change linearly between two events of the row.
            const double height = sweep::valueAt(*line, middle);
            const units::Linear more(a.value - lines * height, (b.value - a.value) / (b.width - a.width));
            const auto span = whereAbove(more, a.width, b.width);
            if (span && span->to - span->from >= leastWidthSpan)
                cause.add({card, 0}, *span,
                          std::max(a.value, b.value) / height + (span->to - span->from) / 1e6,
                          a.value > b.value ? span->from : span->to);
        }
    }
    join(cause.widths);
    if (!cause.any() || lengthOf(cause.widths) < subject.limits().leastRun) return;
    const double spare = sweep::valueAt(subject.curves.cards[cause.place.card].spare, cause.at);
    const bool byPictures = missingPictureHeight(subject, cause.place.card, cause.at) > spare / 2;
    report(
        out, cause,
        {Severity::Note,
         commonPractice(),
         {wording::say(
              "%1, the card of %2 has more empty space than the card beside it: up to %3 more",
              {atWidths(subject, cause.there),
               named(subject, {cause.place.card, headingOf(subject.project.row().cards[cause.place.card])}),
               lineCount(static_cast<std::size_t>(cause.worst))}),
          wording::say("The row looks uneven"),
          byPictures
              ? wording::say("Use one aspect ratio for all pictures (Pictures › Aspect ratio)")
              : wording::say("Make the texts more similar in length, or change the order of the cards")}});
}

void remedySpareRoom(Candidates& out) {
    if (!out.isFor("")) return;
    proposeOneRatio(out);
    proposeColumns(out, Need::Room);
    proposeBreakpoints(out);
}

}  // namespace

extern const Check spareRoomCheck{
    .name = "spare-room", .run = checkSpareRoom, .dependsOnBreaks = true, .remedies = remedySpareRoom};

}  // namespace tenter::checks
