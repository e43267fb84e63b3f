#include "axis/axis_pane.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "axis/audience_lane.h"
#include "axis/bands_lane.h"
#include "axis/comparison_lane.h"
#include "axis/cursor.h"
#include "axis/curves.h"
#include "axis/differences_lane.h"
#include "axis/disclosure.h"
#include "axis/findings_lane.h"
#include "axis/measure_plot.h"
#include "axis/ruler.h"
#include "axis/size_plot.h"
#include "axis/sweep_plot.h"
#include "axis/thumbnails_lane.h"
#include "axis/wraps_lane.h"
#include "compare/comparison.h"
#include "controls/glossary.h"
#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int leftGutter = 136;  // px, for the names of lanes and the values of plots
constexpr int rightGutter = 88;  // px, for the labels of lines
constexpr int rulerHeight = 40;
constexpr int bandsHeight = 28;
constexpr int wrapsHeight = 24;
constexpr int findingsHeight = 40;
constexpr int audienceHeight = 32;
constexpr int differencesHeight = 24;
constexpr int comparisonHeight = 28;
constexpr int closedHeight = 22;
constexpr int leastPlotHeight = 56;
constexpr int tallWindow = 960;   // px; a window at least this high has room for every lane
constexpr double themeReach = 4;  // px from the pointer to a breakpoint of the theme
constexpr double themeTop = 4;    // px from the top to the lines of the theme's breakpoints
constexpr double zoomStep = 1.5;

}  // namespace

AxisPane::AxisPane(Viewing& viewing, Survey& survey, QWidget* parent)
    : QWidget(parent), viewing_(viewing), survey_(survey), engineSweep_(new EngineSweep(viewing, this)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Viewport width axis"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    QFont small = font();
    small.setPixelSize(11);
    setFont(small);
    ruler_ = new Ruler(scale_, this);
    bands_ = new BandsLane(viewing_, scale_, this);
    wraps_ = new WrapsLane(viewing_, survey_, scale_, this);
    auto* const findings = new FindingsLane(survey_, scale_, this);
    auto* const audience = new AudienceLane(survey_, scale_, this);
    differences_ = new DifferencesLane(viewing_, *engineSweep_, scale_, this);
    sizes_ = new SizePlot(viewing_, scale_, this);
    measure_ = new MeasurePlot(viewing_, scale_, this);
    heights_ = new SweepPlot(SweepPlot::Quantity::CardHeight, viewing_, survey_, scale_, this);
    slots_ = new SweepPlot(SweepPlot::Quantity::PictureSlot, viewing_, survey_, scale_, this);
    auto* const thumbnails = new ThumbnailsLane(viewing_, survey_, scale_, this);
    const auto explained = [](const char* ownWord, const QString& then) {
        return QString::fromUtf8(ownWord) + ".\n" + then;
    };
    addLane(tr("Bands"), {}, explained(glossary::band, tr("Drag a breakpoint to move it.")), bands_,
            bandsHeight, 0);
    addLane(tr("Wrap points"), {},
            explained(glossary::wrapPoint,
                      tr("Each tick marks one change of a line count. Ticks of the selected text are "
                         "longer.")),
            wraps_, wrapsHeight, 0);
    addLane(tr("Findings"), {},
            tr("The widths at which each finding occurs. A thicker line is a more severe finding. Click a "
               "line to show the finding."),
            findings, findingsHeight, 0);
    addLane(tr("Audience"), {}, tr("The number of visits at each viewport width."), audience, audienceHeight,
            0);
    addLane(tr("Chromium/Firefox"), {},
            tr("The widths at which some text has a different number of lines in Chromium and Firefox."),
            differences_, differencesHeight, 0, OpensWhen::WindowIsTall);
    nameInFull(tr("Chromium/Firefox differences"));
    addLane(tr("Thumbnails"), tr("at key widths"),
            tr("Small pictures of the row at the ends of the range, on both sides of each breakpoint and at "
               "the worst finding. Click one to go to its width."),
            thumbnails, ThumbnailsLane::laneHeight, 0, OpensWhen::WindowIsTall);
    addLane(
        tr("Font size"), tr("px"),
        explained(glossary::ramp,
                  tr("Drag the ends of a ramp to change it. Sizes in hatched areas do not satisfy a wish.")),
        sizes_, 0, 0.58);
    addLane(tr("Measure"), tr("characters"),
            explained(glossary::measure, tr("Dashed lines mark the comfortable range: 45 to 75 characters in "
                                            "one column, 40 to 50 in several columns.")),
            measure_, 0, 0.42);
    addLane(tr("Card height"), tr("px"), tr("The height of each card at each viewport width."), heights_, 0,
            0.42, OpensWhen::Chosen);
    addLane(tr("Picture size"), tr("px"),
            explained(glossary::slot,
                      tr("The plot shows the width and height of the slot at each viewport width.")),
            slots_, 0, 0.42, OpensWhen::Chosen);
    cursor_ = new Cursor(viewing_, scale_, *sizes_, this);
    addScaleActions();
    setAvailable(audience, false);
    connect(&survey_, &Survey::audienceChanged, this,
            [this, audience] { setAvailable(audience, !survey_.audience().empty()); });
    // The sweep of a row with many parts arrives later, from a background thread.
    connect(&survey_, &Survey::swept, this, [this] {
        heights_->rebuild();
        slots_->rebuild();
    });
    connect(&viewing_, &Viewing::rowChanged, this, &AxisPane::onRow);
    connect(&viewing_, &Viewing::selectionChanged, this, &AxisPane::onSelection);
    connect(&viewing_, &Viewing::widthChanged, this, &AxisPane::onWidth);
    connect(bands_, &BandsLane::edgeGrabbed, this, [this] { scaleFrozen_ = scale_.equalRoom(); });
    connect(bands_, &BandsLane::edgeReleased, this, [this] {
        scaleFrozen_ = false;
        onRow();
    });
    onRow();
}

