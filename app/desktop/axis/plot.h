// A plot over the width axis: a chart whose plot area lies under the same margins as the lanes.
#pragma once

#include <QChartView>
#include <QImage>
#include <QLineSeries>
#include <QValueAxis>

#include "axis/curves.h"
#include "axis/width_scale.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

class Plot : public QChartView {
    Q_OBJECT

public:
    Plot(const WidthScale& scale, QWidget* parent);
    /// Where a value stands, in the plot's own px.
    [[nodiscard]] QPointF at(double width, double value) const;
    [[nodiscard]] double valueAt(double y) const;
    /// The scale, or what is plotted, has changed.
    void refresh();
    /// Keeps the value axis as it is while something is dragged.
    void holdValues(bool on);

protected:
    struct Line {
        Pieces pieces;
        QPen pen;
        QString label;  ///< at the line's end; may be empty
        QColor ink;     ///< of the label
    };
    void setLines(std::vector<Line> lines);
    /// The values that have to fit on the axis.
    void setValues(double least, double most);
    /// What is drawn over the lines, in the plot's own px.
    virtual void drawOver(QPainter& painter);
    void drawBackground(QPainter* painter, const QRectF& rect) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    /// Pens anew, after the palette has changed.
    virtual void restyle() = 0;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
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
    double least_ = 0, most_ = 1;  // wanted
    double bottom_ = 0, top_ = 1;  // of the axis
    double step_ = 1;              // between its grid lines
    bool held_ = false;
    QImage drawn_;  // so that the cursor's passing costs no drawing of charts
    bool stale_ = true;
};

}  // namespace tenter::desktop::axis
