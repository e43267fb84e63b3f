// Paths of boxes and glyphs.
#include "draw/cairo_painter.h"

#include <numbers>

namespace tenter::draw {

void setColour(cairo_t* context, const units::Colour& colour) {
    cairo_set_source_rgba(context, colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0,
                          colour.alpha / 255.0);
}

void addRoundedBox(cairo_t* context, double x, double y, double width, double height,
                   const Corners& corners) {
    if (corners.square()) {
        cairo_rectangle(context, x, y, width, height);
        return;
    }
    constexpr double quarter = std::numbers::pi / 2;
    const Corners fit = corners.fitted(width, height);
    const auto corner = [&](double cx, double cy, double radius, int from) {
        // An arc without a radius is a point.
        cairo_arc(context, cx, cy, radius, from * quarter, (from + 1) * quarter);
    };
    cairo_new_sub_path(context);
    corner(x + width - fit.topRight, y + fit.topRight, fit.topRight, -1);
    corner(x + width - fit.bottomRight, y + height - fit.bottomRight, fit.bottomRight, 0);
    corner(x + fit.bottomLeft, y + height - fit.bottomLeft, fit.bottomLeft, 1);
    corner(x + fit.topLeft, y + fit.topLeft, fit.topLeft, 2);
    cairo_close_path(context);
}

void addGlyph(cairo_t* context, const GlyphOutline& outline, double size, double x, double y, double skew) {
    const OutlinePoint* next = outline.points.data();
    OutlinePoint at;
    const auto px = [&](const OutlinePoint& point) { return x + (point.x + skew * point.y) * size; };
    const auto py = [&](const OutlinePoint& point) { return y - point.y * size; };
    for (const GlyphOutline::Verb verb : outline.verbs) {
        switch (verb) {
            case GlyphOutline::Verb::Move:
                cairo_move_to(context, px(next[0]), py(next[0]));
                at = next[0];
                next += 1;
                break;
            case GlyphOutline::Verb::Line:
                cairo_line_to(context, px(next[0]), py(next[0]));
                at = next[0];
                next += 1;
                break;
            case GlyphOutline::Verb::Quadratic: {
                // A quadratic curve is a cubic one with controls at two thirds of the way.
                const auto third = [](double from, double to) { return from + (to - from) * 2 / 3; };
                const OutlinePoint a{third(at.x, next[0].x), third(at.y, next[0].y)};
                const OutlinePoint b{third(next[1].x, next[0].x), third(next[1].y, next[0].y)};
                cairo_curve_to(context, px(a), py(a), px(b), py(b), px(next[1]), py(next[1]));
                at = next[1];
                next += 2;
                break;
            }
            case GlyphOutline::Verb::Cubic:
                cairo_curve_to(context, px(next[0]), py(next[0]), px(next[1]), py(next[1]), px(next[2]),
                               py(next[2]));
                at = next[2];
                next += 3;
                break;
            case GlyphOutline::Verb::Close:
                cairo_close_path(context);
                break;
        }
    }
}

}  // namespace tenter::draw