AxisPane::~AxisPane() = default;

QList<QAction*> AxisPane::laneActions() const {
    QList<QAction*> actions;
    for (const Lane& lane : lanes_)
        actions.append(lane.action);
    return actions;
}

void AxisPane::addLane(const QString& name, const QString& subtitle, const QString& description,
                       QWidget* content, int height, double share, OpensWhen opens) {
    const bool open = opens == OpensWhen::Always;
    auto* action = new QAction(name, this);
    action->setCheckable(true);
    action->setChecked(open);
    action->setToolTip(toolTipText(description));
    auto* disclosure = new Disclosure(name, subtitle, this);
    disclosure->setToolTip(toolTipText(description));
    disclosure->setAccessibleDescription(description);
    disclosure->setChecked(open);
    content->setVisible(open);
    connect(disclosure, &QAbstractButton::toggled, action, &QAction::setChecked);
    connect(disclosure, &QAbstractButton::clicked, this, [this] { lanesChosenByUser_ = true; });
    connect(action, &QAction::triggered, this, [this] { lanesChosenByUser_ = true; });
    connect(action, &QAction::toggled, this, [this, content, disclosure](bool opened) {
        disclosure->setChecked(opened);
        content->setVisible(opened);
        arrange();
        if (opened) onRow();
        updateGeometry();
    });
    lanes_.append({content, disclosure, action, opens, height, share});
}

void AxisPane::nameInFull(const QString& name) {
    lanes_.last().action->setText(name);
    lanes_.last().disclosure->setAccessibleName(name);
}

void AxisPane::addComparisonLane(const compare::Comparison& comparison) {
    auto* lane = new ComparisonLane(comparison, scale_, this);
    addLane(tr("Comparison"), {},
            tr("Result of the last comparison with a browser. A thin line: the browser agrees with Tenter at "
               "this width. A bar: it differs. A taller bar is a larger difference."),
            lane, comparisonHeight, 0);
    nameInFull(tr("Comparison with browser"));
    // Below the lane of Chromium/Firefox differences.
    const auto differences = std::ranges::find(lanes_, differences_, &Lane::content);
    lanes_.move(lanes_.size() - 1, differences - lanes_.begin() + 1);
    setAvailable(lane, false);
    connect(&comparison, &compare::Comparison::changed, this,
            [this, lane, &comparison] { setAvailable(lane, !comparison.verdicts().empty()); });
}

