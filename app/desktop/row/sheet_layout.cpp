#include "row/sheet_layout.h"

#include <QScrollBar>
#include <algorithm>
#include <cmath>

namespace tenter::desktop::row {

namespace {

constexpr int edgeReach = 6;    // view px from the pointer to the edge within which it can be dragged
constexpr int singleStep = 32;  // view px
constexpr double leastZoom = 0.1;
constexpr double mostZoom = 8;

constexpr double besideCards = 8;  // px of the page above and below cards that are revealed

// The rectangle around the first line of cards, CSS px of the page.
QRectF firstCards(const layout::Layout& layout) {
    QRectF around;
    for (const layout::LaidCard& card : layout.cards) {
        if (card.box.y > layout.cards.front().box.y + 0.5) break;
        around |= QRectF(card.box.x, card.box.y, card.box.width, card.box.height);
    }
    return around;
}

}  // namespace

void SheetLayout::arrange() {
    const std::size_t variants = layouts_.project().row().variants.size();
    const bool all = allVariants_ && variants > 1;
    std::vector<QSizeF> pages;
    const auto add = [&](const layout::Layout& layout) {
        pages.emplace_back(layout.width, layout.pageHeight);
    };
    if (all)
        for (std::size_t i = 0; i < variants; ++i)
            add(layouts_.of(i).layout);
    else
        add(layouts_.layout());
    const QSize view = area_.viewport()->size();
    if (fit_ && !zoomHeld_) {
        // Of a single page, the part down to the end of the first line of cards has to fit.
        std::vector<QSizeF> fitting = pages;
        if (!all) fitting.front().setHeight(firstCards(layouts_.layout()).bottom() + besideCards);
        const double fitted = std::max(leastZoom, fittingZoom(fitting, view));
        if (fitted != zoom_) {
            zoom_ = fitted;
            Q_EMIT zoomChanged(zoom_);
        }
    }
    if (!linesHeld_) across_ = fittingAcross(pages, zoom_, view.width());
    sheets_ = arranged(pages, zoom_, across_);
    setScrollRanges();
}

void SheetLayout::setScrollRanges() {
    const QSize view = area_.viewport()->size();
    const auto set = [](QScrollBar* bar, double size, int room) {
        bar->setRange(0, std::max(0, static_cast<int>(std::ceil(size)) - room));
        bar->setPageStep(room);
        bar->setSingleStep(singleStep);
    };
    set(area_.horizontalScrollBar(), sheets_.size.width(), view.width());
    set(area_.verticalScrollBar(), sheets_.size.height(), view.height());
}

// ---- Zoom

void SheetLayout::setFit(bool fit) {
    if (fit == fit_) return;
    fit_ = fit;
    zoomHeld_ = false;
    Q_EMIT fitChanged(fit);
    if (!fit) zoom_ = 1;
    arrange();
    if (fit) area_.verticalScrollBar()->setValue(0);
    Q_EMIT zoomChanged(zoom_);
}

void SheetLayout::zoomAbout(double zoom, const QPointF& view) {
    if (fit_) {
        fit_ = false;
        Q_EMIT fitChanged(false);
    }
    const std::size_t sheet = sheetAt(view).value_or(active());
    const QPointF page = pageAt(view, sheet);
    zoom_ = std::clamp(zoom, leastZoom, mostZoom);
    arrange();
    const QPointF to = sheets_.all[sheet].page.topLeft() + page * zoom_ - view;
    area_.horizontalScrollBar()->setValue(static_cast<int>(std::lround(to.x())));
    area_.verticalScrollBar()->setValue(static_cast<int>(std::lround(to.y())));
    Q_EMIT zoomChanged(zoom_);
}

// ---- Places in the viewport

QPoint SheetLayout::scrolled() const {
    return {area_.horizontalScrollBar()->value(), area_.verticalScrollBar()->value()};
}

Projection SheetLayout::projection(std::size_t sheet) const {
    const QPointF corner = sheet < count() ? sheets_.all[sheet].page.topLeft() : QPointF(gutter, 0);
    return {zoom_, corner.x() - scrolled().x(), corner.y() - scrolled().y()};
}

QPointF SheetLayout::pageAt(const QPointF& view, std::size_t sheet) const {
    const Projection at = projection(sheet);
    return {(view.x() - at.left) / at.zoom, (view.y() - at.top) / at.zoom};
}

std::vector<Sheet> SheetLayout::inView() const {
    std::vector<Sheet> sheets = sheets_.all;
    for (Sheet& sheet : sheets) {
        sheet.caption.translate(-scrolled());
        sheet.page.translate(-scrolled());
    }
    return sheets;
}

std::optional<std::size_t> SheetLayout::sheetAt(const QPointF& view) const {
    if (!showsAll()) return 0;
    const QPointF at = view + scrolled();
    for (std::size_t i = 0; i < count(); ++i)
        if (sheets_.all[i].page.contains(at) || sheets_.all[i].caption.contains(at)) return i;
    return std::nullopt;
}

double SheetLayout::edgeX(std::size_t sheet) const {
    return std::round(projection(sheet).x(layouts_.layout().width));
}

std::optional<std::size_t> SheetLayout::edgeAt(const QPointF& view) const {
    const std::vector<Sheet> sheets = inView();
    for (std::size_t i = 0; i < sheets.size(); ++i)
        if (std::abs(view.x() - edgeX(i) - 2) <= edgeReach &&
            (!showsAll() || (view.y() >= sheets[i].page.top() && view.y() < sheets[i].page.bottom())))
            return i;
    return std::nullopt;
}

QRect SheetLayout::edgeStrip(std::size_t sheet) const {
    return {static_cast<int>(edgeX(sheet)) - 8, 0, 24, area_.viewport()->height()};
}

// ---- Scrolling

void SheetLayout::ensureVisible(std::size_t part) {
    const QRectF rect = projection().rect(layouts_.layout().parts[part].box).adjusted(-16, -16, 16, 16);
    const auto reveal = [](QScrollBar* bar, double from, double to, double room) {
        if (from < 0 || to - from > room)
            bar->setValue(bar->value() + static_cast<int>(std::floor(from)));
        else if (to > room)
            bar->setValue(bar->value() + static_cast<int>(std::ceil(to - room)));
    };
    const QWidget* const view = area_.viewport();
    reveal(area_.horizontalScrollBar(), rect.left(), rect.right(), view->width());
    reveal(area_.verticalScrollBar(), rect.top(), rect.bottom(), view->height());
}

void SheetLayout::revealCards() {
    if (showsAll()) return;
    const QRectF cards = firstCards(layouts_.layout()).adjusted(0, -besideCards, 0, besideCards);
    const double room = area_.viewport()->height();
    if (cards.bottom() * zoom_ > room && cards.height() * zoom_ <= room)
        area_.verticalScrollBar()->setValue(static_cast<int>(std::floor(cards.top() * zoom_)));
}

void SheetLayout::ensureActiveVisible() {
    if (!showsAll()) return;
    const Sheet& sheet = sheets_.all[active()];
    const int top = static_cast<int>(std::floor(sheet.caption.top()));
    const int left = static_cast<int>(std::floor(sheet.caption.left())) - gutter;
    const QWidget* const view = area_.viewport();
    QScrollBar* const down = area_.verticalScrollBar();
    QScrollBar* const right = area_.horizontalScrollBar();
    if (top < down->value() || sheet.page.bottom() > down->value() + view->height()) down->setValue(top);
    if (left < right->value() || sheet.page.right() > right->value() + view->width()) right->setValue(left);
}

}  // namespace tenter::desktop::row
