#include "row/row_view.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QTimer>
#include <QWheelEvent>

#include "document/wording.h"
#include "row/figures.h"
#include "row/lookup.h"
#include "row/scroll_keys.h"
#include "session/changes.h"

namespace tenter::desktop::row {

RowView::RowView(Session& session, QWidget* parent)
    : QAbstractScrollArea(parent),
      session_(session),
      sheets_(session.layouts, *this),
      overlays_(this),
      marks_(session.selection, sheets_, *this),
      painter_(session, sheets_, overlays_, marks_, *this, pictures_),
      pointer_(session.view, session.selection, sheets_, *this),
      editing_(session, sheets_, *this),
      figures_(new FigureBox(viewport())) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    // A page lies in its viewport as the browser lays it out, whatever the direction of this window.
    setLayoutDirection(Qt::LeftToRight);
    setAccessibleName(QObject::tr("Row at the current width"));
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setAutoFillBackground(false);
    addActions();
    connect(&sheets_, &SheetLayout::zoomChanged, this, &RowView::zoomChanged);
    connect(&sheets_, &SheetLayout::fitChanged, fitAction_, &QAction::setChecked);
    connect(&overlays_, &OverlayActions::changed, this, &RowView::redraw);
    connect(&pointer_, &Pointer::hoverChanged, this, &RowView::redraw);
    connect(&pointer_, &Pointer::pointedChanged, this, &RowView::showFigures);
    connect(&pointer_, &Pointer::dropped, this, &RowView::onLayout);
    connect(&pointer_, &Pointer::zoomTurned, this, &RowView::zoomAbout);
    connect(&editing_, &editing::RowEditing::message, this, &RowView::message);
    connect(&editing_, &editing::RowEditing::busyChanged, this, &RowView::onLayout);
    onChange(session_.layouts, LayoutCache::Change::Layout, this, &RowView::onLayout);
    onChange(session_.layouts, LayoutCache::Change::Row, &pictures_, &Pictures::retryMissing);
    onChange(session_.layouts, LayoutCache::Change::Variant, this, &RowView::ensureSheetVisible);
    connect(&session_.selection, &SelectionModel::changed, this, &RowView::onSelection);
    onChange(session_.checks, CheckRunner::Change::Chosen, this, &RowView::redraw);
    connect(&session_.document, &Document::opened, this, &RowView::onOpened);
    connect(&session_.document, &Document::fileChanged, &pictures_, &Pictures::retryMissing);
    connect(&pictures_, &Pictures::arrived, this, &RowView::redraw);
}

RowView::~RowView() = default;

void RowView::addActions() {
    fitAction_ = new QAction(QObject::tr("&Fit to window"), this);
    fitAction_->setCheckable(true);
    fitAction_->setShortcut(Qt::CTRL | Qt::Key_9);
    connect(fitAction_, &QAction::toggled, this, &RowView::setFit);
    allVariants_ = new QAction(QObject::tr("All &variants"), this);
    allVariants_->setCheckable(true);
    allVariants_->setShortcut(Qt::Key_F3);
    allVariants_->setToolTip(QObject::tr("Show every variant at this width, to compare their text"));
    allVariants_->setStatusTip(allVariants_->toolTip());
    connect(allVariants_, &QAction::toggled, this, &RowView::setAllVariants);
    actualSize_ = new QAction(QObject::tr("&Actual size"), this);
    actualSize_->setShortcut(Qt::CTRL | Qt::Key_0);
    connect(actualSize_, &QAction::triggered, this, [this] { setZoom(1); });
}

// ---- Content

void RowView::redraw() {
    painter_.invalidate();
    viewport()->update();
    editing_.follow();
}

void RowView::onLayout() {
    sheets_.arrange();
    pointer_.forget();
    focused_.reset();
    if (const auto part = selectedPart(); byKeyboard_ && hasFocus() && part &&
                                          kindOf(currentRow(), currentRow().layout.parts[*part]) == "button")
        focused_ = part;
    showFigures();
    describe();
    redraw();
}

void RowView::onOpened() {
    painter_.clear();
    pictures_.clear();
    horizontalScrollBar()->setValue(0);
    verticalScrollBar()->setValue(0);
    // The room is known when the window has arranged itself.
    QTimer::singleShot(0, this, [this] { sheets_.revealCards(); });
}

void RowView::onSelection(SelectionModel::Changes changes) {
    onLayout();
    if (changes & SelectionModel::Change::Reveal)
        if (const auto part = selectedPart()) ensureVisible(*part);
    announceSelection();
}

// To a screen reader the focus moves to the selected part.
void RowView::announceSelection() {
    if (!QAccessible::isActive() || !hasFocus()) return;
    QAccessibleInterface* const self = QAccessible::queryAccessibleInterface(this);
    QAccessibleInterface* const selected = self != nullptr ? self->focusChild() : nullptr;
    if (selected == nullptr || selected == self) return;
    QAccessibleEvent event(selected, QAccessible::Focus);
    QAccessible::updateAccessibility(&event);
}

std::optional<std::size_t> RowView::selectedPart() const {
    return indexOf(currentRow().layout, session_.selection.part());
}

// The accessible description has the text that is visible in the view: the figures of the selected part and
// the captions.
void RowView::describe() {
    QStringList sentences;
    if (const auto part = selectedPart())
        sentences << figuresOf(session_.layouts, session_.view.variant(), *part).asSentence();
    for (std::size_t i = 0; sheets_.showsAll() && i < sheets_.count(); ++i)
        sentences << QObject::tr("%1: %2.").arg(variantTitle(session_.shown.project().row().variants[i]),
                                                captionOf(sheets_.rowOn(i), session_.selection.role()));
    setAccessibleDescription(sentences.join(' '));
}

