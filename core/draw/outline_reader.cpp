#include "draw/outline_reader.h"

namespace tenter::draw {

hb_draw_funcs_t* drawFunctions(const OutlineCallbacks& callbacks) {
    hb_draw_funcs_t* made = hb_draw_funcs_create();
    hb_draw_funcs_set_move_to_func(made, callbacks.move, nullptr, nullptr);
    hb_draw_funcs_set_line_to_func(made, callbacks.line, nullptr, nullptr);
    hb_draw_funcs_set_quadratic_to_func(made, callbacks.quadratic, nullptr, nullptr);
    hb_draw_funcs_set_cubic_to_func(made, callbacks.cubic, nullptr, nullptr);
    hb_draw_funcs_set_close_path_func(made, callbacks.close, nullptr, nullptr);
    hb_draw_funcs_make_immutable(made);
    return made;
}

void readOutline(const text::Face& face, std::uint32_t glyph, hb_draw_funcs_t* functions, void* data) {
#if HB_VERSION_ATLEAST(7, 0, 0)
    hb_font_draw_glyph(face.font(), glyph, functions, data);
#else
    hb_font_get_glyph_shape(face.font(), glyph, functions, data);
#endif
}

}  // namespace tenter::draw
