// A plot on the width axis: a chart with the same left and right margins as the lanes.
#pragma once

#include <QChartView>
#include <QImage>
#include <QLineSeries>
#include <QValueAxis>

#include "axis/curves.h"
#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

class Plot : public QChartView, public controls::HasData {
    Q_OBJECT

public:
    Plot(const WidthScale& scale, QWidget* parent);
    /// The point of a value at a viewport width (CSS px), in px of the widget.
    [[nodiscard]] QPointF at(double width, double value) const;
    /// The value at height `y`, px of the widget.
    [[nodiscard]] double valueAt(double y) const;
    /// Draws again; call it when the scale or the lines have changed.
    void refresh();
    /// Freezes the range of the value axis, for example while a handle is dragged.
    void holdValues(bool on);
    /// The values of each line at round widths and at both sides of every breakpoint.
    [[nodiscard]] controls::DataTable data() const override;

protected:
    struct Line {
        Pieces pieces;
        QPen pen;
        QString label;  ///< shown at the right end of the line; may be empty
        QColor ink;     ///< colour of the label
        QString name;   ///< head of the column in the table
    };
    void setLines(std::vector<Line> lines);
    /// Sets the smallest and largest value that the value axis must show.
    void setValues(double least, double most);
    /// Draws over the lines, in px of the widget.
    virtual void drawOver(QPainter& painter);
    void drawBackground(QPainter* painter, const QRectF& rect) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    /// Sets the lines again with the pens of the current palette.
    virtual void restyle() = 0;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    [[nodiscard]] QRectF area() const;
    const WidthScale& scale_;

private:
    void applyInk();
    void fillSeries();
    void applyValues();
    void drawLabels(QPainter& painter);
    QValueAxis* across_ = nullptr;
    QValueAxis* up_ = nullptr;
    QList<QLineSeries*> series_;
    std::vector<Line> lines_;
    double least_ = 0, most_ = 1;  // values that must be visible
    double bottom_ = 0, top_ = 1;  // range of the value axis
    double step_ = 1;              // between grid lines
    bool held_ = false;            // the value axis is frozen
    QImage drawn_;                 // cached, so that moving the cursor does not draw the chart again
    bool stale_ = true;
};

}  // namespace tenter::desktop::axis
