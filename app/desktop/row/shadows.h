// Box shadows with a real Gaussian blur, kept as nine pieces that serve every size of box.
#pragma once

#include <QImage>
#include <QPainter>
#include <map>
#include <tuple>

#include "row/canvas.h"

namespace tenter::desktop::row {

/// A shadow in device px. CSS Backgrounds 3 § 6: a Gaussian whose deviation is half the blur.
struct ShadowLook {
    double x = 0;
    double y = 0;
    double blur = 0;
    double spread = 0;
    QColor colour;
};

class Shadows {
public:
    /// Draws the shadow of a box; it lies only outside the box's border edge, which `opaque` boxes ensure
    /// by being painted over it.
    void paint(QPainter& painter, const QRectF& box, double radius, const ShadowLook& look, bool opaque);
    /// How far a shadow reaches beyond its box on any side, device px.
    static double reach(const ShadowLook& look);

private:
    using Key = std::tuple<long, long, QRgb>;  // radius, blur in quarter px; colour
    struct Patch {
        QImage image;
        int corner = 0;  // size of a corner piece; one row and column between corners
        int margin = 0;  // how far the blur reaches outside the casting box
    };
    const Patch& patch(double radius, double blur, const QColor& colour);
    std::map<Key, Patch> kept_;
};

}  // namespace tenter::desktop::row
