#include "row/canvas.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::row {

QRect Canvas::snapped(const layout::Box& box) const {
    const auto start =
        QPoint(static_cast<int>(std::lround(x(box.x))), static_cast<int>(std::lround(y(box.y))));
    const auto end =
        QPoint(static_cast<int>(std::lround(x(box.right()))), static_cast<int>(std::lround(y(box.bottom()))));
    return {start.x(), start.y(), end.x() - start.x(), end.y() - start.y()};
}

int Canvas::borderWidth(double css) const {
    const double device = css * scale;
    if (device <= 0) return 0;
    return std::max(1, static_cast<int>(std::floor(device + 1e-6)));
}

Corners Corners::fitted(const QSizeF& size) const {
    double share = 1;
    const auto keep = [&share](double side, double sum) {
        if (sum > side && sum > 0) share = std::min(share, std::max(0.0, side) / sum);
    };
    keep(size.width(), topLeft + topRight);
    keep(size.width(), bottomLeft + bottomRight);
    keep(size.height(), topLeft + bottomLeft);
    keep(size.height(), topRight + bottomRight);
    return {topLeft * share, topRight * share, bottomRight * share, bottomLeft * share};
}

Corners Corners::inset(double inset) const {
    const auto less = [inset](double radius) { return std::max(0.0, radius - inset); };
    return {less(topLeft), less(topRight), less(bottomRight), less(bottomLeft)};
}

void blit(QPainter& painter, const QImage& image) {
    // Without a device pixel ratio nothing is scaled, and Qt copies whole rows.
    const double ratio = image.devicePixelRatio();
    const QImage plain(image.constBits(), image.width(), image.height(), image.bytesPerLine(),
                       image.format());
    painter.save();
    painter.scale(1 / ratio, 1 / ratio);
    painter.setCompositionMode(QPainter::CompositionMode_Source);
    painter.drawImage(0, 0, plain);
    painter.restore();
}

QColor colourOf(const units::Colour& colour) {
    return {colour.red, colour.green, colour.blue, colour.alpha};
}

}  // namespace tenter::desktop::row
