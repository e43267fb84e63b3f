// Box shadows with a Gaussian blur, cached as nine pieces (draw/shadow_patch.h).
#pragma once

#include <QImage>
#include <QPainter>
#include <map>
#include <tuple>

#include "draw/drawing.h"
#include "row/canvas.h"

namespace tenter::desktop::row {

class Shadows {
public:
    /// Draws the shadow outside the border edge of its box. If the box is covered by an opaque one, the
    /// shadow is not clipped.
    void paint(QPainter& painter, const Canvas& canvas, const draw::CastShadow& shadow);

private:
    using Key = std::tuple<long, long, QRgb>;  // radius, blur in quarter px; colour
    struct Patch {
        QImage image;
        int corner = 0;  // size of a corner piece, px; there is one row and column between corners
        int margin = 0;  // px that the blur extends beyond the box that casts the shadow
    };
    const Patch& patch(double radius, double blur, const QColor& colour);
    std::map<Key, Patch> kept_;
};

}  // namespace tenter::desktop::row
