#include "row/row_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "row/figures.h"
#include "row/finding_mark.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

constexpr int gutter = 24;     // desk left of the page, view px
constexpr int edgeRoom = 48;   // and right of it, where the edge is held
constexpr int edgeReach = 6;   // how near the pointer has to be to hold the edge
constexpr int wheelStep = 64;  // view px for a notch of the wheel
constexpr double leastZoom = 0.1;
constexpr double mostZoom = 8;

}  // namespace

RowView::RowView(Viewing& viewing, const Survey& survey, QWidget* parent)
    : QAbstractScrollArea(parent), viewing_(viewing), survey_(survey), row_(viewing, pictures_) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Row at this width"));
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setAutoFillBackground(false);
    figures_ = new FigureBox(viewport());
    addActions();
    connect(&viewing_, &Viewing::layoutChanged, this, &RowView::onLayout);
    connect(&viewing_, &Viewing::rowChanged, &pictures_, &Pictures::retryMissing);
    connect(&viewing_.document(), &Document::opened, this, &RowView::onOpened);
    connect(&viewing_, &Viewing::selectionChanged, this, &RowView::onSelection);
    connect(&survey_, &Survey::chosenChanged, this, &RowView::redraw);
    connect(&survey_, &Survey::wentThere, this, &RowView::revealChosen);
    connect(&pictures_, &Pictures::arrived, this, &RowView::redraw);
    connect(&viewing_.document(), &Document::fileChanged, &pictures_, &Pictures::retryMissing);
}

RowView::~RowView() = default;

void RowView::addActions() {
    const auto toggle = [this](const QString& text, const QString& says, const QKeySequence& shortcut) {
        auto* action = new QAction(text, this);
        action->setCheckable(true);
        action->setShortcut(shortcut);
        action->setToolTip(says);
        action->setStatusTip(says);
        connect(action, &QAction::toggled, this, &RowView::redraw);
        return action;
    };
    boxes_ = toggle(tr("&Boxes and spacing"),
                    tr("Boxes with their paddings, margins and gaps as they are set"), Qt::CTRL | Qt::Key_1);
    measure_ = toggle(tr("&Measure"), tr("Where the shortest and the longest comfortable line would end"),
                      Qt::CTRL | Qt::Key_2);
    tight_ =
        toggle(tr("&Tight fits"), tr("Lines that another browser may break otherwise"), Qt::CTRL | Qt::Key_3);
    engines_ = toggle(tr("Where &engines differ"), tr("Text that another engine sets on more or fewer lines"),
                      Qt::CTRL | Qt::Key_4);
    engines_->setChecked(true);
    fitAction_ = new QAction(tr("&Fit to window"), this);
    fitAction_->setCheckable(true);
    connect(fitAction_, &QAction::toggled, this, &RowView::setFit);
    actualSize_ = new QAction(tr("&Actual size"), this);
    actualSize_->setShortcut(Qt::CTRL | Qt::Key_0);
    connect(actualSize_, &QAction::triggered, this, [this] { setZoom(1); });
}

// ---- what is shown
// -------------------------------------------------------------------------------------------

void RowView::redraw() {
    stale_ = true;
    viewport()->update();
}

void RowView::onLayout() {
    updateScrollBars();
    attention_.hovered.reset();
    if (const auto part = partOf(viewing_.layout(), viewing_.selection());
        byKeyboard_ && hasFocus() && part && kindOf(viewing_, viewing_.layout().parts[*part]) == "button")
        attention_.focused = part;
    else
        attention_.focused.reset();
    if (figured_ && drag_ != Drag::Edge) figured_.reset();
    showFigures();
    redraw();
}

void RowView::onOpened() {
    row_.clear();
    pictures_.clear();
    horizontalScrollBar()->setValue(0);
    verticalScrollBar()->setValue(0);
}

void RowView::onSelection() {
    onLayout();
    const auto part = partOf(viewing_.layout(), viewing_.selection());
    setAccessibleDescription(part ? figuresOf(viewing_, *part).spoken() : QString());
}

Projection RowView::projection() const {
    return {zoom_, static_cast<double>(gutter - horizontalScrollBar()->value()),
            static_cast<double>(-verticalScrollBar()->value())};
}

QPointF RowView::pageAt(const QPointF& view) const {
    const Projection at = projection();
    return {(view.x() - at.left) / at.zoom, (view.y() - at.top) / at.zoom};
}

