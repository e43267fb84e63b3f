// The width axis: ruler, lanes and plots on one scale of viewport widths, with one cursor across all of them.
#pragma once

#include <QAction>
#include <QWidget>
#include <optional>
#include <string>
#include <vector>

#include "axis/width_scale.h"
#include "css/breakpoints.h"
#include "document/engine_sweep.h"
#include "document/survey.h"
#include "document/viewing.h"

namespace tenter::desktop::compare {
class Comparison;
}

namespace tenter::desktop::axis {

class BandsLane;
class Cursor;
class Disclosure;
class DifferencesLane;
class MeasurePlot;
class Ruler;
class SizePlot;
class SweepPlot;
class WrapsLane;

class AxisPane : public QWidget {
    Q_OBJECT

public:
    AxisPane(Viewing& viewing, Survey& survey, QWidget* parent = nullptr);
    ~AxisPane() override;

    /// One toggle action per lane or plot, which opens and closes it.
    [[nodiscard]] QList<QAction*> laneActions() const;
    /// Adds the lane “Browser comparison”. It appears when the comparison has its first result.
    void addComparisonLane(const compare::Comparison& comparison);
    /// Zoom in, Zoom out, Whole range, and the toggle Equal room for each band.
    [[nodiscard]] QList<QAction*> scaleActions() const { return scaleActions_; }
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
    [[nodiscard]] const std::vector<css::Breakpoint>& themeBreakpoints() const { return themeBreakpoints_; }
    /// The theme's breakpoints near position `x` (px in the pane), a line for each; may be empty.
    [[nodiscard]] QString rulerToolTipAt(double x) const;
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
    bool event(QEvent* event) override;

private:
    /// When a lane opens without a click: always, if the window is tall enough, or never.
    enum class OpensWhen { Always, WindowIsTall, Chosen };
    struct Lane {
        QWidget* content;
        Disclosure* disclosure;
        QAction* action;
        OpensWhen opens;
        int height;             ///< px; 0: a plot, which shares the remaining height
        double share;           ///< of the remaining height, 0 to 1
        bool available = true;  ///< false: neither the lane nor its name is shown
    };
    void setAvailable(const QWidget* content, bool available);
    /// Gives the last lane added a longer name in menus and for screen readers.
    void nameInFull(const QString& name);
    /// Adds a lane of `height` px, or a plot with a `share` of the remaining height. `subtitle` is the unit
    /// of the values, `description` the tooltip of its name.
    void addLane(const QString& name, const QString& subtitle, const QString& description, QWidget* content,
                 int height, double share, OpensWhen opens = OpensWhen::Always);
    [[nodiscard]] bool windowIsTall() const;
    /// Arranges the names of closed lanes in rows from `y` (px) downwards, or only computes if `y` is empty.
    /// Returns the height of the rows, px.
    int arrangeClosed(std::optional<int> y) const;
    /// Opens the lanes that need a tall window if it is tall, and closes them if it is not.
    void openForWindowHeight();
    void readTheme();
    void addScaleActions();
    void arrange();
    void rescale();
    void onRow();
    void onSelection();
    void onWidth();
    void zoomAbout(double x, double factor);

    Viewing& viewing_;
    Survey& survey_;
    WidthScale scale_;
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
    QList<Lane> lanes_;
    QList<QAction*> scaleActions_;
    bool scaleFrozen_ = false;
    bool dragging_ = false;
    bool lanesChosenByUser_ = false;  // then the height of the window no longer opens or closes lanes
    int closedFrom_ = 0;              // px from the top, where the names of closed lanes begin
    project::SharedText themeCss_;
    std::vector<css::Breakpoint> themeBreakpoints_;
};

}  // namespace tenter::desktop::axis
