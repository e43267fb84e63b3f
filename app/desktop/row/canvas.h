// What the row is drawn on: an image in device px, and where the page lies in it.
#pragma once

#include <QColor>
#include <QImage>
#include <QPainter>
#include <QRectF>

#include "layout/layout.h"
#include "units/colour.h"

namespace tenter::desktop::row {

struct Canvas {
    QImage image;      ///< opaque, device px
    double scale = 1;  ///< device px to one CSS px
    int left = 0;  ///< the page's top left corner, whole device px, so that text stays put while scrolling
    int top = 0;

    [[nodiscard]] double x(double css) const { return left + css * scale; }
    [[nodiscard]] double y(double css) const { return top + css * scale; }
    /// A box on whole device px, as engines paint boxes.
    [[nodiscard]] QRect snapped(const layout::Box& box) const;
    /// A border's width in whole device px: rounded down, but at least one. CSS Backgrounds 3 § 3.3 and
    /// CSS Values 4 § 6 ("snap a length as a border width").
    [[nodiscard]] int borderWidth(double css) const;
    [[nodiscard]] bool shows(const QRectF& device) const { return device.intersects(QRectF(image.rect())); }
};

/// Radii of a box's corners in device px.
struct Corners {
    double topLeft = 0;
    double topRight = 0;
    double bottomRight = 0;
    double bottomLeft = 0;
    [[nodiscard]] bool square() const { return topLeft + topRight + bottomRight + bottomLeft == 0; }
    static Corners all(double radius) { return {radius, radius, radius, radius}; }
    /// Shrunk alike until neighbours do not overlap. CSS Backgrounds 3 § 4.5.
    [[nodiscard]] Corners fitted(const QSizeF& size) const;
    /// Each smaller by `inset`, but not below 0. CSS Backgrounds 3 § 4.2.
    [[nodiscard]] Corners inset(double inset) const;
};

/// Copies an image of the widget's own px density to the widget's top left corner, pixel for pixel.
void blit(QPainter& painter, const QImage& image);
QColor colourOf(const units::Colour& colour);

}  // namespace tenter::desktop::row
