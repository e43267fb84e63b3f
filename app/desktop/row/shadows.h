// Box shadows with a Gaussian blur, cached as nine pieces that fit boxes of any size.
#pragma once

#include <QImage>
#include <QPainter>
#include <map>
#include <tuple>

#include "row/canvas.h"

namespace tenter::desktop::row {

/// A shadow in device px. The blur is a Gaussian with a standard deviation of half of `blur`. CSS Backgrounds
/// 3 § 6.
struct ShadowLook {
    double x = 0;
    double y = 0;
    double blur = 0;
    double spread = 0;
    QColor colour;
};

class Shadows {
public:
    /// Draws the shadow of a box outside its border edge. If the box is `opaque`, the shadow is not clipped,
    /// because the box will be painted over it.
    void paint(QPainter& painter, const QRectF& box, double radius, const ShadowLook& look, bool opaque);
    /// The largest distance that a shadow extends beyond its box, device px.
    static double reach(const ShadowLook& look);

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
