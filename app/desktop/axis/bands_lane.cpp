#include "axis/bands_lane.h"

#include <QPainter>
#include <cmath>

#include "axis/curves.h"
#include "document/wording.h"
#include "row/ink.h"
#include "row/value_flag.h"

namespace tenter::desktop::axis {

BandsLane::BandsLane(Session& session, const WidthScale& scale, QWidget* parent)
    : QWidget(parent), session_(session), scale_(scale) {
    setAccessibleName(QObject::tr("Bands"));
}

controls::DataTable BandsLane::data() const {
    controls::DataTable table{{QObject::tr("Viewport widths"), QObject::tr("Columns")}, {}};
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    for (std::size_t i = 0; i < bands.count(); ++i)
        table.rows.append({widthsTitle(std::floor(bands.first(i)) + (i == 0 ? 0 : 1), bands.last(i)),
                           QString::number(session_.layouts.row().settings(i).row.columns.value_or(1))});
    return table;
}

void BandsLane::addEdge() {
    auto* edge = new Handle(Handle::Shape::Edge, this);
    const auto index = static_cast<int>(edges_.size());
    edges_.append(edge);
    connect(edge, &Handle::grabbed, this, [this, index] {
        session_.document.endGesture();
        const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
        grabbed_ = bands.breakpoints[static_cast<std::size_t>(index)];
        Q_EMIT edgeGrabbed();
    });
    connect(edge, &Handle::movedTo, this,
            [this, index](const QPointF& centre) { moveEdge(index, std::round(scale_.width(centre.x()))); });
    connect(edge, &Handle::nudged, this, [this, index](int right, int, bool coarse) {
        const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
        if (index < static_cast<int>(bands.breakpoints.size()))
            moveEdge(index, std::round(bands.breakpoints[static_cast<std::size_t>(index)]) +
                                right * (coarse ? 10 : 1));
    });
    connect(edge, &Handle::released, this, &BandsLane::endDrag);
    connect(edge, &Handle::cancelled, this, [this, index] { moveEdge(index, grabbed_); });
}

void BandsLane::endDrag() {
    session_.document.endGesture();
    Q_EMIT edgeReleased();
    update();
}

void BandsLane::moveEdge(int edge, double breakpoint) {
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    const auto at = static_cast<std::size_t>(edge);
    if (at >= bands.breakpoints.size() || session_.shown.showsSaved()) return;
    // Keep at least 1 px between breakpoints, and to the ends of the range.
    const double low = (at == 0 ? bands.least : bands.breakpoints[at - 1]) + 1;
    const double high = (at + 1 == bands.breakpoints.size() ? bands.most : bands.breakpoints[at + 1]) - 1;
    if (low > high) return;
    breakpoint = std::clamp(breakpoint, low, high);
    session_.scope.edit(
        QObject::tr("Move breakpoint"),
        [&](project::Project& project) {
            project.row().variants[session_.view.variant()].bands[at].upTo = breakpoint;
        },
        QStringLiteral("breakpoint %1").arg(edge));
}

void BandsLane::refresh() {
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    while (edges_.size() < static_cast<qsizetype>(bands.breakpoints.size()))
        addEdge();
    for (qsizetype i = 0; i < edges_.size(); ++i) {
        Handle* const edge = edges_[i];
        if (i >= static_cast<qsizetype>(bands.breakpoints.size())) {
            edge->hide();
            continue;
        }
        const double breakpoint = bands.breakpoints[static_cast<std::size_t>(i)];
        const double x = scale_.x(breakpoint);
        edge->setCentre({x, height() / 2.0});
        edge->setVisible(x >= scale_.left() - 1 && x <= scale_.right() + 1);
        edge->setEnabled(!session_.shown.showsSaved());
        edge->setAccessibleName(QObject::tr("Breakpoint at %1").arg(pixels(breakpoint)));
        edge->setToolTip(QObject::tr("Breakpoint at %1. Drag to move it.").arg(pixels(breakpoint)));
    }
    update();
}

void BandsLane::resizeEvent(QResizeEvent*) {
    refresh();
}

void BandsLane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    const double middle = std::floor(height() / 2.0) + 0.5;
    painter.setClipRect(QRectF(scale_.left() - 1, 0, scale_.right() - scale_.left() + 3, height()));
    for (std::size_t i = 0; i < bands.count(); ++i) {
        const double from = std::round(scale_.x(bands.first(i))) + 0.5;
        const double to = std::round(scale_.x(bands.last(i))) + 0.5;
        if (to - from < 1) continue;
        painter.setPen(ink.line);
        painter.drawLine(QPointF(from + 2, middle), QPointF(to - 2, middle));
        painter.drawLine(QPointF(from + 2, middle - 5), QPointF(from + 2, middle + 5));
        painter.drawLine(QPointF(to - 2, middle - 5), QPointF(to - 2, middle + 5));
        const int columns = session_.layouts.row().settings(i).row.columns.value_or(1);
        const double shownFrom = std::max(from, scale_.left());
        const double shownTo = std::min(to, scale_.right());
        QString label = columnsTitle(columns);
        double room = fontMetrics().horizontalAdvance(label);
        if (shownTo - shownFrom < room + 32) {
            label = QString::number(columns);
            room = fontMetrics().horizontalAdvance(label);
        }
        if (shownTo - shownFrom < room + 12) continue;
        const QRectF place((shownFrom + shownTo - room) / 2 - 6, middle - 8, room + 12, 16);
        painter.fillRect(place, ink.ground);
        painter.setPen(ink.text);
        painter.drawText(place, Qt::AlignCenter, label);
    }
    paintDragged(painter);
}

void BandsLane::paintDragged(QPainter& painter) const {
    const Bands bands = Bands::of(session_.shown.project(), session_.view.variant());
    for (std::size_t i = 0; i < bands.breakpoints.size() && i < static_cast<std::size_t>(edges_.size());
         ++i) {
        if (!edges_[static_cast<qsizetype>(i)]->isDragged()) continue;
        // Beside the handle, which would hide it.
        const QString value = QObject::tr("Breakpoint %1").arg(pixels(bands.breakpoints[i]));
        const double room = fontMetrics().horizontalAdvance(value) + 32;
        const double x = scale_.x(bands.breakpoints[i]);
        const bool left = x + room > scale_.right();
        const QRectF beside(left ? x - room : x, 0, room, height());
        row::paintFlag(painter, beside, value, rect(), row::Ink::of(palette()));
    }
}

}  // namespace tenter::desktop::axis
