#include "sweep/wraps.h"

#include <algorithm>
#include <tuple>

#include "layout/prepared.h"

namespace tenter::sweep {

std::vector<WrapPoint> wrapsOf(const PartPieces& pieces, project::PartRef place) {
    std::vector<WrapPoint> wraps;
    const Piece* before = nullptr;
    for (const Piece& piece : pieces.pieces) {
        if (before != nullptr && before->lines != piece.lines)
            wraps.push_back({piece.from, place, before->lines, piece.lines});
        before = &piece;
    }
    return wraps;
}

std::vector<WrapPoint> wrapPoints(const layout::PreparedRow& row, double least, double most) {
    std::vector<WrapPoint> all;
    const std::vector<layout::CardPlan>& cards = row.band(0).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part) {
            const project::PartRef place = row.place(card, part);
            const auto found = wrapsOf(partPieces(row, place, least, most), place);
            all.insert(all.end(), found.begin(), found.end());
        }
    }
    sortWraps(all);
    return all;
}

void sortWraps(std::vector<WrapPoint>& wraps) {
    std::sort(wraps.begin(), wraps.end(), [](const WrapPoint& a, const WrapPoint& b) {
        return std::tie(a.width, a.place) < std::tie(b.width, b.place);
    });
}

}  // namespace tenter::sweep
