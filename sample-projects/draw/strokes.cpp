#include "strokes.h"

#include <QLinearGradient>
#include <QPainterPath>
#include <QRadialGradient>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace draw {

double between(Dice& dice, double least, double most) {
    return std::uniform_real_distribution<double>(least, most)(dice);
}

void wash(QPainter& painter, const QRectF& area, std::initializer_list<Stop> stops) {
    QLinearGradient gradient(area.topLeft(), area.bottomLeft());
    for (const Stop& stop : stops)
        gradient.setColorAt(stop.at, QColor(stop.colour));
    painter.fillRect(area, gradient);
}

void glow(QPainter& painter, QPointF centre, double radius, QColor colour) {
    QRadialGradient gradient(centre, radius);
    QColor faded = colour;
    gradient.setColorAt(0, colour);
    faded.setAlphaF(colour.alphaF() * 0.35F);
    gradient.setColorAt(0.35, faded);
    faded.setAlpha(0);
    gradient.setColorAt(1, faded);
    painter.setPen(Qt::NoPen);
    painter.setBrush(gradient);
    painter.drawEllipse(centre, radius, radius);
}

Skyline::Skyline(unsigned seed, double base, double swing, double length)
    : base_(base), swing_(swing), length_(length) {
    Dice dice(seed);
    for (int i = 0; i < 5; ++i) {
        phase_[i] = between(dice, 0, 2 * std::numbers::pi);
        share_[i] = between(dice, 0.6, 1.2) / std::pow(1.9, i);
    }
}

double Skyline::at(double x) const {
    double sum = 0;
    for (int i = 0; i < 5; ++i)
        sum += share_[i] * std::sin(phase_[i] + x / length_ * std::pow(2.17, i));
    return base_ + swing_ * sum / 1.8;
}

void Skyline::fill(QPainter& painter, double width, double bottom, const QBrush& brush) const {
    QPainterPath path(QPointF(-2, bottom));
    for (double x = -2; x <= width + 2; x += 2)
        path.lineTo(x, at(x));
    path.lineTo(width + 2, bottom);
    painter.setPen(Qt::NoPen);
    painter.setBrush(brush);
    painter.drawPath(path);
}

void ripples(QPainter& painter, Dice& dice, const QRectF& area, QColor colour, int count, double longest) {
    painter.setPen(Qt::NoPen);
    const double strength = colour.alphaF();
    for (int i = 0; i < count; ++i) {
        const double depth = std::pow(between(dice, 0, 1), 1.5);
        const double length = longest * (0.12 + 0.88 * depth) * between(dice, 0.3, 1);
        const QPointF at(between(dice, area.left() - length / 2, area.right()),
                         area.top() + depth * area.height());
        colour.setAlphaF(static_cast<float>(strength * between(dice, 0.3, 1)));
        painter.setBrush(colour);
        painter.drawEllipse(QRectF(at, QSizeF(length, 0.8 + 2.6 * depth)));
    }
}

void lightPath(QPainter& painter, Dice& dice, double x, const QRectF& water, double spread, QColor colour) {
    painter.setPen(Qt::NoPen);
    const double strength = colour.alphaF();
    for (int i = 0; i < 420; ++i) {
        const double depth = between(dice, 0, 1);
        const double reach = spread * (0.16 + 0.84 * depth);
        const double off = (between(dice, -1, 1) + between(dice, -1, 1)) / 2 * reach;
        const double length = (7 + 58 * depth) * between(dice, 0.4, 1);
        colour.setAlphaF(static_cast<float>(strength * between(dice, 0.25, 1) * (1 - 0.55 * depth)));
        painter.setBrush(colour);
        const double y = water.top() + depth * water.height();
        painter.drawEllipse(QRectF(x + off - length / 2, y, length, 1 + 3.2 * depth));
    }
}

void stars(QPainter& painter, Dice& dice, const QRectF& area, int count, double largest) {
    painter.setPen(Qt::NoPen);
    const QColor tints[] = {QColor(255, 255, 255), QColor(255, 236, 206), QColor(205, 222, 255)};
    for (int i = 0; i < count; ++i) {
        const double size = 0.5 + (largest - 0.5) * std::pow(between(dice, 0, 1), 9);
        QColor colour = tints[dice() % 3];
        colour.setAlphaF(static_cast<float>(between(dice, 0.25, 0.95)));
        const QPointF at(between(dice, area.left(), area.right()), between(dice, area.top(), area.bottom()));
        if (size > 1.9) {
            QColor halo = colour;
            halo.setAlphaF(0.22F);
            glow(painter, at, size * 5, halo);
        }
        painter.setBrush(colour);
        painter.drawEllipse(at, size, size);
    }
}

void tuft(QPainter& painter, Dice& dice, QPointF foot, double height, int blades, QColor colour,
          double lean) {
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < blades; ++i) {
        const double rise = height * between(dice, 0.55, 1);
        const double tip = (lean + between(dice, -0.45, 0.45)) * rise;
        const double root = between(dice, -0.16, 0.16) * height;
        const double half = 0.012 * height + 0.8;
        QPainterPath blade(foot + QPointF(root - half, 0));
        blade.quadTo(foot + QPointF(root + tip * 0.2 - half, -rise * 0.7), foot + QPointF(root + tip, -rise));
        blade.quadTo(foot + QPointF(root + tip * 0.2 + half, -rise * 0.66), foot + QPointF(root + half, 0));
        painter.setBrush(colour.lighter(static_cast<int>(between(dice, 82, 128))));
        painter.drawPath(blade);
    }
}

void bird(QPainter& painter, QPointF at, double span, double beat, QColor colour) {
    const double half = span / 2;
    const double lift = beat * half * 0.62;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    for (const double side : {-1.0, 1.0}) {
        QPainterPath wing(at + QPointF(0, -span * 0.03));
        wing.cubicTo(at + QPointF(side * half * 0.25, -lift * 0.9 - span * 0.05),
                     at + QPointF(side * half * 0.6, -lift - span * 0.04),
                     at + QPointF(side * half, -lift * 0.72));
        wing.cubicTo(at + QPointF(side * half * 0.62, -lift * 0.8 + span * 0.01),
                     at + QPointF(side * half * 0.3, -lift * 0.5 + span * 0.03),
                     at + QPointF(0, span * 0.04));
        painter.drawPath(wing);
    }
    painter.drawEllipse(at, span * 0.045, span * 0.05);
}

void finish(QImage& image, unsigned seed, int grain, double corners) {
    Dice dice(seed);
    std::normal_distribution<double> speck(0, grain);
    const double cx = image.width() / 2.0;
    const double cy = image.height() / 2.0;
    for (int y = 0; y < image.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < image.width(); ++x) {
            const double off = std::hypot((x - cx) / cx, (y - cy) / cy) / std::numbers::sqrt2;
            const double shade = 1 - corners * off * off * off;
            const double add = speck(dice);
            const auto mixed = [&](int channel) {
                return std::clamp(static_cast<int>(channel * shade + add), 0, 255);
            };
            line[x] = qRgb(mixed(qRed(line[x])), mixed(qGreen(line[x])), mixed(qBlue(line[x])));
        }
    }
}

}  // namespace draw
