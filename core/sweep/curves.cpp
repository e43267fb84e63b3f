#include "sweep/curves.h"

#include <algorithm>

#include "layout/prepared.h"
#include "sweep/curve_writer.h"
#include "sweep/heights.h"
#include "sweep/part_curves.h"

namespace tenter::sweep {

double valueAt(const Curve& curve, double width) {
    if (curve.empty()) return 0;
    const auto after = std::lower_bound(curve.begin(), curve.end(), width,
                                        [](const Vertex& vertex, double w) { return vertex.width < w; });
    if (after == curve.end()) return curve.back().value;
    if (after == curve.begin() || after->width == width) return after->value;
    const Vertex& before = *(after - 1);
    const double share = (width - before.width) / (after->width - before.width);
    return before.value + share * (after->value - before.value);
}

Curves curvesOf(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most) {
    Curves curves;
    const std::vector<layout::CardPlan>& cards = row.band(0).cards;
    curves.cards.resize(cards.size());
    std::size_t next = 0;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part) {
            curves.parts.push_back(
                straightCurves(pieces[next], row.place(card, part), cards[card].parts[part].picture));
            ++next;
        }
    }
    addHeights(row, pieces, least, most, curves);
    return curves;
}

}  // namespace tenter::sweep
