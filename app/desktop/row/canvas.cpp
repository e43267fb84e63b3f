#include "row/canvas.h"

namespace tenter::desktop::row {

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
