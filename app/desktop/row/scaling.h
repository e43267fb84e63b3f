// Fast scaling of pictures, used while a size is being dragged.
#pragma once

#include <QImage>
#include <QRectF>

namespace tenter::desktop::row {

/// The rectangle `crop` of `source` scaled to `size` px by bilinear interpolation. `source` must be a 32-bit
/// image.
QImage scaledQuickly(const QImage& source, const QRectF& crop, const QSize& size);

}  // namespace tenter::desktop::row
