// Drags a gap or a padding of the row.
#pragma once

#include <QMouseEvent>
#include <QObject>
#include <QPainter>
#include <memory>
#include <optional>

#include "row/editing/spacing.h"
#include "row/sheet_layout.h"
#include "session/session.h"

namespace tenter::desktop::row::editing {

class SpacingDrag : public QObject {
    Q_OBJECT

public:
    SpacingDrag(Session& session, SheetLayout& sheets, QAbstractScrollArea& area)
        : session_(session), sheets_(sheets), area_(area) {}
    /// Marks the gap or padding at a point of the viewport, with its value. False if there is none.
    bool hover(const QPointF& view);
    void leave();
    [[nodiscard]] bool isDragging() const { return drag_.has_value(); }
    /// Begins a drag of what is marked; false if nothing is.
    bool press(const QPointF& view);
    void move(const QPointF& view);
    /// Ends the drag. False if nothing has moved.
    bool release();
    /// Ends the drag and restores the value from before.
    void cancel();
    /// Paints the mark and the value over the row.
    void paint(QPainter& painter) const;

private:
    struct Drag {
        Spacing spacing;
        std::size_t sheet = 0;
        QPointF from;
        double zoom = 1;
        project::CascadeLayer layer = project::CascadeLayer::Style;
        project::Project before;
        bool moved = false;
    };
    void put(const units::Length& value);
    [[nodiscard]] std::size_t band() const;

    Session& session_;
    SheetLayout& sheets_;
    QAbstractScrollArea& area_;
    std::optional<Spacing> hot_;
    std::size_t hotSheet_ = 0;
    std::optional<Drag> drag_;
};

}  // namespace tenter::desktop::row::editing
