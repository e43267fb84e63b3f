// The pointer in the row view: what it is over, what it drags, and what a click selects.
#pragma once

#include <QMouseEvent>
#include <QObject>
#include <QWheelEvent>
#include <optional>

#include "row/sheet_layout.h"
#include "session/selection_model.h"
#include "session/view_state.h"

namespace tenter::desktop::row {

/// A part under the pointer: its page and its index in the layout of that page.
struct Pointed {
    std::size_t sheet = 0;
    std::size_t part = 0;
    friend bool operator==(const Pointed&, const Pointed&) = default;
};

class Pointer : public QObject {
    Q_OBJECT

public:
    Pointer(ViewState& view, SelectionModel& selection, SheetLayout& sheets, QAbstractScrollArea& area)
        : view_(view), selection_(selection), sheets_(sheets), area_(area) {}

    void press(const QMouseEvent& event);
    void move(const QMouseEvent& event);
    void release(const QMouseEvent& event);
    /// Scrolls, or zooms with Ctrl.
    void wheel(const QWheelEvent& event);
    void leave();
    /// Forgets the parts under the pointer, because the layout has changed.
    void forget();

    /// The page whose edge is hovered or dragged.
    [[nodiscard]] std::optional<std::size_t> hotEdge() const { return hotEdge_; }
    /// The part that shows its hover colours.
    [[nodiscard]] std::optional<Pointed> hovered() const { return hovered_; }
    /// The part under the pointer.
    [[nodiscard]] std::optional<Pointed> pointed() const { return pointed_; }
    [[nodiscard]] bool isDragging() const { return drag_ != Drag::None; }

Q_SIGNALS:
    void hoverChanged();    ///< hover colours must be painted again
    void pointedChanged();  ///< `pointed()` or `isDragging()` has changed
    void dropped();         ///< a drag has ended
    void zoomTurned(double zoom, const QPointF& view);

private:
    enum class Drag { None, Edge, Pan };
    void setDrag(Drag drag);
    void setHotEdge(std::optional<std::size_t> sheet);
    void setHovered(std::optional<Pointed> pointed);
    [[nodiscard]] bool hasHoverColours(const std::optional<Pointed>& at) const;
    void select(const QMouseEvent& event);
    void hover(const QPointF& view);

    ViewState& view_;
    SelectionModel& selection_;
    SheetLayout& sheets_;
    QAbstractScrollArea& area_;
    Drag drag_ = Drag::None;
    QPointF dragFrom_;
    double dragWidth_ = 0;
    QPoint dragScroll_;
    std::optional<std::size_t> hotEdge_;
    std::optional<Pointed> hovered_;
    std::optional<Pointed> pointed_;
};

}  // namespace tenter::desktop::row
