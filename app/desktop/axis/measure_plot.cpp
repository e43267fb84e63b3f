#include "axis/measure_plot.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::axis {

namespace {

constexpr std::size_t roughSamples = 32;
constexpr std::size_t fineSamples = 200;
constexpr std::size_t mostCurves = 4;
constexpr int refineMilliseconds = 140;

}  // namespace

MeasurePlot::MeasurePlot(const LayoutCache& layouts, const SelectionModel& selection, const WidthScale& scale,
                         QWidget* parent)
    : Plot(scale, parent), layouts_(layouts), selection_(selection) {
    setAccessibleName(QObject::tr("Measure at each viewport width"));
    refine_.setSingleShot(true);
    refine_.setInterval(refineMilliseconds);
    connect(&refine_, &QTimer::timeout, this, [this] { read(fineSamples); });
}

void MeasurePlot::rebuild() {
    if (!isVisible()) return;
    read(roughSamples);
    refine_.start();
}

void MeasurePlot::read(std::size_t samples) {
    const Bands bands = Bands::of(layouts_.project(), layouts_.variant());
    std::size_t columns = 1;
    for (std::size_t band = 0; band < bands.count(); ++band)
        columns = std::max<std::size_t>(columns, layouts_.row().settings(band).row.columns.value_or(1));
    curves_ = measuredParts(layouts_.project(), std::min(columns, mostCurves), selection_.card());
    measure(layouts_.row(), bands, samples, curves_);
    double least = 1e9;
    double most = 0;
    for (const MeasureCurve& curve : curves_) {
        for (const QVector<QPointF>& piece : curve.pieces) {
            for (const QPointF& point : piece) {
                least = std::min(least, point.y());
                most = std::max(most, point.y());
            }
        }
    }
    if (most > 0) setValues(std::min(least, 40.0), std::max(most, 50.0));
    restyle();
}

void MeasurePlot::restyle() {
    const row::Ink ink = row::Ink::of(palette());
    std::vector<Line> lines;
    const auto selected = selection_.card();
    for (const MeasureCurve& curve : curves_) {
        const bool chosen = selected == curve.card;
        QPen pen(chosen ? ink.accent : row::mixed(ink.ground, ink.text, 0.6), chosen ? 2.25 : 1);
        pen.setCosmetic(true);
        const bool labelled = chosen || (!selected && curves_.size() == 1);
        lines.push_back({curve.pieces, pen, labelled ? QObject::tr("card %1").arg(curve.card + 1) : QString(),
                         chosen ? ink.accentText : ink.quiet, QObject::tr("Card %1").arg(curve.card + 1)});
    }
    if (!selected && lines.size() > 1) lines.front().label = QObject::tr("cards 1–%1").arg(lines.size());
    setLines(std::move(lines));
}

// The comfortable range of each band, as two dashed lines. Bringhurst, The Elements of Typographic Style
// § 2.1.2 (from memory): 45 to 75 characters in a single column, 40 to 50 in several.
void MeasurePlot::drawOver(QPainter& painter) {
    const row::Ink ink = row::Ink::of(palette());
    const Bands bands = Bands::of(layouts_.project(), layouts_.variant());
    painter.setClipRect(area());
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(font());
    for (std::size_t band = 0; band < bands.count(); ++band) {
        const bool single = layouts_.row().settings(band).row.columns.value_or(1) == 1;
        double lastNumber = 1e9;  // height of the number drawn before, px
        for (const int count : {single ? 45 : 40, single ? 75 : 50}) {
            const QPointF from = at(bands.first(band), count);
            const QPointF to = at(bands.last(band), count);
            painter.setPen(QPen(ink.line, 1, Qt::DashLine));
            painter.drawLine(from + QPointF(4, 0), to - QPointF(4, 0));
            const QString number = QString::number(count);
            const double start = std::max(from.x(), scale_.left()) + 8;
            const double room = fontMetrics().horizontalAdvance(number) + 6;
            if (std::min(to.x(), scale_.right()) - start < room + 8) continue;
            // At the edge of the plot the number is moved beside its line so that it is not clipped.
            const double half = fontMetrics().ascent() / 2.0 + 1;
            const double middle = std::clamp(from.y(), area().top() + half, area().bottom() - half);
            if (std::abs(middle - from.y()) > 2 * half || std::abs(middle - lastNumber) < 2 * half) continue;
            lastNumber = middle;
            painter.fillRect(QRectF(start, middle - 7, room, 14), ink.ground);
            painter.setPen(ink.quiet);
            painter.drawText(QPointF(start + 3, middle + half - 2), number);
        }
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipping(false);
}

}  // namespace tenter::desktop::axis
