// The image that the row is drawn on, and the position and scale of the page in it.
#pragma once

#include <QColor>
#include <QImage>
#include <QPainter>
#include <QRectF>

#include "draw/corners.h"
#include "draw/device_grid.h"
#include "units/colour.h"

namespace tenter::desktop::row {

using draw::Corners;

/// An image and the place of the page on its px.
struct Canvas : draw::DeviceGrid {
    QImage image;  ///< opaque, device px

    /// A box (CSS px) rounded to whole device px, as browser engines paint boxes.
    [[nodiscard]] QRect snapped(const layout::Box& box) const { return rectOf(DeviceGrid::snapped(box)); }
    [[nodiscard]] bool shows(const QRectF& device) const { return device.intersects(QRectF(image.rect())); }
    static QRect rectOf(const draw::DeviceBox& box) { return {box.x, box.y, box.width, box.height}; }
};

/// Copies an image pixel by pixel to the top left corner of a widget with the same device pixel ratio.
void blit(QPainter& painter, const QImage& image);
/// The colour as a QColor.
QColor colourOf(const units::Colour& colour);

}  // namespace tenter::desktop::row
