// What the pictures are made of: skies, silhouettes, water, grass, birds.
#pragma once

#include <QImage>
#include <QPainter>
#include <initializer_list>
#include <random>

namespace draw {

using Dice = std::mt19937;

/// Uniform between `least` and `most`.
double between(Dice& dice, double least, double most);

struct Stop {
    double at;
    const char* colour;
};

/// Fills `area` from top to bottom.
void wash(QPainter& painter, const QRectF& area, std::initializer_list<Stop> stops);
/// A soft round light.
void glow(QPainter& painter, QPointF centre, double radius, QColor colour);
/// A skyline of summed waves about `base`, filled down to `bottom`; returns its outline's height at x.
class Skyline {
public:
    Skyline(unsigned seed, double base, double swing, double length);
    [[nodiscard]] double at(double x) const;
    void fill(QPainter& painter, double width, double bottom, const QBrush& brush) const;

private:
    double base_, swing_, length_, phase_[5], share_[5];
};
/// Short level strokes that grow towards the viewer.
void ripples(QPainter& painter, Dice& dice, const QRectF& area, QColor colour, int count, double longest);
/// A light's broken path down the water below `centre`.
void lightPath(QPainter& painter, Dice& dice, double x, const QRectF& water, double spread, QColor colour);
void stars(QPainter& painter, Dice& dice, const QRectF& area, int count, double largest);
/// Blades that rise from `foot`, leaning with the wind.
void tuft(QPainter& painter, Dice& dice, QPointF foot, double height, int blades, QColor colour, double lean);
/// A bird far off: two wings and a body. `beat` from -1 (down) to 1 (up).
void bird(QPainter& painter, QPointF at, double span, double beat, QColor colour);
/// Film grain and darker corners, which make flat fills look printed.
void finish(QImage& image, unsigned seed, int grain, double corners);

}  // namespace draw
