// The image that the row is drawn on, and the position and scale of the page in it.
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
    double scale = 1;  ///< device px per CSS px
    int left =
        0;  ///< left edge of the page, whole device px, so that scrolling does not move text by part of a px
    int top = 0;  ///< top edge of the page, device px

    [[nodiscard]] double x(double css) const { return left + css * scale; }
    [[nodiscard]] double y(double css) const { return top + css * scale; }
    /// A box (CSS px) rounded to whole device px, as browser engines paint boxes.
    [[nodiscard]] QRect snapped(const layout::Box& box) const;
    /// A border width (CSS px) in whole device px: rounded down, but at least 1 unless it is 0. CSS
    /// Backgrounds 3 § 3.3 and CSS Values 4 § 6 ("snap a length as a border width").
    [[nodiscard]] int borderWidth(double css) const;
    [[nodiscard]] bool shows(const QRectF& device) const { return device.intersects(QRectF(image.rect())); }
};

/// Corner radii of a box, device px.
struct Corners {
    double topLeft = 0;
    double topRight = 0;
    double bottomRight = 0;
    double bottomLeft = 0;
    [[nodiscard]] bool square() const { return topLeft + topRight + bottomRight + bottomLeft == 0; }
    static Corners all(double radius) { return {radius, radius, radius, radius}; }
    /// Reduced by one common factor so that neighbouring corners do not overlap. CSS Backgrounds 3 § 4.5.
    [[nodiscard]] Corners fitted(const QSizeF& size) const;
    /// Each radius reduced by `inset`, but not below 0. CSS Backgrounds 3 § 4.2.
    [[nodiscard]] Corners inset(double inset) const;
};

/// Copies an image pixel by pixel to the top left corner of a widget with the same device pixel ratio.
void blit(QPainter& painter, const QImage& image);
/// The colour as a QColor.
QColor colourOf(const units::Colour& colour);

}  // namespace tenter::desktop::row
