#include "sweep/part_curves.h"

#include <algorithm>

#include "sweep/curve_writer.h"

namespace tenter::sweep {

namespace {

/// Accuracy of a measure's curve: in characters, or as a share of the measure if that is more.
constexpr double measureWithin = 0.01;
constexpr double measureShare = 0.0001;

double measureAt(const Piece& piece, double width) {
    const double advance = piece.advance.at(width - piece.from);
    return advance > 0 ? piece.width.at(width - piece.from) * piece.graphemes / advance : 0;
}

/// Adds a quotient of two straight lines, β / x + constant, where x is the divisor. The error of a chord from
/// x₀ to x₁ is at most |β| (1/√x₀ − 1/√x₁)², so vertices at equal steps of 1/√x give equal errors.
void addMeasure(Curve& curve, const Piece& piece, double to) {
    const double start = measureAt(piece, piece.from);
    const double end = measureAt(piece, to);
    add(curve, piece.from, start);
    const double first = piece.advance.value;
    const double last = piece.advance.at(to - piece.from);
    if (first > 0 && last > 0 && first != last) {
        const double low = 1 / std::sqrt(first);
        const double high = 1 / std::sqrt(last);
        const double off = std::abs((end - start) * (high - low) / (high + low));
        const double within = std::max(measureWithin, measureShare * std::max(start, end));
        const int steps = static_cast<int>(std::ceil(std::sqrt(off / within)));
        for (int step = 1; step < steps; ++step) {
            const double root = low + (high - low) * step / steps;
            const double width = piece.from + (1 / (root * root) - first) / piece.advance.slope;
            if (width > piece.from && width < to) add(curve, width, measureAt(piece, width));
        }
    }
    add(curve, to, end);
}

void addStraight(Curve& curve, const Piece& piece, const units::Linear& line, double to) {
    add(curve, piece.from, line.value);
    add(curve, to, line.at(to - piece.from));
}

}  // namespace

PartCurves straightCurves(const PartPieces& pieces, project::PartRef place, bool picture) {
    PartCurves curves;
    curves.place = place;
    curves.picture = picture;
    const std::vector<Piece>& all = pieces.pieces;
    for (std::size_t i = 0; i < all.size();) {
        std::size_t next = i + 1;
        while (next < all.size() && !all[next].kink)
            ++next;
        const double to = all[next - 1].to;
        addStraight(picture ? curves.slotWidth : curves.available, all[i], all[i].width, to);
        if (!picture) {
            addStraight(curves.fontSize, all[i], all[i].size, to);
            addMeasure(curves.measure, all[i], to);
            for (std::size_t k = i; k < next; ++k) {
                add(curves.lines, all[k].from, all[k].lines);
                add(curves.lines, all[k].to, all[k].lines);
            }
        }
        i = next;
    }
    return curves;
}

}  // namespace tenter::sweep
