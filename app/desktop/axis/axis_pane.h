// The width axis: ruler, lanes and plots over one scale, with one cursor through them all.
#pragma once

#include <QAction>
#include <QWidget>

#include "axis/width_scale.h"
#include "document/engine_sweep.h"
#include "document/viewing.h"

namespace tenter::desktop::compare {
class Comparison;
}

namespace tenter::desktop::axis {

class BandsLane;
class Cursor;
class Disclosure;
class EnginesLane;
class MeasurePlot;
class Ruler;
class SizePlot;

class AxisPane : public QWidget {
    Q_OBJECT

public:
    explicit AxisPane(Viewing& viewing, QWidget* parent = nullptr);
    ~AxisPane() override;

    /// Toggles that open and close lanes and plots.
    [[nodiscard]] QList<QAction*> laneActions() const;
    /// A lane for what a browser says, which comes once there is something to see.
    void addVerdicts(const compare::Comparison& comparison);
    /// Zoom in, zoom out, whole range; and a toggle, equal room for each band.
    [[nodiscard]] QList<QAction*> scaleActions() const { return scaleActions_; }
    [[nodiscard]] const WidthScale& scale() const { return scale_; }
    /// Goes to the next (+1) or the previous (−1) band edge: a breakpoint, or the first px past it.
    void goToBandEdge(int direction);
    /// Goes to the next (+1) or the previous (−1) run of widths at which engines differ; false if there is
    /// none.
    bool goToDifference(int direction);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Lane {
        QWidget* content;
        Disclosure* disclosure;
        QAction* action;
        int height;           ///< px; 0: shares what is left
        double share;         ///< of what is left
        bool present = true;  ///< false: neither lane nor name is there
    };
    void setPresent(qsizetype lane, bool present);
    void addLane(const QString& name, const QString& unit, QWidget* content, int height, double share);
    void addScaleActions();
    void arrange();
    void rescale();
    void onRow();
    void onSelection();
    void onWidth();
    void zoomAbout(double x, double factor);

    Viewing& viewing_;
    WidthScale scale_;
    EngineSweep* sweep_;
    Ruler* ruler_ = nullptr;
    BandsLane* bands_ = nullptr;
    EnginesLane* engines_ = nullptr;
    SizePlot* sizes_ = nullptr;
    MeasurePlot* measure_ = nullptr;
    Cursor* cursor_ = nullptr;
    QList<Lane> lanes_;
    QList<QAction*> scaleActions_;
    bool scaleHeld_ = false;
    bool dragging_ = false;
};

}  // namespace tenter::desktop::axis
