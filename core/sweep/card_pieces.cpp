#include "sweep/card_pieces.h"

#include <algorithm>

#include "layout/prepared.h"

namespace tenter::sweep {

namespace {

/// The greatest distance from an event at which a layout represents one side of it, CSS px.
constexpr double sideDistance = 1e-6;

void measureAt(const layout::PreparedRow& row, double width, std::size_t card, layout::Layout& laid,
               CardMeasures& measures) {
    layout::layOutSingleCard(row, width, card, laid, measures.contribution);
    const layout::BandPlan& band = row.band(laid.band);
    const layout::LaidCard& box = laid.cards.front();
    measures.around = 2 * box.border + (band.bleed ? 0 : box.padding.top + box.padding.bottom);
    measures.parts.clear();
    for (const layout::LaidPart& part : laid.parts)
        measures.parts.push_back(part.picture ? part.box.height : part.lineHeight);
}

struct Start {
    double width = 0;
    std::size_t band = 0;
};

/// The starts of the pieces of all parts, rising. Starts closer than `leastStep` are one: each part reaches
/// the same event with its own rounding.
std::vector<Start> startsOf(std::span<const PartPieces> parts) {
    std::vector<Start> all;
    for (const PartPieces& part : parts)
        for (const Piece& piece : part.pieces)
            all.push_back({piece.from, piece.band});
    std::sort(all.begin(), all.end(), [](const Start& a, const Start& b) {
        return a.width != b.width ? a.width < b.width : a.band < b.band;
    });
    std::vector<Start> starts;
    for (const Start& start : all) {
        if (starts.empty() || start.width > starts.back().width + leastStep)
            starts.push_back(start);
        else if (start.band != starts.back().band)
            starts.back() = start;
    }
    return starts;
}

}  // namespace

std::vector<CardPiece> cardPieces(const layout::PreparedRow& row, std::size_t card,
                                  std::span<const PartPieces> parts) {
    const std::vector<Start> starts = startsOf(parts);
    const double most = parts.back().pieces.back().to;
    std::vector<CardPiece> pieces(starts.size());
    layout::Layout laid;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        CardPiece& piece = pieces[i];
        piece.from = starts[i].width;
        piece.to = i + 1 < starts.size() ? starts[i + 1].width : most;
        piece.band = starts[i].band;
        const double inside = std::min(sideDistance, (piece.to - piece.from) / 4);
        measureAt(row, piece.from + inside, card, laid, piece.start);
        measureAt(row, piece.to - inside, card, laid, piece.end);
    }
    return pieces;
}

}  // namespace tenter::sweep
