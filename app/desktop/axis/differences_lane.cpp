#include "axis/differences_lane.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <cmath>

#include "document/wording.h"
#include "row/dimension.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr double leastMark = 3;  // px, so that a single width is visible
constexpr double reach = 3;      // px from the pointer to a difference
constexpr std::size_t mostDifferencesListed = 6;

}  // namespace

DifferencesLane::DifferencesLane(const LayoutCache& layouts, const EngineSweep& sweep,
                                 const WidthScale& scale, QWidget* parent)
    : QWidget(parent), layouts_(layouts), sweep_(sweep), scale_(scale) {
    setAccessibleName(QObject::tr("Chromium/Firefox differences"));
    connect(&sweep_, &EngineSweep::changed, this, [this] {
        describe();
        update();
    });
}

void DifferencesLane::describe() {
    QStringList widths;
    for (const sweep::WidthRange& range : sweep_.ranges())
        widths << widthsTitle(range.first, range.last);
    setAccessibleDescription(widths.isEmpty() ? QObject::tr("No differences in line count")
                                              : widths.join(", "));
}

std::optional<double> DifferencesLane::next(int direction) const {
    const double now = layouts_.width();
    std::optional<double> found;
    for (const sweep::WidthRange& range : sweep_.ranges()) {
        if (direction > 0 && range.first > now) return range.first;
        if (direction < 0 && range.first < now) found = range.first;
    }
    return found;
}

QString DifferencesLane::toolTipAt(double x) const {
    const double from = std::ceil(scale_.width(x - reach));
    const double to = std::floor(scale_.width(x + reach));
    QStringList lines;
    std::size_t more = 0;
    for (const sweep::LineDifference& difference : sweep_.differences()) {
        if (difference.last < from || difference.first > to) continue;
        if (static_cast<std::size_t>(lines.size()) >= mostDifferencesListed) {
            ++more;
            continue;
        }
        QStringList counts;
        for (std::size_t i = 0; i < difference.lines.size(); ++i)
            counts << QObject::tr("%1 in %2", "lines, browser")
                          .arg(linesTitle(difference.lines[i]), engineTitle(*text::profiles()[i]));
        lines << widthsTitle(difference.first, difference.last) + ": " +
                     partTitle(layouts_.project(), difference.place.card, difference.place.part) + ": " +
                     counts.join(", ");
    }
    if (more > 0) lines << QObject::tr("and %1 more").arg(more);
    return lines.join('\n');
}

controls::DataTable DifferencesLane::data() const {
    controls::DataTable table{{QObject::tr("Viewport widths"), QObject::tr("Text")}, {}};
    for (const text::BreakProfile* profile : text::profiles())
        table.heads << QObject::tr("Lines in %1").arg(engineTitle(*profile));
    for (const sweep::LineDifference& difference : sweep_.differences()) {
        QStringList cells{widthsTitle(difference.first, difference.last),
                          partTitle(layouts_.project(), difference.place.card, difference.place.part)};
        for (const auto lines : difference.lines)
            cells << QString::number(lines);
        table.rows.append(cells);
    }
    return table;
}

bool DifferencesLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), toolTipAt(help->pos().x()), this);
    return true;
}

void DifferencesLane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double middle = std::floor(height() / 2.0) + 0.5;
    const QRectF all(scale_.left(), 0, scale_.right() - scale_.left() + 1, height());
    painter.setClipRect(all);
    painter.setPen(ink.faint);
    painter.drawLine(QPointF(all.left(), middle), QPointF(all.right(), middle));
    if (sweep_.isFresh() && sweep_.ranges().empty()) {
        const QString none = QObject::tr("No differences in line count");
        const QRectF place(all.left(), 0, fontMetrics().horizontalAdvance(none) + 8, height());
        painter.fillRect(place, ink.ground);
        painter.setPen(ink.quiet);
        painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft, none);
    }
    // Results of an earlier state of the row are drawn fainter.
    const QColor line = sweep_.isFresh() ? ink.text : ink.line;
    for (const sweep::WidthRange& range : sweep_.ranges()) {
        const double from = std::round(scale_.x(range.first));
        const double to = std::max(from + leastMark, std::round(scale_.x(range.last)));
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
