// Reading glyph outlines with HarfBuzz.
#pragma once

#include <hb.h>

#include <cstdint>

#include "text/fonts.h"

namespace tenter::draw {

/// What HarfBuzz calls for each piece of an outline.
struct OutlineCallbacks {
    hb_draw_move_to_func_t move;
    hb_draw_line_to_func_t line;
    hb_draw_quadratic_to_func_t quadratic;
    hb_draw_cubic_to_func_t cubic;
    hb_draw_close_path_func_t close;
};

/// The callbacks as HarfBuzz takes them. They are never freed, so make them once.
hb_draw_funcs_t* drawFunctions(const OutlineCallbacks& callbacks);
/// Calls `functions` with `data` for the outline of `glyph` in HarfBuzz units (`Face::scale()` per em), y
/// upwards.
void readOutline(const text::Face& face, std::uint32_t glyph, hb_draw_funcs_t* functions, void* data);

}  // namespace tenter::draw
