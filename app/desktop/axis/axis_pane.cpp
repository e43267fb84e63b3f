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
#include "axis/data_dialog.h"
#include "axis/differences_lane.h"
#include "axis/findings_lane.h"
#include "axis/measure_plot.h"
#include "axis/ruler.h"
#include "axis/size_plot.h"
#include "axis/sweep_plot.h"
#include "axis/thumbnails_lane.h"
#include "axis/wraps_lane.h"
#include "compare/comparison.h"
#include "controls/glossary.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "row/ink.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

constexpr int leftGutter = 136;  // px, for the names of lanes and the values of plots
constexpr int rightGutter = 88;  // px, for the labels of lines
constexpr int rulerHeight = 36;
constexpr int bandsHeight = 26;
constexpr int wrapsHeight = 24;
constexpr int findingsHeight = 30;
constexpr int audienceHeight = 32;
constexpr int differencesHeight = 24;
constexpr int comparisonHeight = 28;

}  // namespace

AxisPane::AxisPane(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      theme_(scale_),
      engineSweep_(new EngineSweep(session.layouts, this)),
      lanes_(*this),
      scaleActions_(session.view, scale_, this),
      data_(new QAction(QObject::tr("Show data as &table…"), this)) {
    setFocusPolicy(Qt::StrongFocus);
    // Widths grow to the right, as the numbers of a ruler do in every language.
    setLayoutDirection(Qt::LeftToRight);
    setAccessibleName(QObject::tr("Viewport width axis"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    setFont(controls::smallFont(font()));
    ruler_ = new Ruler(scale_, this);
    bands_ = new BandsLane(session_, scale_, this);
    wraps_ = new WrapsLane(session_.layouts, session_.selection, session_.checks, scale_, this);
    auto* const findings = new FindingsLane(session_.checks, scale_, this);
    auto* const audience = new AudienceLane(session_.checks, scale_, this);
    differences_ = new DifferencesLane(session_.layouts, *engineSweep_, scale_, this);
    sizes_ = new SizePlot(session_, scale_, this);
    measure_ = new MeasurePlot(session_.layouts, session_.selection, scale_, this);
    heights_ =
        new SweepPlot(SweepPlot::Quantity::CardHeight, session_.checks, session_.selection, scale_, this);
    slots_ =
        new SweepPlot(SweepPlot::Quantity::PictureSlot, session_.checks, session_.selection, scale_, this);
    auto* const thumbnails = new ThumbnailsLane(session_, scale_, this);
    addLanes(findings, audience, thumbnails);
    cursor_ = new Cursor(session_.layouts, scale_, *sizes_, this);
    lanes_.setAvailable(audience, false);
    onChange(session_.checks, CheckRunner::Change::Audience, this,
             [this, audience] { lanes_.setAvailable(audience, !session_.checks.audience().empty()); });
    connect(&lanes_, &LaneStack::changed, this, [this](bool opened) {
        arrange();
        if (opened) onRow();
        limitHeight();
        updateGeometry();
        Q_EMIT lanesChanged();
    });
    connect(&scaleActions_, &ScaleActions::changed, this, &AxisPane::rescale);
    onChange(session_.layouts, LayoutCache::Change::Row, this, &AxisPane::onRow);
    onChange(session_.selection, SelectionModel::Change::Place | SelectionModel::Change::Role, this,
             &AxisPane::onSelection);
    onChange(session_.view, ViewState::Change::Width, this, &AxisPane::onWidth);
    connect(bands_, &BandsLane::edgeGrabbed, this, [this] { scaleFrozen_ = scale_.equalRoom(); });
    connect(bands_, &BandsLane::edgeReleased, this, [this] {
        scaleFrozen_ = false;
        onRow();
    });
    data_->setShortcut(Qt::CTRL | Qt::Key_T);
    connect(data_, &QAction::triggered, this, &AxisPane::showData);
    onRow();
}

void AxisPane::addLanes(QWidget* findings, QWidget* audience, QWidget* thumbnails) {
    using enum LaneStack::OpensWhen;
    const auto explained = [](const char* ownWord, const QString& then) {
        return QObject::tr(ownWord) + ".\n" + then;
    };
    lanes_.add(QT_TRANSLATE_NOOP("QObject", "Bands"), {},
               explained(glossary::band, QObject::tr("Drag a breakpoint to move it.")), bands_,
               controls::scaled(bandsHeight), 0);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Wrap points"), {},
        explained(glossary::wrapPoint,
                  QObject::tr("Each tick marks one change of a line count. Ticks of the selected text are "
                              "longer.")),
        wraps_, controls::scaled(wrapsHeight), 0, WindowIsTall);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Findings"), {},
        QObject::tr(
            "The widths at which each finding occurs. A thicker line is a more severe finding. Click a "
            "line to show the finding."),
        findings, controls::scaled(findingsHeight), 0);
    lanes_.add(QT_TRANSLATE_NOOP("QObject", "Audience"), {},
               QObject::tr("The number of visits at each viewport width."), audience,
               controls::scaled(audienceHeight), 0);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Chromium/Firefox"), {},
        QObject::tr("The widths at which some text has a different number of lines in Chromium and Firefox."),
        differences_, controls::scaled(differencesHeight), 0, WindowIsVeryTall);
    lanes_.nameInFull(QObject::tr("Chromium/Firefox differences"));
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Thumbnails"), QObject::tr("at key widths"),
        QObject::tr(
            "Small pictures of the row at the ends of the range, on both sides of each breakpoint and at "
            "the worst finding. Click one to go to its width."),
        thumbnails, ThumbnailsLane::laneHeight(), 0, WindowIsVeryTall);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Font size"), QObject::tr("px"),
        explained(glossary::ramp,
                  QObject::tr(
                      "Drag the ends of a ramp to change it. Sizes in hatched areas do not satisfy a wish.")),
        sizes_, 0, 0.58, WindowIsTall);
    lanes_.setKey(Qt::Key_F6);
    lanes_.add(QT_TRANSLATE_NOOP("QObject", "Measure"), QObject::tr("characters"),
               explained(glossary::measure,
                         QObject::tr("Dashed lines mark the comfortable range: 45 to 75 characters in "
                                     "one column, 40 to 50 in several columns.")),
               measure_, 0, 0.42, WindowIsTall);
    lanes_.setKey(Qt::SHIFT | Qt::Key_F6);
    lanes_.add(QT_TRANSLATE_NOOP("QObject", "Card height"), QObject::tr("px"),
               QObject::tr("The height of each card at each viewport width."), heights_, 0, 0.42, Chosen);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Picture size"), QObject::tr("px"),
        explained(glossary::slot,
                  QObject::tr("The plot shows the width and height of the slot at each viewport width.")),
        slots_, 0, 0.42, Chosen);
}

