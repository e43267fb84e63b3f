#include "row/pointer.h"

#include <QScrollBar>
#include <cmath>

#include "row/lookup.h"
#include "row/row_painter.h"

namespace tenter::desktop::row {

namespace {

constexpr int wheelStep = 64;  // view px per step of the wheel

}  // namespace

// ---- Hovering

void Pointer::setHotEdge(std::optional<std::size_t> sheet) {
    if (sheet == hotEdge_) return;
    for (const auto& one : {hotEdge_, sheet})
        if (one && *one < sheets_.count()) area_.viewport()->update(sheets_.edgeStrip(*one));
    hotEdge_ = sheet;
}

bool Pointer::hasHoverColours(const std::optional<Pointed>& at) const {
    if (!at || at->sheet >= sheets_.count()) return false;
    const LaidOutRow row = sheets_.rowOn(at->sheet);
    const auto* style = styleOf(row, row.layout.parts[at->part]);
    return style != nullptr && (style->hover.colour || style->hover.background || style->hover.borderColour);
}

void Pointer::setHovered(std::optional<Pointed> pointed) {
    if (pointed == hovered_) return;
    const bool changes = hasHoverColours(pointed) || hasHoverColours(hovered_);
    hovered_ = pointed;
    if (changes) Q_EMIT hoverChanged();
}

void Pointer::hover(const QPointF& view) {
    setHotEdge(sheets_.edgeAt(view));
    const auto sheet = hotEdge_ ? std::nullopt : sheets_.sheetAt(view);
    const auto pointed = [&](const std::optional<std::size_t>& part) {
        return part ? std::optional(Pointed{*sheet, *part}) : std::nullopt;
    };
    const bool onCaption = sheet && sheets_.inView()[*sheet].caption.contains(view);
    area_.viewport()->setCursor(hotEdge_    ? Qt::SizeHorCursor
                                : onCaption ? Qt::PointingHandCursor
                                            : Qt::ArrowCursor);
    setHovered(sheet ? pointed(hoverTarget(sheets_.rowOn(*sheet), sheets_.pageAt(view, *sheet)))
                     : std::nullopt);
    const auto under =
        sheet ? pointed(partAt(sheets_.rowOn(*sheet).layout, sheets_.pageAt(view, *sheet))) : std::nullopt;
    if (under == pointed_) return;
    pointed_ = under;
    Q_EMIT pointedChanged();
}

void Pointer::leave() {
    if (isDragging()) return;
    setHotEdge(std::nullopt);
    setHovered(std::nullopt);
    pointed_.reset();
    Q_EMIT pointedChanged();
}

void Pointer::forget() {
    hovered_.reset();
    if (drag_ != Drag::Edge) pointed_.reset();
}

// ---- Clicks and drags

void Pointer::setDrag(Drag drag) {
    drag_ = drag;
    sheets_.holdLines(drag == Drag::Edge);
}

void Pointer::press(const QMouseEvent& event) {
    const auto edge = sheets_.edgeAt(event.position());
    if (event.button() == Qt::MiddleButton) {
        setDrag(Drag::Pan);
        dragFrom_ = event.position();
        dragScroll_ = sheets_.scrolled();
        area_.viewport()->setCursor(Qt::ClosedHandCursor);
    } else if (event.button() == Qt::LeftButton && edge) {
        setDrag(Drag::Edge);
        setHotEdge(edge);
        dragFrom_ = event.position();
        dragWidth_ = view_.width();
    } else if (event.button() == Qt::LeftButton) {
        select(event);
        return;
    }
    Q_EMIT pointedChanged();
}

// A click on the page or the caption of another variant makes it the current one. With Ctrl it adds to what
// is selected, with Shift it selects what is between.
void Pointer::select(const QMouseEvent& event) {
    const QPointF view = event.position();
    std::optional<Place> place;
    if (const auto sheet = sheets_.sheetAt(view)) {
        const layout::Layout& layout = sheets_.rowOn(*sheet).layout;
        if (const auto part = partAt(layout, sheets_.pageAt(view, *sheet)))
            place = Place::of(refOf(layout, *part));
        if (sheets_.showsAll()) view_.setVariant(*sheet);
    }
    if (place && (event.modifiers() & Qt::ControlModifier) != 0)
        selection_.toggle(*place);
    else if (place && (event.modifiers() & Qt::ShiftModifier) != 0)
        selection_.extend(*place);
    else
        selection_.select(place);
    hover(view);
}

void Pointer::move(const QMouseEvent& event) {
    const QPointF moved = event.position() - dragFrom_;
    if (drag_ == Drag::Edge) {
        // Pages to the left of the dragged one grow too and move it, so the width changes by a share of the
        // distance.
        const int growing = hotEdge_ && *hotEdge_ < sheets_.count() ? sheets_.placeOf(*hotEdge_) + 1 : 1;
        view_.setWidth(std::round(dragWidth_ + moved.x() / (sheets_.zoom() * growing)));
    } else if (drag_ == Drag::Pan) {
        area_.horizontalScrollBar()->setValue(dragScroll_.x() - static_cast<int>(std::lround(moved.x())));
        area_.verticalScrollBar()->setValue(dragScroll_.y() - static_cast<int>(std::lround(moved.y())));
    } else {
        hover(event.position());
    }
}

void Pointer::release(const QMouseEvent& event) {
    if (!isDragging()) return;
    setDrag(Drag::None);
    Q_EMIT dropped();
    hover(event.position());
}

void Pointer::wheel(const QWheelEvent& event) {
    const QPoint turned = event.angleDelta();
    if ((event.modifiers() & Qt::ControlModifier) != 0) {
        Q_EMIT zoomTurned(sheets_.zoom() * std::pow(1.25, turned.y() / 120.0), event.position());
        return;
    }
    QPoint by = event.pixelDelta();
    if (by.isNull()) by = QPoint(turned.x() * wheelStep / 120, turned.y() * wheelStep / 120);
    if ((event.modifiers() & Qt::ShiftModifier) != 0) by = by.transposed();
    area_.horizontalScrollBar()->setValue(area_.horizontalScrollBar()->value() - by.x());
    area_.verticalScrollBar()->setValue(area_.verticalScrollBar()->value() - by.y());
    if (!isDragging()) hover(event.position());
}

}  // namespace tenter::desktop::row
