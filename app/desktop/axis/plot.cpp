#include "axis/plot.h"

#include <QChart>
#include <QEvent>
#include <QGraphicsLayout>
#include <QPaintEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "document/wording.h"
#include "row/canvas.h"
#include "units/whole_width.h"

namespace tenter::desktop::axis {

namespace {

constexpr double above = 10;  // px above and below the plot area
constexpr double below = 6;
constexpr double labelGap = 7;  // px between a value and its grid line

double niceStep(double range, double most) {
    double power = std::pow(10.0, std::floor(std::log10(range / most)));
    while (true) {
        for (const double times : {1.0, 2.0, 5.0})
            if (range / (times * power) <= most) return times * power;
        power *= 10;
    }
}

/// The ends of the range, every 100 px, and the whole widths at both sides of every breakpoint.
std::set<double> tabulatedWidths(const WidthScale& scale) {
    constexpr int apart = 100;
    std::set<double> widths{scale.least(), scale.most()};
    for (int step = 1; step * apart < scale.most(); ++step)
        if (step * apart > scale.least()) widths.insert(step * apart);
    for (const double breakpoint : scale.breakpoints()) {
        widths.insert(std::floor(breakpoint));
        widths.insert(units::firstWholeWidthAbove(breakpoint));
    }
    return widths;
}

/// The value of a curve at a width; empty outside it.
std::optional<double> valueOn(const Pieces& pieces, double width) {
    for (const QVector<QPointF>& piece : pieces)
        for (qsizetype i = 1; i < piece.size(); ++i) {
            const QPointF from = piece[i - 1];
            const QPointF to = piece[i];
            if (width < from.x() || width > to.x()) continue;
            const double part = to.x() > from.x() ? (width - from.x()) / (to.x() - from.x()) : 0;
            return from.y() + (to.y() - from.y()) * part;
        }
    return std::nullopt;
}

}  // namespace

Plot::Plot(const WidthScale& scale, QWidget* parent) : QChartView(parent), scale_(scale) {
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::NoFocus);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // A graphics view makes its viewport take the focus.
    viewport()->setFocusPolicy(Qt::NoFocus);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->legend()->hide();
    chart()->setBackgroundVisible(false);
    chart()->setPlotAreaBackgroundVisible(false);
    chart()->setMargins({});
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    across_ = new QValueAxis(this);
    across_->setVisible(false);
    up_ = new QValueAxis(this);
    // QChart does not update grid lines and labels when only the plot area changes, so this class draws them.
    up_->setVisible(false);
    chart()->addAxis(across_, Qt::AlignBottom);
    chart()->addAxis(up_, Qt::AlignLeft);
    applyInk();
    connect(scene(), &QGraphicsScene::changed, this, [this] {
        stale_ = true;
        viewport()->update();
    });
}

QRectF Plot::area() const {
    return {scale_.left(), above, scale_.right() - scale_.left(), std::max(1.0, height() - above - below)};
}

QPointF Plot::at(double width, double value) const {
    const QRectF plot = area();
    return {scale_.x(width), plot.bottom() - (value - bottom_) / (top_ - bottom_) * plot.height()};
}

double Plot::valueAt(double y) const {
    const QRectF plot = area();
    return bottom_ + (plot.bottom() - y) / plot.height() * (top_ - bottom_);
}

void Plot::setLines(std::vector<Line> lines) {
    lines_ = std::move(lines);
    qsizetype pieces = 0;
    for (const Line& line : lines_)
        pieces += static_cast<qsizetype>(line.pieces.size());
    while (series_.size() < pieces) {
        auto* series = new QLineSeries(this);
        chart()->addSeries(series);
        series->attachAxis(across_);
        series->attachAxis(up_);
        series_.append(series);
    }
    refresh();
}

void Plot::setValues(double least, double most) {
    least_ = least;
    most_ = std::max(most, least + 0.5);
    if (!held_) applyValues();
}

void Plot::holdValues(bool on) {
    held_ = on;
    if (!on) {
        applyValues();
        refresh();
    }
}

void Plot::applyValues() {
    const double room = (most_ - least_) * 0.08;
    const double step = niceStep(most_ - least_ + 2 * room, std::clamp(height() / 26.0, 1.0, 6.0));
    const double bottom = std::max(0.0, least_ - room);
    const double top = most_ + room;
    if (bottom == bottom_ && top == top_ && step == step_) return;
    bottom_ = bottom;
    top_ = top;
    step_ = step;
    up_->setRange(bottom_, top_);
}

void Plot::refresh() {
    // Both setters make QChart lay out all labels again, even without a change.
    if (const QRectF plot = area();
        plot != chart()->plotArea() || across_->min() != scale_.left() || across_->max() != scale_.right()) {
        chart()->setPlotArea(plot);
        across_->setRange(scale_.left(), scale_.right());
    }
    fillSeries();
    // Lay out now and not in the next event loop, so that the current frame is up to date.
    chart()->layout()->activate();
    stale_ = true;
    viewport()->update();
}

controls::DataTable Plot::data() const {
    controls::DataTable table{{QObject::tr("Viewport width")}, {}};
    for (const Line& line : lines_)
        table.heads << line.name;
    for (const double width : tabulatedWidths(scale_)) {
        QStringList cells{pixels(width)};
        for (const Line& line : lines_) {
            const auto value = valueOn(line.pieces, width);
            cells << (value ? figure(*value, 2) : QString());
        }
        table.rows.append(cells);
    }
    return table;
}

