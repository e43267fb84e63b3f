#include "row/outlines.h"

#include <cmath>
#include <limits>

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

hb_draw_funcs_t* drawFunctions() {
    static hb_draw_funcs_t* const functions = [] {
        hb_draw_funcs_t* made = hb_draw_funcs_create();
        hb_draw_funcs_set_move_to_func(made, moveTo, nullptr, nullptr);
        hb_draw_funcs_set_line_to_func(made, lineTo, nullptr, nullptr);
        hb_draw_funcs_set_quadratic_to_func(made, quadraticTo, nullptr, nullptr);
        hb_draw_funcs_set_cubic_to_func(made, cubicTo, nullptr, nullptr);
        hb_draw_funcs_set_close_path_func(made, closePath, nullptr, nullptr);
        hb_draw_funcs_make_immutable(made);
        return made;
    }();
    return functions;
}

}  // namespace

const Outline& Outlines::of(std::uint32_t glyph) {
    std::unique_ptr<Outline>& kept = kept_[glyph];
    if (kept) return *kept;
    kept = std::make_unique<Outline>();
#if HB_VERSION_ATLEAST(7, 0, 0)
    hb_font_draw_glyph(face_->font(), glyph, drawFunctions(), kept.get());
#else
    hb_font_get_glyph_shape(face_->font(), glyph, drawFunctions(), kept.get());
#endif
    // FreeType counts points with 16 bits. A glyph with more points is not drawn.
    if (kept->points.size() > static_cast<std::size_t>(std::numeric_limits<short>::max())) *kept = {};
    return *kept;
}

}  // namespace tenter::desktop::row