void AxisPane::setAvailable(const QWidget* content, bool available) {
    Lane& lane = *std::ranges::find(lanes_, content, &Lane::content);
    if (lane.available == available) return;
    lane.available = available;
    lane.action->setVisible(available);
    lane.disclosure->setVisible(available);
    lane.content->setVisible(available && lane.action->isChecked());
    arrange();
    updateGeometry();
}

void AxisPane::addScaleActions() {
    const auto add = [this](const QString& text, const QKeySequence& shortcut, auto&& does) {
        auto* action = new QAction(text, this);
        action->setShortcut(shortcut);
        connect(action, &QAction::triggered, this, does);
        scaleActions_.append(action);
        return action;
    };
    add(tr("Zoom &in"), Qt::CTRL | Qt::ALT | Qt::Key_Plus,
        [this] { zoomAbout(scale_.x(viewing_.width()), zoomStep); });
    add(tr("Zoom &out"), Qt::CTRL | Qt::ALT | Qt::Key_Minus,
        [this] { zoomAbout(scale_.x(viewing_.width()), 1 / zoomStep); });
    add(tr("&Whole range"), Qt::CTRL | Qt::ALT | Qt::Key_0, [this] {
        scale_.showWhole();
        rescale();
    });
    QAction* const equal = add(tr("&Equal room for each band"), {}, [] {});
    equal->setCheckable(true);
    connect(equal, &QAction::toggled, this, [this](bool on) {
        scale_.setEqualRoom(on);
        scale_.showWhole();
        rescale();
    });
}

// ---- Arrangement of lanes

bool AxisPane::windowIsTall() const {
    return window()->height() >= tallWindow;
}

// Chosen so that in a window of 1280 × 800 px the row view has more than half of the height.
QSize AxisPane::sizeHint() const {
    return {900, windowIsTall() ? 448 : 328};
}

QSize AxisPane::minimumSizeHint() const {
    int height = rulerHeight + arrangeClosed(std::nullopt);
    for (const Lane& lane : lanes_)
        if (lane.available && lane.action->isChecked())
            height += lane.height > 0 ? lane.height : leastPlotHeight;
    return {480, height};
}

int AxisPane::arrangeClosed(std::optional<int> y) const {
    constexpr int from = 6;
    constexpr int apart = 8;
    int rows = 0;
    int x = width();
    for (const Lane& lane : lanes_) {
        if (!lane.available || lane.action->isChecked()) continue;
        const QSize name = lane.disclosure->sizeHint();
        if (x + name.width() > width() - from) {
            x = from;
            ++rows;
        }
        if (y)
            lane.disclosure->setGeometry(x, *y + rows * closedHeight - (closedHeight + name.height()) / 2,
                                         name.width(), name.height());
        x += name.width() + apart;
    }
    return rows * closedHeight;
}

void AxisPane::arrange() {
    scale_.setSpan(leftGutter, std::max(leftGutter + 40, width() - rightGutter));
    int fixed = rulerHeight + arrangeClosed(std::nullopt);
    double shares = 0;
    for (const Lane& lane : lanes_) {
        if (!lane.available || !lane.action->isChecked()) continue;
        if (lane.height > 0)
            fixed += lane.height;
        else
            shares += lane.share;
    }
    const int rest = std::max(0, height() - fixed);
    ruler_->setGeometry(0, 0, width(), rulerHeight);
    int y = rulerHeight;
    for (const Lane& lane : lanes_) {
        if (!lane.available || !lane.action->isChecked()) continue;
        const int room =
            lane.height > 0 ? lane.height : static_cast<int>(std::floor(rest * lane.share / shares));
        lane.content->setGeometry(0, y + 1, width(), std::max(1, room - 1));
        const QSize name = lane.disclosure->sizeHint();
        lane.disclosure->setGeometry(
            6,
            lane.height > 0 ? std::max(y + 4, y + std::min(room, bandsHeight) / 2 - name.height() / 2)
                            : y + 4,
            name.width(), name.height());
        lane.disclosure->raise();
        y += room;
    }
    closedFrom_ = y;
    arrangeClosed(y);
    cursor_->setGeometry(0, 0, width(), closedFrom_);
    cursor_->raise();
    rescale();
}