void Plot::fillSeries() {
    qsizetype next = 0;
    for (const Line& line : lines_) {
        for (const QVector<QPointF>& piece : line.pieces) {
            QLineSeries* const series = series_[next++];
            QVector<QPointF> points;
            points.reserve(piece.size());
            for (const QPointF& point : piece)
                points.append({scale_.x(point.x()), point.y()});
            // A cosmetic pen counts px of the device.
            QPen pen = line.pen;
            pen.setWidthF(pen.widthF() * devicePixelRatioF());
            if (series->pen() != pen) series->setPen(pen);
            series->replace(points);
            if (!series->isVisible()) series->setVisible(true);
        }
    }
    for (; next < series_.size(); ++next)
        series_[next]->setVisible(false);
}

void Plot::drawOver(QPainter&) {}

void Plot::drawBackground(QPainter* painter, const QRectF& rect) {
    QChartView::drawBackground(painter, rect);
    const row::Ink ink = row::Ink::of(palette());
    painter->save();
    painter->resetTransform();
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setFont(font());
    const int decimals = step_ < 1 ? 1 : 0;
    for (double n = std::ceil(bottom_ / step_); n * step_ <= top_; ++n) {
        const double y = std::round(at(scale_.least(), n * step_).y()) + 0.5;
        painter->setPen(QPen(ink.faint, 1));
        painter->drawLine(QPointF(scale_.left(), y), QPointF(scale_.right(), y));
        painter->setPen(ink.quiet);
        const QString value = figure(n * step_, decimals);
        painter->drawText(QPointF(scale_.left() - labelGap - fontMetrics().horizontalAdvance(value),
                                  y + fontMetrics().ascent() / 2.0 - 1.5),
                          value);
    }
    painter->restore();
}

void Plot::drawForeground(QPainter* painter, const QRectF&) {
    painter->save();
    painter->resetTransform();
    drawOver(*painter);
    drawLabels(*painter);
    painter->restore();
}

// Each label is at the end of its line, moved only as far as needed to keep labels apart.
void Plot::drawLabels(QPainter& painter) {
    struct Label {
        double y;
        const Line* line;
    };
    std::vector<Label> labels;
    const double edge = scale_.lastShown();
    for (const Line& line : lines_) {
        if (line.label.isEmpty()) continue;
        for (const QVector<QPointF>& piece : line.pieces) {
            if (piece.isEmpty() || piece.last().x() < edge - 0.5 || piece.first().x() > edge) continue;
            double value = piece.last().y();
            for (qsizetype i = 1; i < piece.size(); ++i) {
                if (piece[i].x() < edge) continue;
                const QPointF a = piece[i - 1];
                const QPointF b = piece[i];
                value = b.x() > a.x() ? a.y() + (edge - a.x()) / (b.x() - a.x()) * (b.y() - a.y()) : b.y();
                break;
            }
            labels.push_back({at(edge, value).y(), &line});
            break;
        }
    }
    std::sort(labels.begin(), labels.end(), [](const Label& a, const Label& b) { return a.y < b.y; });
    painter.setFont(font());
    const double step = fontMetrics().height() - 1;
    for (std::size_t i = 1; i < labels.size(); ++i)
        labels[i].y = std::max(labels[i].y, labels[i - 1].y + step);
    double floor = height() - step / 2;
    for (std::size_t i = labels.size(); i-- > 0;) {
        labels[i].y = std::min(labels[i].y, floor);
        floor = labels[i].y - step;
    }
    const double x = scale_.right() + 8;
    for (const Label& label : labels) {
        painter.setPen(label.line->ink);
        const QString text =
            fontMetrics().elidedText(label.line->label, Qt::ElideRight, static_cast<int>(width() - x));
        painter.drawText(QPointF(x, label.y + fontMetrics().ascent() / 2.0 - 1), text);
    }
}

void Plot::paintEvent(QPaintEvent* event) {
    const double ratio = devicePixelRatioF();
    const QSize size = viewport()->size();
    if (drawn_.devicePixelRatio() != ratio) fillSeries();
    if (stale_ || drawn_.size() != size * ratio || drawn_.devicePixelRatio() != ratio) {
        drawn_ = QImage(size * ratio, QImage::Format_RGB32);
        drawn_.setDevicePixelRatio(ratio);
        drawn_.fill(row::Ink::of(palette()).ground);
        QPainter painter(&drawn_);
        painter.setRenderHint(QPainter::Antialiasing);
        stale_ = false;
        render(&painter, QRectF(QPointF(), QSizeF(size)), QRect(QPoint(), size));
    }
    QPainter painter(viewport());
    painter.setClipRect(event->rect());
    row::blit(painter, drawn_);
}

void Plot::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    if (!held_) applyValues();
    refresh();
}

void Plot::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
    applyInk();
    restyle();
}

void Plot::applyInk() {
    const row::Ink ink = row::Ink::of(palette());
    setBackgroundBrush(ink.ground);
}

// The pane handles dragging, scrolling and keys, so a plot ignores these events.
void Plot::mousePressEvent(QMouseEvent* event) {
    event->ignore();
}
void Plot::mouseMoveEvent(QMouseEvent* event) {
    event->ignore();
}
void Plot::mouseReleaseEvent(QMouseEvent* event) {
    event->ignore();
}
void Plot::wheelEvent(QWheelEvent* event) {
    event->ignore();
}
void Plot::keyPressEvent(QKeyEvent* event) {
    event->ignore();
}
void Plot::keyReleaseEvent(QKeyEvent* event) {
    event->ignore();
}

}  // namespace tenter::desktop::axis
