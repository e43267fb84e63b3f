#include "pictures/slots.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "layout/prepared.h"
#include "pictures/crop.h"
#include "sweep/curve_writer.h"

namespace tenter::pictures {

namespace {

/// Lengths that differ by less than this are equal: the difference is rounding, px.
constexpr double sameLength = 0.01;

/// The value of `curve` just above viewport width `width`.
double valueAbove(const sweep::Curve& curve, double width) {
    if (curve.empty()) return 0;
    const auto after =
        std::upper_bound(curve.begin(), curve.end(), width,
                         [](double w, const sweep::Vertex& vertex) { return w < vertex.width; });
    if (after == curve.begin() || after == curve.end()) return sweep::valueAt(curve, width);
    const sweep::Vertex& before = *(after - 1);
    return before.value +
           (after->value - before.value) * (width - before.width) / (after->width - before.width);
}

std::vector<double> widthsOf(const sweep::Curve& a, const sweep::Curve& b) {
    std::vector<double> widths;
    widths.reserve(a.size() + b.size());
    for (const sweep::Curve* curve : {&a, &b})
        for (const sweep::Vertex& vertex : *curve)
            widths.push_back(vertex.width);
    std::sort(widths.begin(), widths.end());
    widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
    return widths;
}

/// A slot between two viewport widths, where width and height are straight lines. CSS px.
struct Piece {
    double from = 0, to = 0;
    double width[2] = {0, 0};   ///< at both ends
    double height[2] = {0, 0};  ///< at both ends
};

std::vector<Piece> piecesOf(const sweep::Curve& width, const sweep::Curve& height) {
    const std::vector<double> at = widthsOf(width, height);
    std::vector<Piece> pieces;
    pieces.reserve(at.size());
    for (std::size_t i = 0; i + 1 < at.size(); ++i)
        pieces.push_back({at[i],
                          at[i + 1],
                          {valueAbove(width, at[i]), sweep::valueAt(width, at[i + 1])},
                          {valueAbove(height, at[i]), sweep::valueAt(height, at[i + 1])}});
    return pieces;
}

/// The heights of a picture above its text follow from its width and ratio, without the engine's grid.
sweep::Curve heightsOf(const layout::PreparedRow& row, const sweep::PartCurves& curves) {
    sweep::Curve heights;
    for (const Piece& piece : piecesOf(curves.slotWidth, curves.slotHeight)) {
        const layout::BandPlan& band = row.band(row.bandAt((piece.from + piece.to) / 2));
        const bool isBeside = band.cards[curves.place.card].beside == curves.place.part;
        const double ratio = band.part(curves.place).ratio;
        sweep::add(heights, piece.from, isBeside ? piece.height[0] : piece.width[0] / ratio);
        sweep::add(heights, piece.to, isBeside ? piece.height[1] : piece.width[1] / ratio);
    }
    return heights;
}

/// The width at which a file with `ratio` is drawn. Has a vertex where the two are equal.
sweep::Curve drawnWidth(const std::vector<Piece>& pieces, double ratio) {
    sweep::Curve drawn;
    for (const Piece& piece : pieces) {
        const double excess[2] = {piece.height[0] * ratio - piece.width[0],
                                  piece.height[1] * ratio - piece.width[1]};
        const auto addEnd = [&](int end, double at) {
            const double by = excess[end] > sameLength ? excess[end] : 0;
            sweep::add(drawn, at, piece.width[end] + by);
        };
        addEnd(0, piece.from);
        if ((excess[0] > sameLength && excess[1] < -sameLength) ||
            (excess[0] < -sameLength && excess[1] > sameLength)) {
            const double share = excess[0] / (excess[0] - excess[1]);
            sweep::add(drawn, piece.from + (piece.to - piece.from) * share,
                       piece.width[0] + (piece.width[1] - piece.width[0]) * share);
        }
        addEnd(1, piece.to);
    }
    return drawn;
}

void setRatios(const std::vector<Piece>& pieces, Slot& slot) {
    slot.leastRatio = std::numeric_limits<double>::infinity();
    for (const Piece& piece : pieces)
        for (const int end : {0, 1}) {
            if (!(piece.width[end] > 0) || !(piece.height[end] > 0)) continue;
            const double ratio = piece.width[end] / piece.height[end];
            slot.leastRatio = std::min(slot.leastRatio, ratio);
            slot.mostRatio = std::max(slot.mostRatio, ratio);
        }
    if (!(slot.mostRatio > 0)) {
        slot.leastRatio = 0;
        return;
    }
    const double file = slot.fileRatio().value_or(slot.mostRatio);
    slot.cutRatio = std::clamp(file, slot.leastRatio, slot.mostRatio);
}

SlotPoint largestOf(const sweep::Curve& drawn) {
    SlotPoint largest;
    for (const sweep::Vertex& vertex : drawn)
        if (vertex.value > largest.value + sameLength) largest = vertex;
    return largest;
}

Slot slotOf(const project::PicturePart& picture, const layout::PreparedRow& row,
            const sweep::PartCurves& curves) {
    Slot slot;
    slot.place = curves.place;
    slot.width = curves.slotWidth;
    slot.height = heightsOf(row, curves);
    slot.file = {static_cast<int>(std::lround(picture.width)), static_cast<int>(std::lround(picture.height))};
    const std::vector<Piece> pieces = piecesOf(slot.width, slot.height);
    setRatios(pieces, slot);
    slot.drawn = drawnWidth(pieces, slot.cutRatio);
    slot.largest = largestOf(slot.drawn);
    return slot;
}

PixelSize sizeFor(double width, double ratio) {
    if (!(width > 0) || !(ratio > 0)) return {};
    const int whole = wholePixels(width);
    return {whole, heightFor(whole, ratio)};
}

/// The largest width at which a file with `ratio` is drawn in the slot, CSS px.
double largestDrawn(const Slot& slot, double ratio) {
    return largestOf(drawnWidth(piecesOf(slot.width, slot.height), ratio)).value;
}

}  // namespace

int wholePixels(double px) {
    return static_cast<int>(std::ceil(px - sameLength));
}

std::optional<double> Slot::fileRatio() const {
    if (file.width <= 0 || file.height <= 0) return std::nullopt;
    return static_cast<double>(file.width) / file.height;
}

bool Slot::hasOneRatio() const {
    return mostRatio <= leastRatio * (1 + sameRatio);
}

std::vector<Slot> slotsOf(const project::Project& project, const layout::PreparedRow& row,
                          const sweep::Curves& curves) {
    std::vector<Slot> slots;
    slots.reserve(curves.parts.size());
    for (const sweep::PartCurves& part : curves.parts)
        if (part.picture)
            slots.push_back(slotOf(std::get<project::PicturePart>(project.part(part.place)), row, part));
    return slots;
}

Need needOf(const Slot& slot, double pixelRatio) {
    Need need;
    need.pixelRatio = pixelRatio;
    need.cut = sizeFor(slot.largest.value * pixelRatio, slot.cutRatio);
    if (const std::optional<double> ratio = slot.fileRatio())
        need.uncut = sizeFor(largestDrawn(slot, *ratio) * pixelRatio, *ratio);
    return need;
}

std::vector<Need> needsOf(const Slot& slot) {
    std::vector<Need> needs;
    needs.reserve(std::size(shownRatios));
    for (const double ratio : shownRatios)
        needs.push_back(needOf(slot, ratio));
    return needs;
}

std::optional<double> pixelsPerCssPx(const Slot& slot) {
    const std::optional<double> ratio = slot.fileRatio();
    if (!ratio) return std::nullopt;
    const double drawn = largestDrawn(slot, *ratio);
    if (!(drawn > 0)) return std::nullopt;
    return slot.file.width / drawn;
}

Upload uploadOf(const Slot& slot, double pixelRatio) {
    Upload upload;
    upload.size = needOf(slot, pixelRatio).cut;
    const std::optional<double> density = pixelsPerCssPx(slot);
    upload.isTooSmall = density && *density * (1 + sameRatio) < pixelRatio;
    return upload;
}

}  // namespace tenter::pictures
