#include "sweep/sweep.h"

#include "layout/prepared.h"

namespace tenter::sweep {

Sweep sweep(const layout::PreparedRow& row, double least, double most, double tightness) {
    Sweep result;
    result.least = least;
    result.most = most;
    std::vector<PartPieces> pieces;
    const layout::LinearSizes sizes(row);
    const std::vector<layout::CardPlan>& cards = row.band(0).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part) {
            const project::PartRef place = row.place(card, part);
            pieces.push_back(partPieces(sizes, place, least, most, tightness));
            const std::vector<WrapPoint> wraps = wrapsOf(pieces.back(), place);
            result.wraps.insert(result.wraps.end(), wraps.begin(), wraps.end());
            for (const Interval& tight : pieces.back().tight)
                result.tight.push_back({tight, place});
        }
    }
    sortWraps(result.wraps);
    result.curves = curvesOf(row, pieces, least, most);
    return result;
}

}  // namespace tenter::sweep