void RowView::updateScrollBars() {
    const layout::Layout& layout = viewing_.layout();
    const QSize view = viewport()->size();
    if (fit_) {
        const double fitted = std::clamp((view.width() - gutter - edgeRoom) / layout.width, leastZoom, 1.0);
        if (fitted != zoom_) {
            zoom_ = fitted;
            emit zoomChanged(zoom_);
        }
    }
    const int width = static_cast<int>(std::ceil(layout.width * zoom_)) + gutter + edgeRoom;
    const int height = static_cast<int>(std::ceil(layout.pageHeight * zoom_));
    horizontalScrollBar()->setRange(0, std::max(0, width - view.width()));
    horizontalScrollBar()->setPageStep(view.width());
    horizontalScrollBar()->setSingleStep(wheelStep / 2);
    verticalScrollBar()->setRange(0, std::max(0, height - view.height()));
    verticalScrollBar()->setPageStep(view.height());
    verticalScrollBar()->setSingleStep(wheelStep / 2);
}

void RowView::setFit(bool fit) {
    if (fit == fit_) return;
    fit_ = fit;
    fitAction_->setChecked(fit);
    if (!fit) zoom_ = 1;
    updateScrollBars();
    emit zoomChanged(zoom_);
    redraw();
}

void RowView::setZoom(double zoom) {
    zoomAbout(zoom, QPointF(gutter, 0));
}

void RowView::zoomAbout(double zoom, const QPointF& view) {
    zoom = std::clamp(zoom, leastZoom, mostZoom);
    if (fit_) {
        fit_ = false;
        fitAction_->setChecked(false);
    }
    const QPointF page = pageAt(view);
    zoom_ = zoom;
    updateScrollBars();
    horizontalScrollBar()->setValue(static_cast<int>(std::lround(page.x() * zoom_ + gutter - view.x())));
    verticalScrollBar()->setValue(static_cast<int>(std::lround(page.y() * zoom_ - view.y())));
    emit zoomChanged(zoom_);
    showFigures();
    redraw();
}

void RowView::ensureVisible(std::size_t part) {
    const QRectF rect = projection().rect(viewing_.layout().parts[part].box).adjusted(-16, -16, 16, 16);
    const auto reveal = [](QScrollBar* bar, double from, double to, double room) {
        if (from < 0 || to - from > room)
            bar->setValue(bar->value() + static_cast<int>(std::floor(from)));
        else if (to > room)
            bar->setValue(bar->value() + static_cast<int>(std::ceil(to - room)));
    };
    reveal(horizontalScrollBar(), rect.left(), rect.right(), viewport()->width());
    reveal(verticalScrollBar(), rect.top(), rect.bottom(), viewport()->height());
}

// ---- painting
// ------------------------------------------------------------------------------------------------

void RowView::render() {
    const double ratio = viewport()->devicePixelRatioF();
    const QSize size(static_cast<int>(std::ceil(viewport()->width() * ratio)),
                     static_cast<int>(std::ceil(viewport()->height() * ratio)));
    if (canvas_.image.size() != size) canvas_.image = QImage(size, QImage::Format_RGB32);
    canvas_.image.setDevicePixelRatio(1);
    const Projection at = projection();
    canvas_.scale = zoom_ * ratio;
    canvas_.left = static_cast<int>(std::lround(at.left * ratio));
    canvas_.top = static_cast<int>(std::lround(at.top * ratio));
    const Ink ink = Ink::of(palette());
    row_.paint(canvas_, attention_, ink.desk);
    canvas_.image.setDevicePixelRatio(ratio);
    const auto chosen = survey_.chosen();
    const auto overlays = overlayActions();
    if (chosen ||
        std::any_of(overlays.begin(), overlays.end(), [](const QAction* one) { return one->isChecked(); })) {
        QPainter painter(&canvas_.image);
        QFont small = font();
        small.setPixelSize(11);
        painter.setFont(small);
        OverlayTools tools{painter, viewing_, row_, at, QRectF(viewport()->rect()), ink};
        if (chosen) paintFinding(tools, survey_.findings()[*chosen]);
        if (boxes_->isChecked()) paintBoxes(tools);
        if (measure_->isChecked()) paintMeasure(tools);
        if (tight_->isChecked()) paintTightFits(tools);
        if (engines_->isChecked()) paintEngines(tools);
    }
    stale_ = false;
}

