// Container, row and columns at one width.
#include "layout/inline_sizes.h"

namespace tenter::layout {
namespace {

/// A box of `width` centred in `room`. If it is wider than `room`, it starts at the start edge, because
/// `auto` margins are then 0. CSS 2.2 § 10.3.3.
Box centredIn(const Box& room, double width, bool rightToLeft) {
    Box box = room;
    box.width = width;
    const double spare = room.width - box.width;
    box.x += spare >= 0 ? spare / 2 : (rightToLeft ? spare : 0);
    return box;
}

}  // namespace

Edges snappedEdges(const Edges& edges, const Lengths& sides, const text::BreakProfile& profile) {
    return {profile.snapped(edges.top, sides.top), edges.right, profile.snapped(edges.bottom, sides.bottom),
            edges.left};
}

Frame frameAt(const IntervalPlan& interval, double width) {
    Frame frame;
    static_cast<InlineSizes<double>&>(frame) = inlineSizesAt(interval, width);
    const BandPlan& band = *interval.band;
    const text::BreakProfile& profile = *band.profile;
    frame.containerPadding = snappedEdges(frame.containerPadding, interval.page.containerPadding, profile);
    frame.rowPadding = snappedEdges(frame.rowPadding, band.rowPadding, profile);
    frame.cardPadding = snappedEdges(frame.cardPadding, band.cardPadding, profile);
    frame.rowGap = profile.snapped(frame.rowGap, band.rowGap);

    frame.container = centredIn({0, 0, frame.pageWidth, 0}, frame.containerWidth, band.rightToLeft);
    if (interval.page.containerPlace != project::ContainerPlace::Center) {
        const bool isLeft =
            (interval.page.containerPlace == project::ContainerPlace::Start) != band.rightToLeft;
        const double spare = frame.pageWidth - frame.containerWidth;
        if (spare > 0) frame.container.x = isLeft ? 0 : spare;
    }
    const project::Shift& shift = interval.page.containerShift;
    frame.container.x += shift.percent / 100 * frame.pageWidth + shift.px;
    const Box room{frame.container.x + frame.containerPadding.left, frame.containerPadding.top,
                   frame.containerContentWidth, 0};
    frame.row = centredIn(room, frame.rowWidth, band.rightToLeft);
    frame.contentX = frame.row.x + frame.rowPadding.left;
    frame.contentY = frame.row.y + frame.rowPadding.top;
    return frame;
}

double sizeOf(const RolePlan& role, const Frame& frame) {
    return role.size.resolve(frame.basis);
}

}  // namespace tenter::layout
