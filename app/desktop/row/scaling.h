// A quick scaling of pictures, for the moment in which a size is dragged.
#pragma once

#include <QImage>
#include <QRectF>

namespace tenter::desktop::row {

/// The part `crop` of `source` at `size` px, each px mixed from its four nearest. Both are 32-bit images.
QImage scaledQuickly(const QImage& source, const QRectF& crop, const QSize& size);

}  // namespace tenter::desktop::row
