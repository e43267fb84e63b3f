#include "sweep/alone.h"

#include <algorithm>

#include "layout/prepared.h"

namespace tenter::sweep {

namespace {

/// How far from an event, at most, a layout stands for the event's one side. CSS px.
constexpr double aside = 1e-6;

void standAt(const layout::PreparedRow& row, double width, std::size_t card, layout::Layout& laid,
             Stand& stand) {
    layout::layOutAlone(row, width, card, laid, stand.asked);
    const layout::BandPlan& band = row.band(laid.band);
    const layout::LaidCard& box = laid.cards.front();
    stand.around = 2 * box.border + (band.bleed ? 0 : box.padding.top + box.padding.bottom);
    stand.parts.clear();
    for (const layout::LaidPart& part : laid.parts)
        stand.parts.push_back(part.picture ? part.box.height : part.lineHeight);
}

struct Start {
    double width = 0;
    std::size_t band = 0;
};

/// Where a piece of any part starts. What a hair parts is one: parts come to the same kink by their own
/// roundings.
std::vector<Start> startsOf(std::span<const PartPieces> pieces) {
    std::vector<Start> all;
    for (const PartPieces& part : pieces)
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

std::vector<CardStretch> stretchesOf(const layout::PreparedRow& row, std::size_t card,
                                     std::span<const PartPieces> pieces) {
    const std::vector<Start> starts = startsOf(pieces);
    const double most = pieces.back().pieces.back().to;
    std::vector<CardStretch> stretches(starts.size());
    layout::Layout laid;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        CardStretch& stretch = stretches[i];
        stretch.from = starts[i].width;
        stretch.to = i + 1 < starts.size() ? starts[i + 1].width : most;
        stretch.band = starts[i].band;
        const double inside = std::min(aside, (stretch.to - stretch.from) / 4);
        standAt(row, stretch.from + inside, card, laid, stretch.start);
        standAt(row, stretch.to - inside, card, laid, stretch.end);
    }
    return stretches;
}

}  // namespace tenter::sweep
