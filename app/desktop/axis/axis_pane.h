// The width axis: ruler, lanes and plots on one scale of viewport widths, with one cursor across all of them.
#pragma once

#include <QAction>
#include <QWidget>
#include <vector>

#include "axis/lane_stack.h"
#include "axis/scale_actions.h"
#include "axis/theme_breakpoints.h"
#include "axis/width_scale.h"
#include "session/engine_sweep.h"
#include "session/session.h"

namespace tenter::desktop::compare {
class Comparison;
}

namespace tenter::desktop::axis {

class BandsLane;
class Cursor;
class DataDialog;
class DifferencesLane;
class MeasurePlot;
class Ruler;
class SizePlot;
class SweepPlot;
class WrapsLane;

class AxisPane : public QWidget {
    Q_OBJECT

public:
    AxisPane(Session& session, QWidget* parent = nullptr);
    ~AxisPane() override;

    /// One toggle action per lane or plot, which opens and closes it.
    [[nodiscard]] QList<QAction*> laneActions() const { return lanes_.actions(); }
    /// The names of the open lanes and plots, if the user has chosen them.
    [[nodiscard]] std::optional<QStringList> chosenLanes() const { return lanes_.chosenLanes(); }
    /// Opens these lanes and plots; without names, those that the height of the window allows.
    void chooseLanes(const std::optional<QStringList>& names);
    /// Adds the lane “Browser comparison”. It appears when the comparison has its first result.
    void addComparisonLane(const compare::Comparison& comparison);
    /// Zoom in, Zoom out, Whole range, and the toggle Equal room for each band.
    [[nodiscard]] QList<QAction*> scaleActions() const { return scaleActions_.all(); }
    /// Shows the data of the open lanes and plots as a table.
    [[nodiscard]] QAction* dataAction() const { return data_; }
    [[nodiscard]] const WidthScale& scale() const { return scale_; }
    /// Moves the width to the next (+1) or previous (−1) band end: a breakpoint, or the first px above it.
    void goToBandEdge(int direction);
    /// Moves the width to the next (+1) or previous (−1) range in which browsers differ; false if there is
    /// none.
    bool goToDifference(int direction);
    /// Moves the width past the next (+1) or previous (−1) wrap point. Returns what changes there; empty if
    /// there is no such wrap point.
    QString goToWrap(int direction);
    /// Breakpoints in the theme's CSS of an imported row; empty for other rows.
    [[nodiscard]] const std::vector<css::Breakpoint>& themeBreakpoints() const { return theme_.all(); }
    /// The theme's breakpoints near position `x` (px in the pane), a line for each; may be empty.
    [[nodiscard]] QString rulerToolTipAt(double x) const { return theme_.toolTipAt(x); }
    /// The viewport width and its limits, CSS px.
    [[nodiscard]] double viewportWidth() const { return session_.view.width(); }
    void setViewportWidth(double width) { session_.view.setWidth(width); }
    [[nodiscard]] double leastWidth() const { return session_.shown.project().leastWidth; }
    [[nodiscard]] double mostWidth() const { return session_.shown.project().mostWidth; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// A lane was opened or closed, so that another height is comfortable.
    void lanesChanged();

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
    bool event(QEvent* event) override;

private:
    void addLanes(QWidget* findings, QWidget* audience, QWidget* thumbnails);
    [[nodiscard]] bool windowIsTall() const;
    void arrange();
    void limitHeight();
    void rescale();
    void onRow();
    void onSelection();
    void onWidth();
    void showData();

    Session& session_;
    WidthScale scale_;
    ThemeBreakpoints theme_;
    EngineSweep* engineSweep_;
    Ruler* ruler_ = nullptr;
    BandsLane* bands_ = nullptr;
    WrapsLane* wraps_ = nullptr;
    DifferencesLane* differences_ = nullptr;
    SizePlot* sizes_ = nullptr;
    MeasurePlot* measure_ = nullptr;
    SweepPlot* heights_ = nullptr;
    SweepPlot* slots_ = nullptr;
    Cursor* cursor_ = nullptr;
    LaneStack lanes_;
    ScaleActions scaleActions_;
    QAction* data_;
    DataDialog* dialog_ = nullptr;
    bool scaleFrozen_ = false;
    bool dragging_ = false;
    int lanesBottom_ = 0;  // px from the top, where the names of closed lanes begin
};

}  // namespace tenter::desktop::axis