AxisPane::~AxisPane() = default;

void AxisPane::addComparisonLane(const compare::Comparison& comparison) {
    auto* lane = new ComparisonLane(comparison, scale_, this);
    lanes_.add(
        QT_TRANSLATE_NOOP("QObject", "Comparison"), {},
        QObject::tr(
            "Result of the last comparison with a browser. A thin line: the browser agrees with Tenter at "
            "this width. A bar: it differs. A taller bar is a larger difference."),
        lane, controls::scaled(comparisonHeight), 0);
    lanes_.nameInFull(QObject::tr("Comparison with browser"));
    lanes_.moveLastBelow(differences_);
    lanes_.setAvailable(lane, false);
    connect(&comparison, &compare::Comparison::changed, this,
            [this, lane, &comparison] { lanes_.setAvailable(lane, !comparison.verdicts().empty()); });
}

// ---- Arrangement of lanes

bool AxisPane::windowIsTall() const {
    return window()->height() >= LaneStack::tallWindow;
}

QSize AxisPane::sizeHint() const {
    return {900, controls::scaled(rulerHeight) + lanes_.comfortableHeight(windowIsTall())};
}

QSize AxisPane::minimumSizeHint() const {
    return {480, controls::scaled(rulerHeight) + lanes_.minimumHeight()};
}

// Without a plot, more height would stay empty.
void AxisPane::limitHeight() {
    setMaximumHeight(lanes_.hasPlot() ? QWIDGETSIZE_MAX : minimumSizeHint().height());
}

void AxisPane::chooseLanes(const std::optional<QStringList>& names) {
    lanes_.chooseLanes(names);
    lanes_.openForWindow(window()->height());
}