void AxisPane::rescale() {
    ruler_->update();
    bands_->refresh();
    for (const Lane& lane : lanes_)
        lane.content->update();
    sizes_->refresh();
    sizes_->placeHandles();
    measure_->refresh();
    heights_->refresh();
    slots_->refresh();
    cursor_->follow();
    update();
}

void AxisPane::openForWindowHeight() {
    if (lanesChosenByUser_) return;
    for (const Lane& lane : lanes_)
        if (lane.opens == OpensWhen::WindowIsTall) lane.action->setChecked(windowIsTall());
}

void AxisPane::resizeEvent(QResizeEvent*) {
    openForWindowHeight();
    arrange();
}

void AxisPane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    openForWindowHeight();
    onRow();
}

void AxisPane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.fillRect(rect(), ink.ground);
    painter.setPen(ink.faint);
    for (const Lane& lane : lanes_)
        if (lane.available && lane.action->isChecked())
            painter.drawLine(0, lane.content->y() - 1, width(), lane.content->y() - 1);
    painter.drawLine(0, closedFrom_, width(), closedFrom_);
    // The theme's breakpoints are drawn first, behind the project's own.
    double free = 0;
    for (const css::Breakpoint& breakpoint : themeBreakpoints_) {
        const double x = std::round(scale_.x(breakpoint.width)) + 0.5;
        if (x < scale_.left() || x > scale_.right() + 1) continue;
        painter.setPen(QPen(ink.line, 1, Qt::DotLine));
        painter.drawLine(QPointF(x, themeTop), QPointF(x, closedFrom_));
        const QString name = tr("theme");
        if (x < free) continue;
        painter.setPen(ink.quiet);
        painter.drawText(QPointF(x + 4, themeTop + fontMetrics().ascent() - 2), name);
        free = x + fontMetrics().horizontalAdvance(name) + 8;
    }
}

void AxisPane::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) update();
}

// ---- Updates

void AxisPane::onRow() {
    const project::Project& project = viewing_.shown();
    if (!scaleFrozen_) {
        const bool range = scale_.least() != project.leastWidth || scale_.most() != project.mostWidth;
        scale_.setRange(project.leastWidth, project.mostWidth);
        scale_.setBreakpoints(Bands::of(project, viewing_.variant()).breakpoints);
        if (range || scale_.equalRoom()) ruler_->update();
    }
    readTheme();
    bands_->refresh();
    sizes_->rebuild();
    measure_->rebuild();
    heights_->rebuild();
    slots_->rebuild();
    onWidth();
}

void AxisPane::readTheme() {
    const auto& given = viewing_.shown().given;
    const project::SharedText theme = given ? given->theme : project::SharedText();
    if (theme == themeCss_) return;
    themeCss_ = theme;
    themeBreakpoints_ = css::breakpointsOf(css::readSheet(theme));
    QStringList widths;
    for (const css::Breakpoint& breakpoint : themeBreakpoints_)
        widths << pixels(breakpoint.width);
    ruler_->setAccessibleDescription(
        widths.isEmpty() ? QString() : tr("Breakpoints of the theme: %1").arg(widths.join(", ")));
    update();
}

QString AxisPane::rulerToolTipAt(double x) const {
    QStringList lines;
    for (const css::Breakpoint& breakpoint : themeBreakpoints_)
        if (std::abs(scale_.x(breakpoint.width) - x) <= themeReach)
            lines << tr("Breakpoint of the theme at %1: %2")
                         .arg(pixels(breakpoint.width), QString::fromStdString(breakpoint.condition));
    return lines.join('\n');
}

