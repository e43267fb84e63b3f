#include "row/editing/card_drag.h"

#include <QApplication>
#include <algorithm>
#include <cmath>

#include "document/wording.h"
#include "row/editing/selected_cards.h"
#include "row/ink.h"
#include "row/lookup.h"
#include "row/value_flag.h"

namespace tenter::desktop::row::editing {

namespace {

constexpr double lineWidth = 4;  // CSS px

using layout::Box;

double distance(double at, double from, double to) {
    return at < from ? from - at : std::max(0.0, at - to);
}

}  // namespace

DropPlace dropPlaceAt(const layout::Layout& layout, const QPointF& page, bool rightToLeft) {
    const auto& cards = layout.cards;
    const auto endOfLine = [&](std::size_t first) {
        std::size_t end = first + 1;
        while (end < cards.size() && cards[end].box.y == cards[first].box.y)
            ++end;
        return end;
    };
    // The line of cards that is nearest.
    std::size_t first = 0;
    double least = -1;
    for (std::size_t i = 0; i < cards.size(); i = endOfLine(i)) {
        const double far = distance(page.y(), cards[i].box.y, cards[i].box.bottom());
        if (least >= 0 && far >= least) continue;
        least = far;
        first = i;
    }
    const std::size_t end = endOfLine(first);
    const bool isColumn = endOfLine(0) == 1;
    if (isColumn) {
        const Box& box = cards[first].box;
        const bool after = page.y() > box.y + box.height / 2;
        const std::size_t before = first + (after ? 1 : 0);
        double y = after ? box.bottom() : box.y;
        if (before > 0 && before < cards.size())
            y = (cards[before - 1].box.bottom() + cards[before].box.y) / 2;
        return {before, {box.x, y - lineWidth / 2, box.width, lineWidth}};
    }
    std::size_t before = first;
    const auto isPast = [&](const Box& box) {
        const double middle = box.x + box.width / 2;
        return rightToLeft ? page.x() < middle : page.x() > middle;
    };
    while (before < end && isPast(cards[before].box))
        ++before;
    const Box& line = cards[first].box;
    const auto startOf = [&](std::size_t card) {
        return rightToLeft ? cards[card].box.right() : cards[card].box.x;
    };
    const auto endOf = [&](std::size_t card) {
        return rightToLeft ? cards[card].box.x : cards[card].box.right();
    };
    const double x = before == first ? startOf(first)
                     : before == end ? endOf(end - 1)
                                     : (endOf(before - 1) + startOf(before)) / 2;
    return {before, {x - lineWidth / 2, line.y, lineWidth, line.height}};
}

void CardDrag::press(const QPointF& view) {
    drag_.reset();
    const auto sheet = sheets_.sheetAt(view);
    if (!sheet) return;
    const auto card = cardAt(sheets_.rowOn(*sheet).layout, sheets_.pageAt(view, *sheet));
    if (!card) return;
    std::vector<std::size_t> cards = selectedCards(session_.selection);
    if (std::ranges::find(cards, *card) == cards.end()) cards = {*card};
    drag_ = Drag{std::move(cards), *sheet, view, false, {}};
}

bool CardDrag::move(const QPointF& view) {
    if (!drag_) return false;
    if (!drag_->started) {
        if ((view - drag_->from).manhattanLength() < QApplication::startDragDistance()) return false;
        if (const QString why = whyCardsStay(session_); !why.isEmpty()) {
            Q_EMIT message(why);
            drag_.reset();
            return false;
        }
        drag_->started = true;
        area_.viewport()->setCursor(Qt::ClosedHandCursor);
        Q_EMIT message(QObject::tr("Drop the card at the line. Escape: leave it where it is."));
    }
    const std::size_t sheet = std::min(drag_->sheet, sheets_.count() - 1);
    drag_->to = dropPlaceAt(sheets_.rowOn(sheet).layout, sheets_.pageAt(view, sheet),
                            session_.shown.project().rightToLeft);
    area_.viewport()->update();
    return true;
}

bool CardDrag::release() {
    const std::optional<Drag> done = std::exchange(drag_, std::nullopt);
    if (!done || !done->started) return false;
    area_.viewport()->update();
    Q_EMIT dropped(done->cards, done->to.before);
    return true;
}

void CardDrag::cancel() {
    drag_.reset();
    area_.viewport()->unsetCursor();
    area_.viewport()->update();
}

void CardDrag::paint(QPainter& painter) const {
    if (!isDragging() || drag_->sheet >= sheets_.count()) return;
    const layout::Layout& layout = sheets_.rowOn(drag_->sheet).layout;
    const Projection at = sheets_.projection(drag_->sheet);
    const Ink ink = Ink::of(area_.palette());
    QColor veil = ink.desk;
    veil.setAlpha(150);
    for (const std::size_t card : drag_->cards)
        if (card < layout.cards.size()) painter.fillRect(at.rect(layout.cards[card].box), veil);
    QRectF line = at.rect(drag_->to.line);
    // As wide in a scaled row.
    const QPointF centre = line.center();
    if (line.width() < line.height())
        line = QRectF(centre.x() - lineWidth / 2, line.y(), lineWidth, line.height());
    else
        line = QRectF(line.x(), centre.y() - lineWidth / 2, line.width(), lineWidth);
    painter.fillRect(line, ink.accent);
    painter.setFont(area_.font());
    const std::size_t before = drag_->to.before;
    const QString text = before < layout.cards.size() ? QObject::tr("Before card %1").arg(before + 1)
                                                      : QObject::tr("After card %1").arg(before);
    paintFlag(painter, line, text, area_.viewport()->rect(), ink);
}

}  // namespace tenter::desktop::row::editing
