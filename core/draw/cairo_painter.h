// Paints drawing operations with Cairo.
#pragma once

#include <map>
#include <optional>
#include <tuple>

#include "draw/cairo_handles.h"
#include "draw/drawing.h"
#include "draw/line_ink.h"
#include "draw/picture_source.h"
#include "draw/shadow_patch.h"
#include "text/paragraph_store.h"

namespace tenter::draw {

/// How finely a painter draws what is not vector. All of them in px per px of the grid.
struct PaintOptions {
    double pictureScale = 1;
    double shadowScale = 1;
    bool encodePictures = false;  ///< opaque pictures carry their JPEG files, which a PDF takes as they are
};

/// Shows glyphs with a font where the format of the picture has fonts.
class GlyphShower {
public:
    virtual ~GlyphShower() = default;
    /// Shows the glyphs of `ink`, which are of `paragraph`, in the colour of the context. False, and nothing
    /// shown, if they must be outlines.
    virtual bool show(cairo_t* context, const text::Paragraph& paragraph, const LineInk& ink) = 0;
};

/// Paints rows. Keeps outlines, shadows and pictures from one row to the next.
class CairoPainter {
public:
    /// `store` shapes the words in place of a missing picture.
    /// With `shower`, texts are glyphs of fonts where it can show them, and outlines elsewhere.
    CairoPainter(PictureSource& pictures, text::ParagraphStore& store, GlyphShower* shower = nullptr)
        : pictures_(pictures), store_(store), shower_(shower) {}

    /// Paints `drawing`, whose texts are in `layout`. Boxes and baselines are rounded to `grid`; the units of
    /// the context are its px.
    void paint(cairo_t* context, const Drawing& drawing, const layout::Layout& layout, const DeviceGrid& grid,
               const PaintOptions& options = {});

    /// Paints the glyphs and underlines of lines.
    void paintText(cairo_t* context, const layout::LaidPart& part, const layout::LaidLine& line,
                   const DeviceGrid& grid, bool italic, bool underlineLinks);
    [[nodiscard]] GlyphOutlines& outlines() { return outlines_; }

private:
    struct Painting;
    const ShadowPatch& patch(double radius, double blur);
    cairo_surface_t* mask(int width, int height, double radius, double blur);
    PictureSource& pictures_;
    text::ParagraphStore& store_;
    GlyphShower* shower_;
    GlyphOutlines outlines_;
    std::map<std::pair<long, long>, ShadowPatch> patches_;            // by radius and blur, quarter px
    std::map<std::tuple<int, int, long, long>, CairoSurface> masks_;  // with the size
};

/// Adds the outline of a box with rounded corners to the path.
void addRoundedBox(cairo_t* context, double x, double y, double width, double height, const Corners& corners);
/// Adds the outlines of a glyph at `size` px per em to the path, its origin at (x, y).
void addGlyph(cairo_t* context, const GlyphOutline& outline, double size, double x, double y, double skew);
void setColour(cairo_t* context, const units::Colour& colour);

}  // namespace tenter::draw