bool AxisPane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), rulerToolTipAt(help->pos().x()), this);
    return true;
}

void AxisPane::onSelection() {
    sizes_->rebuild();
    measure_->rebuild();
    cursor_->follow();
}

void AxisPane::onWidth() {
    setAccessibleDescription(cursor_->text());
    sizes_->onWidth();
    const double x = scale_.x(viewing_.width());
    if (!scale_.isWhole() && !dragging_ && (x < scale_.left() || x > scale_.right())) {
        scale_.reveal(viewing_.width());
        rescale();
    }
    cursor_->follow();
}

void AxisPane::zoomAbout(double x, double factor) {
    scale_.zoomAbout(std::clamp(x, scale_.left(), scale_.right()), factor);
    rescale();
}

// ---- Pointer and keyboard

void AxisPane::mousePressEvent(QMouseEvent* event) {
    const double x = event->position().x();
    if (event->button() != Qt::LeftButton || x < scale_.left() - 8 || x > scale_.right() + 8) {
        event->ignore();
        return;
    }
    setFocus(Qt::MouseFocusReason);
    dragging_ = true;
    viewing_.setWidth(std::round(scale_.width(std::clamp(x, scale_.left(), scale_.right()))));
}

void AxisPane::mouseMoveEvent(QMouseEvent* event) {
    if (!dragging_) return;
    const double x = std::clamp(event->position().x(), scale_.left(), scale_.right());
    viewing_.setWidth(std::round(scale_.width(x)));
}

void AxisPane::mouseReleaseEvent(QMouseEvent*) {
    dragging_ = false;
}

void AxisPane::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        zoomAbout(event->position().x(), std::pow(zoomStep, turned.y() / 120.0));
    } else if (!scale_.isWhole()) {
        scale_.pan(-(turned.x() != 0 ? turned.x() : turned.y()) * 0.5);
        rescale();
    }
    event->accept();
}

void AxisPane::goToBandEdge(int direction) {
    const Bands bands = Bands::of(viewing_.shown(), viewing_.variant());
    std::vector<double> edges{bands.least};
    for (const double breakpoint : bands.breakpoints) {
        edges.push_back(breakpoint);
        edges.push_back(std::floor(breakpoint) + 1);
    }
    edges.push_back(bands.most);
    const double now = viewing_.width();
    double to = now;
    for (const double edge : edges) {
        if (direction > 0 && edge > now) {
            to = edge;
            break;
        }
        if (direction < 0 && edge < now) to = edge;
    }
    viewing_.setWidth(to);
}

bool AxisPane::goToDifference(int direction) {
    const auto width = differences_->next(direction);
    if (width) viewing_.setWidth(*width);
    return width.has_value();
}

QString AxisPane::goToWrap(int direction) {
    const auto stop = wraps_->next(direction);
    if (!stop) return {};
    viewing_.setWidth(stop->width);
    return stop->text;
}

void AxisPane::keyPressEvent(QKeyEvent* event) {
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? 10 : 1;
    switch (event->key()) {
        case Qt::Key_Down:
            viewing_.setWidth(std::ceil(viewing_.width()) - step);
            return;
        case Qt::Key_Up:
            viewing_.setWidth(std::floor(viewing_.width()) + step);
            return;
        case Qt::Key_PageUp:
            goToBandEdge(-1);
            return;
        case Qt::Key_PageDown:
            goToBandEdge(1);
            return;
        case Qt::Key_Home:
            viewing_.setWidth(viewing_.shown().leastWidth);
            return;
        case Qt::Key_End:
            viewing_.setWidth(viewing_.shown().mostWidth);
            return;
        default:
            event->ignore();
    }
}

void AxisPane::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    cursor_->setFocused(event->reason() != Qt::MouseFocusReason);
}

void AxisPane::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    cursor_->setFocused(false);
}

}  // namespace tenter::desktop::axis
