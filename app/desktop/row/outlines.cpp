#include "row/outlines.h"

#include <cmath>
#include <limits>

#include "draw/outline_reader.h"

namespace tenter::desktop::row {

namespace {

constexpr char onCurve = FT_CURVE_TAG_ON;
constexpr char conic = FT_CURVE_TAG_CONIC;
constexpr char cubic = FT_CURVE_TAG_CUBIC;

void add(Outline& outline, float x, float y, char tag) {
    outline.points.push_back({std::lround(x), std::lround(y)});
    outline.tags.push_back(tag);
}

void moveTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float x, float y, void*) {
    add(*static_cast<Outline*>(data), x, y, onCurve);
}

void lineTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float x, float y, void*) {
    add(*static_cast<Outline*>(data), x, y, onCurve);
}

void quadraticTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float cx, float cy, float x, float y,
                 void*) {
    auto& outline = *static_cast<Outline*>(data);
    add(outline, cx, cy, conic);
    add(outline, x, y, onCurve);
}

void cubicTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float ax, float ay, float bx, float by, float x,
             float y, void*) {
    auto& outline = *static_cast<Outline*>(data);
    add(outline, ax, ay, cubic);
    add(outline, bx, by, cubic);
    add(outline, x, y, onCurve);
}

void closePath(hb_draw_funcs_t*, void* data, hb_draw_state_t*, void*) {
    auto& outline = *static_cast<Outline*>(data);
    outline.contours.push_back(static_cast<short>(outline.points.size() - 1));
}

}  // namespace

const Outline& Outlines::of(std::uint32_t glyph) {
    std::unique_ptr<Outline>& kept = kept_[glyph];
    if (kept) return *kept;
    kept = std::make_unique<Outline>();
    static hb_draw_funcs_t* const functions =
        draw::drawFunctions({moveTo, lineTo, quadraticTo, cubicTo, closePath});
    draw::readOutline(*face_, glyph, functions, kept.get());
    // FreeType counts points with 16 bits. A glyph with more points is not drawn.
    if (kept->points.size() > static_cast<std::size_t>(std::numeric_limits<short>::max())) *kept = {};
    return *kept;
}

}  // namespace tenter::desktop::row
