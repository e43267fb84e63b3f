// Owning handles of Cairo's objects.
#pragma once

#include <cairo.h>

#include <memory>

namespace tenter::draw {

struct CairoRelease {
    void operator()(cairo_t* context) const { cairo_destroy(context); }
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
using CairoContext = std::unique_ptr<cairo_t, CairoRelease>;
using CairoSurface = std::unique_ptr<cairo_surface_t, CairoRelease>;

}  // namespace tenter::draw
