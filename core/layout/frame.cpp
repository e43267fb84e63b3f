// Container, row and columns at one width.
#include "layout/across.h"

namespace tenter::layout {
namespace {

/// A box of `width`, centred in `room`; `auto` margins give nothing where it overflows. CSS 2.2 § 10.3.3.
Box centredIn(const Box& room, double width, bool rightToLeft) {
    Box box = room;
    box.width = width;
    const double spare = room.width - box.width;
    box.x += spare >= 0 ? spare / 2 : (rightToLeft ? spare : 0);
    return box;
}

}  // namespace

Edges stackedEdges(const Edges& edges, const text::BreakProfile& profile) {
    return {profile.stacked(edges.top), edges.right, profile.stacked(edges.bottom), edges.left};
}

Frame frameAt(const BandPlan& band, double width) {
    Frame frame;
    static_cast<Across<double>&>(frame) = acrossAt(band, width);
    const text::BreakProfile& profile = *band.profile;
    frame.containerPadding = stackedEdges(frame.containerPadding, profile);
    frame.rowPadding = stackedEdges(frame.rowPadding, profile);
    frame.cardPadding = stackedEdges(frame.cardPadding, profile);
    frame.rowGap = profile.stacked(frame.rowGap);

    frame.container = centredIn({0, 0, frame.pageWidth, 0}, frame.containerWidth, band.rightToLeft);
    const Box room{frame.container.x + frame.containerPadding.left, frame.containerPadding.top,
                   frame.roomWidth, 0};
    frame.row = centredIn(room, frame.rowWidth, band.rightToLeft);
    frame.contentX = frame.row.x + frame.rowPadding.left;
    frame.contentY = frame.row.y + frame.rowPadding.top;
    return frame;
}

double sizeOf(const RolePlan& role, const Frame& frame) {
    return role.size.resolve(frame.basis);
}

}  // namespace tenter::layout
