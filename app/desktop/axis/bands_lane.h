// The lane “Bands”: a dimension bracket per band with its column count. Handles at the edges move
// breakpoints.
#pragma once

#include <QMap>
#include <QWidget>

#include "axis/handle.h"
#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "session/session.h"

namespace tenter::desktop::axis {

class BandsLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    BandsLane(Session& session, const WidthScale& scale, QWidget* parent);
    /// Moves the handles to the current breakpoints.
    void refresh();
    [[nodiscard]] controls::DataTable data() const override;

Q_SIGNALS:
    /// While an edge is dragged, the scale must not change.
    void edgeGrabbed();
    void edgeReleased();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void addEdge();
    void moveEdge(int edge, double breakpoint);
    void endDrag();
    /// The breakpoint that is dragged, with its value.
    void paintDragged(QPainter& painter) const;
    Session& session_;
    const WidthScale& scale_;
    QList<Handle*> edges_;
    double grabbed_ = 0;  // the breakpoint that is dragged, as it was before
};

}  // namespace tenter::desktop::axis
