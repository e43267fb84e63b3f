// Container, row and columns at one width.
#include <algorithm>
#include <cmath>

#include "layout/prepared.h"

namespace tenter::layout {
namespace {

/// What the emitted width of a centred row's cards leaves out, so that no engine's rounding sends the last
/// card of a full line to the next one.
constexpr double centredSpare = 0.02;

/// A box of `width`, at most `most`, centred in `room`; `auto` margins give nothing where it overflows.
/// CSS 2.2 § 10.3.3.
Box centredIn(const Box& room, double width, double most, bool rightToLeft) {
    Box box = room;
    box.width = std::min(width, most);
    const double spare = room.width - box.width;
    box.x += spare >= 0 ? spare / 2 : (rightToLeft ? spare : 0);
    return box;
}

double most(const units::Length& length, const units::LengthBasis& basis) {
    return length.isNone() ? 1e9 : length.resolve(basis);
}

}  // namespace

double snappedBorder(double width) {
    return width > 0 ? std::max(1.0, std::floor(width)) : 0;
}

Edges stackedEdges(const Edges& edges, const text::BreakProfile& profile) {
    return {profile.stacked(edges.top), edges.right, profile.stacked(edges.bottom), edges.left};
}

Frame frameAt(const BandPlan& band, double width) {
    const project::Page& page = band.page;
    Frame frame;
    const double bar = page.scrollbar.width;
    const bool outside = page.scrollbar.always && band.profile->vwExcludesSteadyScrollbar();
    frame.basis.rem = page.rem();
    frame.basis.em = page.rem();
    frame.basis.vw = outside ? width - bar : width;
    frame.basis.cqi = frame.basis.vw;

    const double pageWidth = std::max(0.0, width - bar);
    frame.basis.percent = pageWidth;
    frame.containerPadding = stackedEdges(band.containerPadding.resolve(frame.basis), *band.profile);
    frame.container = centredIn({0, 0, pageWidth, 0}, page.container.width.resolve(frame.basis),
                                most(page.container.maxWidth, frame.basis), band.rightToLeft);
    const Edges& outer = frame.containerPadding;
    const Box room{frame.container.x + outer.left, outer.top,
                   std::max(0.0, frame.container.width - outer.left - outer.right), 0};

    frame.basis.percent = room.width;
    frame.rowPadding = stackedEdges(band.rowPadding.resolve(frame.basis), *band.profile);
    frame.row = centredIn(room, band.rowWidth.resolve(frame.basis), most(band.rowMaxWidth, frame.basis),
                          band.rightToLeft);
    const Edges& inner = frame.rowPadding;
    frame.row.width = std::max(frame.row.width, inner.left + inner.right);
    frame.contentX = frame.row.x + inner.left;
    frame.contentY = frame.row.y + inner.top;
    frame.contentWidth = frame.row.width - inner.left - inner.right;

    frame.basis.percent = frame.contentWidth;
    frame.columnGap = band.columnGap.resolve(frame.basis);
    frame.rowGap = band.profile->stacked(band.rowGap.resolve(frame.basis));
    frame.columnWidth =
        std::max(0.0, (frame.contentWidth - (band.columns - 1) * frame.columnGap) / band.columns);
    if (band.centred) frame.columnWidth = std::max(0.0, frame.columnWidth - centredSpare);

    frame.basis.percent = frame.columnWidth;
    frame.cardPadding = stackedEdges(band.cardPadding.resolve(frame.basis), *band.profile);
    frame.cardBorder = snappedBorder(band.cardBorder.resolve(frame.basis));
    if (band.beside) {
        double& start = band.rightToLeft ? frame.cardPadding.right : frame.cardPadding.left;
        frame.besideWidth = band.pictureShare.resolve(frame.basis);
        frame.besideInset = band.bleed ? 0 : start;
        start += frame.besideInset + frame.besideWidth;
    }
    frame.cardContent = std::max(
        0.0, frame.columnWidth - frame.cardPadding.left - frame.cardPadding.right - 2 * frame.cardBorder);
    frame.basis.percent = frame.cardContent;
    frame.basis.cqi = frame.cardContent;
    return frame;
}

double sizeOf(const RolePlan& role, const Frame& frame) {
    return role.size.resolve(frame.basis);
}

}  // namespace tenter::layout
