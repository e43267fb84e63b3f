#include "axis/wraps_lane.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <cmath>
#include <vector>

#include "document/wording.h"
#include "row/ink.h"
#include "session/changes.h"
#include "units/whole_width.h"

namespace tenter::desktop::axis {

namespace {

constexpr double pointerReach = 3;  // px from the pointer to a wrap point
constexpr qsizetype mostWrapsListed = 6;

}  // namespace

WrapsLane::WrapsLane(const LayoutCache& layouts, const SelectionModel& selection, const CheckRunner& checks,
                     const WidthScale& scale, QWidget* parent)
    : QWidget(parent), layouts_(layouts), selection_(selection), checks_(checks), scale_(scale) {
    setAccessibleName(QObject::tr("Wrap points"));
    onChange(checks_, CheckRunner::Change::Sweep, this, qOverload<>(&QWidget::update));
    onChange(checks_, CheckRunner::Change::Findings, this, [this] {
        const std::size_t count = checks_.sweep().wraps.size();
        setAccessibleDescription(QObject::tr("%n wrap point(s)", nullptr, static_cast<int>(count)));
        update();
    });
    onChange(selection_, SelectionModel::Change::Place, this, qOverload<>(&QWidget::update));
}

QString WrapsLane::changeTitle(const sweep::WrapPoint& wrap, int direction) const {
    const std::uint32_t from = direction > 0 ? wrap.below : wrap.above;
    const std::uint32_t to = direction > 0 ? wrap.above : wrap.below;
    return partTitle(layouts_.project(), wrap.place.card, wrap.place.part) + ": " + figure(from, 0) + " → " +
           linesTitle(to);
}

std::optional<WrapsLane::Stop> WrapsLane::next(int direction) const {
    const double now = layouts_.width();
    // The line count exactly at a wrap point can be that of either side, so use the whole widths next to it.
    const auto stopAt = [&](const sweep::WrapPoint& wrap) {
        return direction > 0 ? units::firstWholeWidthAbove(wrap.width) : std::ceil(wrap.width) - 1;
    };
    std::optional<double> stop;
    std::vector<const sweep::WrapPoint*> passed;
    for (const sweep::WrapPoint& wrap : checks_.sweep().wraps) {
        const double at = stopAt(wrap);
        if (at < checks_.sweep().least || at > checks_.sweep().most) continue;
        if (direction > 0 ? at <= now : at >= now) continue;
        const bool nearer = !stop || (direction > 0 ? at < *stop : at > *stop);
        if (nearer) {
            stop = at;
            passed.clear();
        }
        if (at == *stop) passed.push_back(&wrap);
    }
    if (!stop) return std::nullopt;
    QString text = pixels(*stop) + ": " + changeTitle(*passed.front(), direction);
    if (passed.size() > 1)
        text =
            QObject::tr("%1; %n more change(s) at this width", nullptr, static_cast<int>(passed.size()) - 1)
                .arg(text);
    return Stop{*stop, text};
}

controls::DataTable WrapsLane::data() const {
    controls::DataTable table{{QObject::tr("Viewport width"), QObject::tr("Text"), QObject::tr("Lines below"),
                               QObject::tr("Lines above")},
                              {}};
    for (const sweep::WrapPoint& wrap : checks_.sweep().wraps)
        table.rows.append({pixels(wrap.width),
                           partTitle(layouts_.project(), wrap.place.card, wrap.place.part),
                           QString::number(wrap.below), QString::number(wrap.above)});
    return table;
}

QString WrapsLane::toolTipAt(double x) const {
    const double from = scale_.width(x - pointerReach);
    const double to = scale_.width(x + pointerReach);
    QStringList lines;
    qsizetype more = 0;
    for (const sweep::WrapPoint& wrap : checks_.sweep().wraps) {
        if (wrap.width < from || wrap.width > to) continue;
        if (lines.size() >= mostWrapsListed)
            ++more;
        else
            lines << pixels(wrap.width) + ": " + changeTitle(wrap, 1);
    }
    if (more > 0) lines << QObject::tr("%n more change(s)", "of line counts", static_cast<int>(more));
    return lines.join('\n');
}

bool WrapsLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), toolTipAt(help->pos().x()), this);
    return true;
}

void WrapsLane::paintEvent(QPaintEvent* event) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double floor = height() - 4;
    painter.setClipRect(QRectF(scale_.left() - 1, 0, scale_.right() - scale_.left() + 3, height())
                            .intersected(QRectF(event->rect())));
    painter.fillRect(QRectF(scale_.left(), floor, scale_.right() - scale_.left() + 1, 1), ink.faint);
    const sweep::Sweep& sweep = checks_.sweep();
    if (sweep.wraps.empty()) {
        painter.setPen(ink.quiet);
        painter.drawText(QRectF(scale_.left(), 0, width(), height() - 4), Qt::AlignVCenter | Qt::AlignLeft,
                         QObject::tr("No wrap points"));
        return;
    }
    // Results of an earlier state of the row are drawn fainter.
    const QColor mark = checks_.isStale() ? ink.line : ink.text;
    const auto selection = selection_.part();
    // Ticks of the selected part are drawn last, above the others.
    for (const bool strong : {false, true}) {
        for (const sweep::WrapPoint& wrap : sweep.wraps) {
            if ((selection == wrap.place) != strong) continue;
            const double x = std::round(scale_.x(wrap.width));
            const double tall = strong ? floor - 3 : std::round((floor - 3) * 0.55);
            painter.fillRect(QRectF(strong ? x - 0.5 : x, floor - tall, strong ? 2 : 1, tall),
                             strong ? mark : row::mixed(ink.ground, mark, 0.5));
        }
    }
}

}  // namespace tenter::desktop::axis