void AxisPane::arrange() {
    scale_.setSpan(controls::scaled(leftGutter),
                   std::max(controls::scaled(leftGutter) + 40, width() - controls::scaled(rightGutter)));
    ruler_->setGeometry(0, 0, width(), controls::scaled(rulerHeight));
    lanesBottom_ = lanes_.arrange(controls::scaled(rulerHeight));
    cursor_->setGeometry(0, 0, width(), lanesBottom_);
    cursor_->raise();
    rescale();
}

void AxisPane::rescale() {
    ruler_->update();
    bands_->refresh();
    lanes_.update();
    sizes_->refresh();
    sizes_->placeHandles();
    measure_->refresh();
    heights_->refresh();
    slots_->refresh();
    cursor_->follow();
    update();
}

void AxisPane::resizeEvent(QResizeEvent*) {
    lanes_.openForWindow(window()->height());
    arrange();
    limitHeight();
}

void AxisPane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    lanes_.openForWindow(window()->height());
    onRow();
}

void AxisPane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.fillRect(rect(), ink.ground);
    painter.setPen(ink.faint);
    lanes_.paintLines(painter);
    // Drawn first, behind the project's own breakpoints.
    theme_.paint(painter, ink, lanesBottom_);
}

void AxisPane::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) update();
}

// ---- Updates

void AxisPane::onRow() {
    const project::Project& project = session_.shown.project();
    if (!scaleFrozen_) {
        const bool range = scale_.least() != project.leastWidth || scale_.most() != project.mostWidth;
        scale_.setRange(project.leastWidth, project.mostWidth);
        scale_.setBreakpoints(Bands::of(project, session_.view.variant()).breakpoints);
        if (range || scale_.equalRoom()) {
            ruler_->update();
            heights_->refresh();
            slots_->refresh();
        }
    }
    if (theme_.read(project)) {
        ruler_->setAccessibleDescription(theme_.description());
        update();
    }
    bands_->refresh();
    sizes_->rebuild();
    measure_->rebuild();
    onWidth();
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
    const double x = scale_.x(session_.view.width());
    if (!scale_.isWhole() && !dragging_ && (x < scale_.left() || x > scale_.right())) {
        scale_.reveal(session_.view.width());
        rescale();
    }
    cursor_->follow();
}

void AxisPane::showData() {
    if (dialog_ == nullptr) dialog_ = new DataDialog(lanes_, session_, window());
    dialog_->show();
    dialog_->raise();
    dialog_->activateWindow();
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
    session_.view.setWidth(std::round(scale_.width(std::clamp(x, scale_.left(), scale_.right()))));
}

void AxisPane::mouseMoveEvent(QMouseEvent* event) {
    if (!dragging_) return;
    const double x = std::clamp(event->position().x(), scale_.left(), scale_.right());
    session_.view.setWidth(std::round(scale_.width(x)));
}

void AxisPane::mouseReleaseEvent(QMouseEvent*) {
    dragging_ = false;
}

void AxisPane::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        scaleActions_.zoomAbout(event->position().x(), std::pow(zoomStep, turned.y() / 120.0));
    } else if (!scale_.isWhole()) {
        scale_.pan(-(turned.x() != 0 ? turned.x() : turned.y()) * 0.5);
        rescale();
    }
    event->accept();
}

void AxisPane::goToBandEdge(int direction) {
    session_.view.setWidth(Bands::of(session_.shown.project(), session_.view.variant())
                               .endBeside(session_.view.width(), direction));
}

bool AxisPane::goToDifference(int direction) {
    const auto width = differences_->next(direction);
    if (width) session_.view.setWidth(*width);
    return width.has_value();
}

QString AxisPane::goToWrap(int direction) {
    const auto stop = wraps_->next(direction);
    if (!stop) return {};
    session_.view.setWidth(stop->width);
    return stop->text;
}

void AxisPane::keyPressEvent(QKeyEvent* event) {
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? 10 : 1;
    switch (event->key()) {
        case Qt::Key_Down:
            session_.view.setWidth(std::ceil(session_.view.width()) - step);
            return;
        case Qt::Key_Up:
            session_.view.setWidth(std::floor(session_.view.width()) + step);
            return;
        case Qt::Key_PageUp:
            goToBandEdge(-1);
            return;
        case Qt::Key_PageDown:
            goToBandEdge(1);
            return;
        case Qt::Key_Home:
            session_.view.setWidth(session_.shown.project().leastWidth);
            return;
        case Qt::Key_End:
            session_.view.setWidth(session_.shown.project().mostWidth);
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
