// The bands as dimension brackets, each with its column count. The edges between them are handles.
#pragma once

#include <QMap>
#include <QWidget>

#include "axis/handle.h"
#include "axis/width_scale.h"
#include "document/viewing.h"

namespace tenter::desktop::axis {

class BandsLane : public QWidget {
    Q_OBJECT

public:
    BandsLane(Viewing& viewing, const WidthScale& scale, QWidget* parent);
    /// Puts the edges where the breakpoints are.
    void refresh();

signals:
    /// While an edge is moved the scale must stay as it is.
    void edgeGrabbed();
    void edgeReleased();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void addEdge();
    void moveEdge(int edge, double breakpoint);
    Viewing& viewing_;
    const WidthScale& scale_;
    QList<Handle*> edges_;
};

}  // namespace tenter::desktop::axis