void RowView::setAllVariants(bool on) {
    setAccessibleName(on ? QObject::tr("All variants at the current width")
                         : QObject::tr("Row at the current width"));
    sheets_.setAllVariants(on);
    // All variants are fitted to the window. A single variant gets back the zoom mode it had before.
    if (on) fitAlone_ = fit();
    setFit(on || fitAlone_);
    onLayout();
    if (on)
        ensureSheetVisible();
    else
        horizontalScrollBar()->setValue(0);
}

void RowView::ensureSheetVisible() {
    sheets_.arrange();
    sheets_.ensureActiveVisible();
}

std::optional<Place> RowView::placeAt(const QPointF& view) const {
    const auto sheet = sheets_.sheetAt(view);
    if (!sheet) return std::nullopt;
    const layout::Layout& layout = sheets_.rowOn(*sheet).layout;
    const QPointF page = sheets_.pageAt(view, *sheet);
    if (const auto part = partAt(layout, page)) return Place::of(refOf(layout, *part));
    if (const auto card = cardAt(layout, page)) return Place{*card, {}};
    return std::nullopt;
}

QRectF RowView::rectOf(const Place& place) const {
    const layout::Box* const box = boxOf(currentRow().layout, place);
    return box != nullptr ? sheets_.projection().rect(*box) : QRectF();
}

// ---- Zoom

void RowView::setFit(bool fit) {
    if (fit == sheets_.fit()) return;
    sheets_.setFit(fit);
    redraw();
}

void RowView::setZoom(double zoom) {
    zoomAbout(zoom, QPointF(gutter, 0));
}

void RowView::zoomAbout(double zoom, const QPointF& view) {
    sheets_.zoomAbout(zoom, view);
    showFigures();
    redraw();
}

// ---- Painting

Attention RowView::attentionTo(std::size_t sheet) const {
    Attention attention;
    if (const auto hovered = pointer_.hovered(); hovered && hovered->sheet == sheet)
        attention.hovered = hovered->part;
    if (sheet == sheets_.active()) attention.focused = focused_;
    return attention;
}

void RowView::paintEvent(QPaintEvent* event) {
    const QImage& image = painter_.image([this](std::size_t sheet) { return attentionTo(sheet); });
    QPainter painter(viewport());
    painter.setClipRect(event->rect());
    blit(painter, image);
    if (currentRow().layout.cards.empty()) marks_.paintEmpty(painter);
    for (std::size_t i = 0; i < sheets_.count(); ++i) {
        const LaidOutRow row = sheets_.rowOn(i);
        for (const Place& place : session_.selection.all())
            if (const layout::Box* box = boxOf(row.layout, place); box && !editing_.isTyping())
                marks_.paintSelection(painter, i, *box, groundOf(row));
        marks_.paintEdge(painter, i, pointer_.hotEdge() == i);
    }
    editing_.paint(painter);
    if (hasFocus() && byKeyboard_) marks_.paintFocus(painter);
}

void RowView::showFigures() {
    std::optional<Pointed> at = pointer_.pointed();
    if (!at && byKeyboard_ && hasFocus())
        if (const auto part = selectedPart()) at = Pointed{sheets_.active(), *part};
    if (!at || at->sheet >= sheets_.count() || pointer_.isDragging() || editing_.isBusy() ||
        at->part >= sheets_.rowOn(at->sheet).layout.parts.size()) {
        figures_->hide();
        return;
    }
    const QRectF box =
        sheets_.projection(at->sheet).rect(sheets_.rowOn(at->sheet).layout.parts[at->part].box);
    figures_->showBeside(box.toAlignedRect(),
                         figuresOf(session_.layouts, sheets_.variantOn(at->sheet), at->part));
}

// ---- Pointer

void RowView::mousePressEvent(QMouseEvent* event) {
    byKeyboard_ = false;
    if (!editing_.press(*event)) pointer_.press(*event);
}

void RowView::mouseMoveEvent(QMouseEvent* event) {
    if (editing_.move(*event)) return;
    pointer_.move(*event);
    if (!pointer_.isDragging()) editing_.hover(event->position());
}

void RowView::mouseReleaseEvent(QMouseEvent* event) {
    if (!editing_.release(*event)) pointer_.release(*event);
}

void RowView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (!editing_.doubleClick(*event)) mousePressEvent(event);
}

void RowView::wheelEvent(QWheelEvent* event) {
    pointer_.wheel(*event);
    event->accept();
}

bool RowView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave) {
        pointer_.leave();
        editing_.leave();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

// ---- Keyboard

bool RowView::moveSelection(int cards, int parts) {
    const layout::Layout& layout = currentRow().layout;
    if (layout.cards.empty() || layout.parts.empty()) return false;
    byKeyboard_ = true;
    const auto next = partBeside(layout, selectedPart(), cards, parts);
    if (!next) return false;
    session_.selection.select(Place::of(refOf(layout, *next)), true);
    return true;
}

void RowView::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (editing_.key(*event) || scrollByKey(*this, key)) return;
    if (key == Qt::Key_Up || key == Qt::Key_Down)
        moveSelection(0, key == Qt::Key_Up ? -1 : 1);
    else if (key == Qt::Key_Escape && session_.selection.place())
        session_.selection.select({});
    else
        event->ignore();
}

// Tab moves from card to card, and leaves the view after the last one.
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

// ---- Widget

void RowView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    sheets_.arrange();
    redraw();
}

void RowView::scrollContentsBy(int, int) {
    if (pointer_.pointed() || figures_->isVisible()) showFigures();
    redraw();
}

void RowView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) redraw();
}

}  // namespace tenter::desktop::row
