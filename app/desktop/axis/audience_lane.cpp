#include "axis/audience_lane.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <map>

#include "document/wording.h"
#include "findings/wording.h"
#include "row/ink.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

constexpr double barWidth = 4;  // px; a bar shows the sum of the visits within it

}  // namespace

AudienceLane::AudienceLane(const CheckRunner& checks, const WidthScale& scale, QWidget* parent)
    : QWidget(parent), checks_(checks), scale_(scale) {
    setAccessibleName(QObject::tr("Visits at each viewport width"));
    onChange(checks_, CheckRunner::Change::Audience, this, qOverload<>(&QWidget::update));
}

QString AudienceLane::toolTipAt(double x) const {
    double all = 0;
    double there = 0;
    double first = 0;
    double last = 0;
    for (const auto& [width, visits] : checks_.audience().visits) {
        all += visits;
        if (std::abs(scale_.x(width) - x) > barWidth) continue;
        if (there == 0) first = width;
        last = width;
        there += visits;
    }
    if (there == 0) return {};
    return QObject::tr("%1: %n visit(s), %2 of all visits", nullptr, static_cast<int>(std::lround(there)))
        .arg(widthsTitle(first, last), findings::percentTitle(there / all));
}

controls::DataTable AudienceLane::data() const {
    controls::DataTable table{
        {QObject::tr("Viewport width"), QObject::tr("Visits"), QObject::tr("Share of all visits")}, {}};
    double all = 0;
    for (const auto& [width, visits] : checks_.audience().visits)
        all += visits;
    for (const auto& [width, visits] : checks_.audience().visits)
        table.rows.append({pixels(width), figure(visits, 0), findings::percentTitle(visits / all)});
    return table;
}

bool AudienceLane::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), toolTipAt(help->pos().x()), this);
    return true;
}

void AudienceLane::paintEvent(QPaintEvent* event) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double floor = height() - 4;
    painter.setClipRect(QRectF(scale_.left(), 0, scale_.right() - scale_.left() + 1, height())
                            .intersected(QRectF(event->rect())));
    painter.fillRect(QRectF(scale_.left(), floor, scale_.right() - scale_.left() + 1, 1), ink.line);
    std::map<int, double> bars;
    for (const auto& [width, visits] : checks_.audience().visits) {
        if (width < scale_.firstShown() || width > scale_.lastShown()) continue;
        bars[static_cast<int>(std::floor((scale_.x(width) - scale_.left()) / barWidth))] += visits;
    }
    double most = 0;
    for (const auto& [bar, visits] : bars)
        most = std::max(most, visits);
    for (const auto& [bar, visits] : bars) {
        const double tall = std::max(1.0, std::round((floor - 3) * visits / most));
        painter.fillRect(QRectF(scale_.left() + bar * barWidth, floor - tall, barWidth - 1, tall),
                         row::mixed(ink.ground, ink.text, 0.6));
    }
}

}  // namespace tenter::desktop::axis
