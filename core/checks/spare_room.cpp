// Cards that stand half empty beside a fuller one, and lines kept for nobody. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"

namespace tenter::checks {

namespace {

/// Nobody lingers at narrower runs of widths, CSS px.
constexpr double leastSpan = 5;

/// How much taller than a card's the tallest picture in its line is where the page is `width` wide, CSS px.
double pictureShort(const Subject& subject, std::size_t card, double width) {
    const auto columns = static_cast<std::size_t>(subject.row.band(subject.row.bandAt(width)).columns);
    double own = 0;
    double tallest = 0;
    for (std::size_t i = 0; i < subject.parts.size(); ++i) {
        if (subject.parts[i].picture == nullptr || subject.parts[i].card / columns != card / columns)
            continue;
        const double height = sweep::valueAt(subject.curves.parts[i].slotHeight, width);
        if (subject.parts[i].card == card) own = std::max(own, height);
        tallest = std::max(tallest, height);
    }
    return own > 0 ? tallest - own : 0;
}

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

/// Spans that lie in both lists, which rise.
std::vector<sweep::Interval> inBoth(const std::vector<sweep::Interval>& one,
                                    const std::vector<sweep::Interval>& other) {
    std::vector<sweep::Interval> both;
    for (const sweep::Interval& a : one)
        for (const sweep::Interval& b : other)
            if (std::max(a.from, b.from) < std::min(a.to, b.to))
                both.push_back({std::max(a.from, b.from), std::min(a.to, b.to)});
    return both;
}

/// Where room is kept for lines that no card of a line of cards has.
void checkKeptLines(const Subject& subject, Findings& out) {
    std::map<std::string, Cause> found;  // by role
    std::map<std::string, int> lines;
    double from = subject.least;
    for (std::size_t i = 0; i < subject.row.bandCount(); ++i) {
        const layout::BandPlan& band = subject.row.band(i);
        const sweep::Interval widths{from, std::min(subject.most, band.upTo.value_or(subject.most))};
        from = std::max(from, widths.to);
        if (!(widths.from < widths.to) || band.columns < 2) continue;
        // For each role and line of cards, where all that is there has fewer lines.
        std::map<std::pair<std::string, std::size_t>, std::vector<sweep::Interval>> fewer;
        std::map<std::pair<std::string, std::size_t>, const PartSeen*> first;
        for (const PartSeen& part : subject.parts) {
            if (part.text == nullptr) continue;
            const int kept = band.roles[band.cards[part.card].parts[part.part].role].keepLines;
            if (kept < 2) continue;
            std::vector<sweep::Interval> here;
            for (const sweep::Piece& piece : part.pieces.pieces)
                if (static_cast<int>(piece.lines) < kept)
                    if (const auto cut = within(piece, widths)) here.push_back(*cut);
            join(here);
            const std::pair key{part.text->role, part.card / static_cast<std::size_t>(band.columns)};
            lines[part.text->role] = kept;
            if (first.emplace(key, &part).second)
                fewer[key] = std::move(here);
            else
                fewer[key] = inBoth(fewer[key], here);
        }
        for (const auto& [key, spans] : fewer)
            for (const sweep::Interval& span : spans)
                if (span.to - span.from >= leastSpan)
                    found[key.first].add(first[key]->card, first[key]->part, span, span.to - span.from);
    }
    for (auto& [role, cause] : found) {
        join(cause.widths);
        if (lengthOf(cause.widths) < subject.limits().leastRun) continue;
        tell(out, cause,
             {"spare-room", Severity::Note, "common practice, no source",
              "Room is kept for " + std::to_string(lines[role]) + " lines of " + typeOf(role) +
                  ", but in the line of cards with " + named(subject, cause.card, cause.part) +
                  " nothing takes so many " + atWidths(subject, cause.there) +
                  ": there each card has an empty line. Levelling by subgrid keeps only what is taken.",
              "kept " + role});
    }
}

}  // namespace

void checkSpareRoom(const Subject& subject, Findings& out) {
    checkKeptLines(subject, out);
    Cause cause;
    // What is nearer to that many lines than to one more is not over it.
    const double lines = subject.limits().spareLines + 0.5;
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
            if (span && span->to - span->from >= leastSpan)
                cause.add(card, 0, *span, std::max(a.value, b.value) / height + (span->to - span->from) / 1e6,
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
    const double spare = sweep::valueAt(subject.curves.cards[cause.card].spare, cause.at);
    const bool byPictures = pictureShort(subject, cause.card, cause.at) > spare / 2;
    tell(out, cause,
         {"spare-room", Severity::Note, "common practice, no source",
          "The card of " + named(subject, cause.card, part) + " stands empty for up to " +
              figure(cause.worst, 0) + " lines beside a fuller one, " + atWidths(subject, cause.there) +
              (byPictures ? ": its picture is lower than its neighbour’s. One ratio for all pictures mends "
                            "most of it."
                          : ": copy of more even length, or another order of the cards, fills it."),
          ""});
}

}  // namespace tenter::checks
