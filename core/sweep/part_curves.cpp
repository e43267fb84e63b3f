#include "sweep/part_curves.h"

#include <algorithm>

#include "sweep/curve_writer.h"

namespace tenter::sweep {

namespace {

/// How far a measure's curve may be from what it stands for, characters.
constexpr double measureWithin = 0.01;

double measureAt(const Piece& piece, double width) {
    const double advance = piece.advance.at(width - piece.from);
    return advance > 0 ? piece.width.at(width - piece.from) * piece.graphemes / advance : 0;
}

/// A quotient of two straight lines. Between x₀ and x₁ of the lower one its chord is off by at most
/// |rise| · (√x₁ − √x₀) / (√x₁ + √x₀), and in n even steps by about an n²th of that.
void addMeasure(Curve& curve, const Piece& piece, double to) {
    const double start = measureAt(piece, piece.from);
    const double end = measureAt(piece, to);
    const double low = std::sqrt(std::max(0.0, piece.advance.value));
    const double high = std::sqrt(std::max(0.0, piece.advance.at(to - piece.from)));
    const double sum = low + high;
    const double off = sum > 0 ? std::abs(end - start) * std::abs(high - low) / sum : 0;
    const double steps = std::clamp(std::ceil(std::sqrt(off / measureWithin) * 1.5), 1.0, 64.0);
    add(curve, piece.from, start);
    for (double step = 1; step < steps; ++step) {
        const double width = piece.from + (to - piece.from) * step / steps;
        add(curve, width, measureAt(piece, width));
    }
    add(curve, to, end);
}

void addStraight(Curve& curve, const Piece& piece, const units::Linear& line, double to) {
    add(curve, piece.from, line.value);
    add(curve, to, line.at(to - piece.from));
}

}  // namespace

PartCurves straightCurves(const PartPieces& pieces, std::size_t card, std::size_t part, bool picture) {
    PartCurves curves;
    curves.card = card;
    curves.part = part;
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
