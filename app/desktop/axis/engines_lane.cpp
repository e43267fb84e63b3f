#include "axis/engines_lane.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <cmath>

#include "document/engines.h"
#include "document/wording.h"
#include "row/dimension.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr double leastMark = 3;  // px, so that a single width can be seen
constexpr double reach = 3;      // px about the pointer
constexpr std::size_t mostTold = 6;

}  // namespace

EnginesLane::EnginesLane(Viewing& viewing, const EngineSweep& sweep, const WidthScale& scale, QWidget* parent)
    : QWidget(parent), viewing_(viewing), sweep_(sweep), scale_(scale) {
    setAccessibleName(tr("Where engines differ"));
    connect(&sweep_, &EngineSweep::changed, this, [this] {
        describe();
        update();
    });
}

void EnginesLane::describe() {
    QStringList widths;
    for (const sweep::Span& span : sweep_.spans())
        widths << widthsTitle(span.first, span.last);
    setAccessibleDescription(widths.isEmpty() ? tr("No line count differs") : widths.join(", "));
}

std::optional<double> EnginesLane::next(int direction) const {
    const double now = viewing_.width();
    std::optional<double> found;
    for (const sweep::Span& span : sweep_.spans()) {
        if (direction > 0 && span.first > now) return span.first;
        if (direction < 0 && span.first < now) found = span.first;
    }
    return found;
}

QString EnginesLane::says(double x) const {
    const double from = std::ceil(scale_.width(x - reach));
    const double to = std::floor(scale_.width(x + reach));
    QStringList lines;
    std::size_t more = 0;
    for (const sweep::Stretch& stretch : sweep_.stretches()) {
        if (stretch.last < from || stretch.first > to) continue;
        if (static_cast<std::size_t>(lines.size()) >= mostTold) {
            ++more;
            continue;
        }
        QStringList counts;
        for (std::size_t i = 0; i < stretch.lines.size(); ++i)
            counts << linesTitle(stretch.lines[i]) + " in " + engineTitle(*text::profiles()[i]);
        lines << widthsTitle(stretch.first, stretch.last) + ": " +
                     partTitle(viewing_.shown(), stretch.card, stretch.part) + ": " + counts.join(", ");
    }
    if (more > 0) lines << tr("and %1 more").arg(more);
    return lines.join('\n');
}

bool EnginesLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), says(help->pos().x()), this);
    return true;
}

void EnginesLane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double middle = std::floor(height() / 2.0) + 0.5;
    const QRectF all(scale_.left(), 0, scale_.right() - scale_.left() + 1, height());
    painter.setClipRect(all);
    painter.setPen(ink.faint);
    painter.drawLine(QPointF(all.left(), middle), QPointF(all.right(), middle));
    if (sweep_.isFresh() && sweep_.spans().empty()) {
        const QString none = tr("No line count differs");
        const QRectF place(all.left(), 0, fontMetrics().horizontalAdvance(none) + 8, height());
        painter.fillRect(place, ink.ground);
        painter.setPen(ink.quiet);
        painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft, none);
    }
    // What is told of the row as it was stands back until it is told anew.
    const QColor line = sweep_.isFresh() ? ink.text : ink.line;
    for (const sweep::Span& span : sweep_.spans()) {
        const double from = std::round(scale_.x(span.first));
        const double to = std::max(from + leastMark, std::round(scale_.x(span.last)));
        const QRectF place(from, middle - 5.5, to - from, 11);
        if (!place.intersects(all)) continue;
        painter.fillRect(place, ink.ground);
        row::paintHatching(painter, place, {}, row::mixed(ink.ground, line, 0.6));
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillRect(QRectF(place.left(), place.top(), 1, place.height()), line);
        painter.fillRect(QRectF(place.right() - 1, place.top(), 1, place.height()), line);
    }
}

}  // namespace tenter::desktop::axis
