// The width axis: ruler, lanes and plots over one scale, with one cursor through them all.
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
class EnginesLane;
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
    /// Goes past the next (+1) or the previous (−1) wrap point; what changed there, empty if there is none.
    QString goToWrap(int direction);
    /// Where the theme of given markup changes what it says.
    [[nodiscard]] const std::vector<css::Breakpoint>& themeBreakpoints() const { return theme_; }
    /// What stands on the ruler at a position, besides widths; may be empty.
    [[nodiscard]] QString rulerSays(double x) const;
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
    /// How a lane stands when the window is first shown.
    enum class Opens { Always, WhereThereIsRoom, OnRequest };
    struct Lane {
        QWidget* content;
        Disclosure* disclosure;
        QAction* action;
        Opens opens;
        int height;           ///< px; 0: shares what is left
        double share;         ///< of what is left
        bool present = true;  ///< false: neither lane nor name is there
    };
    void setPresent(const QWidget* content, bool present);
    void addLane(const QString& name, const QString& unit, QWidget* content, int height, double share,
                 Opens opens = Opens::Always);
    [[nodiscard]] bool hasRoom() const;
    /// Names of closed lanes stand side by side at the foot: places them from `y` on, if there is one. The
    /// height they take.
    int arrangeClosed(std::optional<int> y) const;
    /// Opens lanes for which there is room, and closes them where there is none.
    void openByRoom();
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
    EngineSweep* sweep_;
    Ruler* ruler_ = nullptr;
    BandsLane* bands_ = nullptr;
    WrapsLane* wraps_ = nullptr;
    EnginesLane* engines_ = nullptr;
    SizePlot* sizes_ = nullptr;
    MeasurePlot* measure_ = nullptr;
    SweepPlot* heights_ = nullptr;
    SweepPlot* slots_ = nullptr;
    Cursor* cursor_ = nullptr;
    QList<Lane> lanes_;
    QList<QAction*> scaleActions_;
    bool scaleHeld_ = false;
    bool dragging_ = false;
    bool lanesChosen_ = false;  // by the person: from then on the window's size opens and closes none
    int closedFrom_ = 0;        // px from the top, where the names of closed lanes begin
    std::string themeRead_;
    std::vector<css::Breakpoint> theme_;
};

}  // namespace tenter::desktop::axis