void RowView::paintEvent(QPaintEvent* event) {
    if (stale_ || canvas_.image.devicePixelRatio() != viewport()->devicePixelRatioF()) render();
    QPainter painter(viewport());
    painter.setClipRect(event->rect());
    blit(painter, canvas_.image);
    if (viewing_.layout().cards.empty()) paintEmpty(painter);
    paintSelection(painter);
    paintEdge(painter);
    if (hasFocus() && byKeyboard_) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(Ink::of(palette()).accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void RowView::paintEmpty(QPainter& painter) {
    painter.setPen(QColor(0x44, 0x44, 0x44));
    const QRectF page(projection().left, 0, viewing_.width() * zoom_, viewport()->height());
    painter.drawText(page.intersected(QRectF(viewport()->rect())), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("No cards yet. Add one under Words, or drop pictures here."));
}

void RowView::revealChosen() {
    if (const auto part = partOf(viewing_.layout(), viewing_.selection())) ensureVisible(*part);
}

// Corner marks leave the part itself as it is.
void RowView::paintSelection(QPainter& painter) {
    const layout::Layout& layout = viewing_.layout();
    const auto part = partOf(layout, viewing_.selection());
    if (!part) return;
    const QColor ground = row_.groundOf(layout.cards[cardOf(layout, *part)]);
    const QColor strong = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
    const QColor accent = legible(Ink::of(palette()).accent, ground, strong, 3);
    const QRectF box =
        QRectF(projection().rect(layout.parts[*part].box).toAlignedRect()).adjusted(-4, -4, 4, 4);
    const double arm = std::min({12.0, box.width() / 3, box.height() / 3});
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const QPointF& corner : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()}) {
        const double dx = corner.x() == box.left() ? 1 : -1;
        const double dy = corner.y() == box.top() ? 1 : -1;
        painter.fillRect(QRectF(corner, QSizeF(dx * arm, dy * 2)).normalized(), accent);
        painter.fillRect(QRectF(corner, QSizeF(dx * 2, dy * arm)).normalized(), accent);
    }
}

double RowView::edgeX() const {
    return std::round(projection().x(viewing_.layout().width));
}

bool RowView::overEdge(const QPointF& view) const {
    return std::abs(view.x() - edgeX() - 2) <= edgeReach;
}

QRect RowView::edgeStrip() const {
    return {static_cast<int>(edgeX()) - 8, 0, 24, viewport()->height()};
}

void RowView::paintEdge(QPainter& painter) {
    const Ink ink = Ink::of(palette());
    const double x = edgeX();
    const bool hot = edgeHot_ || drag_ == Drag::Edge;
    const QColor colour = hot ? ink.accent : mixed(ink.desk, ink.text, 0.5);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(x, 0, hot ? 2 : 1, viewport()->height()), colour);
    const QRectF grip(x + 4, std::round(viewport()->height() / 2.0) - 20, 5, 40);
    painter.fillRect(QRectF(grip.left(), grip.top(), 1, grip.height()), colour);
    painter.fillRect(QRectF(grip.left() + 3, grip.top(), 1, grip.height()), colour);
}

// ---- pointer
// -------------------------------------------------------------------------------------------------

void RowView::hover(const QPointF& view) {
    const bool hot = overEdge(view);
    if (hot != edgeHot_) {
        edgeHot_ = hot;
        viewport()->update(edgeStrip());
    }
    viewport()->setCursor(hot ? Qt::SizeHorCursor : Qt::ArrowCursor);
    const QPointF page = pageAt(view);
    const auto target = hot ? std::nullopt : hoverTarget(viewing_, page);
    if (target != attention_.hovered) {
        const auto answers = [this](const std::optional<std::size_t>& part) {
            const auto* style = part ? styleOf(viewing_, viewing_.layout().parts[*part]) : nullptr;
            return style != nullptr &&
                   (style->hover.colour || style->hover.background || style->hover.borderColour);
        };
        const bool changes = answers(target) || answers(attention_.hovered);
        attention_.hovered = target;
        if (changes) redraw();
    }
    const auto under = hot ? std::nullopt : partAt(viewing_.layout(), page);
    if (under != figured_) {
        figured_ = under;
        showFigures();
    }
}

void RowView::unhover() {
    if (edgeHot_) {
        edgeHot_ = false;
        viewport()->update(edgeStrip());
    }
    if (attention_.hovered) {
        attention_.hovered.reset();
        redraw();
    }
    figured_.reset();
    showFigures();
}

void RowView::showFigures() {
    std::optional<std::size_t> part = figured_;
    if (!part && byKeyboard_ && hasFocus()) part = partOf(viewing_.layout(), viewing_.selection());
    if (!part || *part >= viewing_.layout().parts.size() || drag_ != Drag::None) {
        figures_->hide();
        return;
    }
    figures_->showBeside(projection().rect(viewing_.layout().parts[*part].box).toAlignedRect(),
                         figuresOf(viewing_, *part));
}

void RowView::mousePressEvent(QMouseEvent* event) {
    byKeyboard_ = false;
    if (event->button() == Qt::MiddleButton) {
        drag_ = Drag::Pan;
        dragFrom_ = event->position();
        dragScroll_ = {horizontalScrollBar()->value(), verticalScrollBar()->value()};
        viewport()->setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::LeftButton && overEdge(event->position())) {
        drag_ = Drag::Edge;
        dragFrom_ = event->position();
        dragWidth_ = viewing_.width();
    } else if (event->button() == Qt::LeftButton) {
        const auto part = partAt(viewing_.layout(), pageAt(event->position()));
        viewing_.select(part ? selectionOf(viewing_.layout(), *part) : Viewing::Selection{});
        hover(event->position());
        return;
    }
    showFigures();
}

void RowView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF moved = event->position() - dragFrom_;
    if (drag_ == Drag::Edge) {
        viewing_.setWidth(std::round(dragWidth_ + moved.x() / zoom_));
    } else if (drag_ == Drag::Pan) {
        horizontalScrollBar()->setValue(dragScroll_.x() - static_cast<int>(std::lround(moved.x())));
        verticalScrollBar()->setValue(dragScroll_.y() - static_cast<int>(std::lround(moved.y())));
    } else {
        hover(event->position());
    }
}

void RowView::mouseReleaseEvent(QMouseEvent* event) {
    if (drag_ == Drag::None) return;
    drag_ = Drag::None;
    viewport()->update(edgeStrip());
    hover(event->position());
    showFigures();
}

void RowView::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        zoomAbout(zoom_ * std::pow(1.25, turned.y() / 120.0), event->position());
    } else {
        QPoint by = event->pixelDelta();
        if (by.isNull()) by = QPoint(turned.x() * wheelStep / 120, turned.y() * wheelStep / 120);
        if ((event->modifiers() & Qt::ShiftModifier) != 0) by = by.transposed();
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - by.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - by.y());
        if (drag_ == Drag::None) hover(event->position());
    }
    event->accept();
}

bool RowView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave && drag_ == Drag::None) unhover();
    return QAbstractScrollArea::viewportEvent(event);
}

// ---- keyboard
// ------------------------------------------------------------------------------------------------

bool RowView::moveSelection(int cards, int parts) {
    const layout::Layout& layout = viewing_.layout();
    if (layout.cards.empty() || layout.parts.empty()) return false;
    const auto current = partOf(layout, viewing_.selection());
    byKeyboard_ = true;
    std::size_t next = 0;
    if (current) {
        const auto card = static_cast<int>(cardOf(layout, *current));
        const int to = card + cards;
        if (to < 0 || to >= static_cast<int>(layout.cards.size())) return false;
        const layout::LaidCard& from = layout.cards[static_cast<std::size_t>(card)];
        const layout::LaidCard& target = layout.cards[static_cast<std::size_t>(to)];
        if (target.partCount == 0) return false;
        const int place = static_cast<int>(*current - from.firstPart) + parts;
        if (place < 0 || (cards == 0 && place >= static_cast<int>(target.partCount))) return false;
        next =
            target.firstPart + std::min<std::size_t>(static_cast<std::size_t>(place), target.partCount - 1);
    } else if (cards < 0) {
        next = layout.cards.back().firstPart;
    }
    viewing_.select(selectionOf(layout, next));
    ensureVisible(next);
    onSelection();
    return true;
}

void RowView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Up:
            moveSelection(0, -1);
            return;
        case Qt::Key_Down:
            moveSelection(0, 1);
            return;
        case Qt::Key_PageUp:
            verticalScrollBar()->triggerAction(QAbstractSlider::SliderPageStepSub);
            return;
        case Qt::Key_PageDown:
            verticalScrollBar()->triggerAction(QAbstractSlider::SliderPageStepAdd);
            return;
        case Qt::Key_Home:
            verticalScrollBar()->setValue(0);
            return;
        case Qt::Key_End:
            verticalScrollBar()->setValue(verticalScrollBar()->maximum());
            return;
        case Qt::Key_Escape:
            if (viewing_.selection() != Viewing::Selection{}) {
                viewing_.select({});
                return;
            }
            break;
        default:
            break;
    }
    event->ignore();
}

// Tab goes from card to card, and out of the view after the last.
bool RowView::focusNextPrevChild(bool next) {
    return moveSelection(next ? 1 : -1, 0) || QAbstractScrollArea::focusNextPrevChild(next);
}

void RowView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    byKeyboard_ = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason ||
                  event->reason() == Qt::ShortcutFocusReason;
    onLayout();
}

void RowView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    onLayout();
}

// ---- the widget itself
// -----------------------------------------------------------------------------------------

void RowView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    updateScrollBars();
    redraw();
}

void RowView::scrollContentsBy(int, int) {
    if (figured_ || figures_->isVisible()) showFigures();
    redraw();
}

void RowView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) redraw();
}

}  // namespace tenter::desktop::row
