#include "draw/cairo_painter.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <span>

#include "draw/device_ring.h"
#include "draw/row_drawing.h"
#include "draw/text_block.h"
#include "draw/text_line.h"

namespace tenter::draw {

namespace {

/// The picture as a surface that Cairo paints: premultiplied, in the byte order of this machine.
CairoSurface surfaceOf(const CutPicture& picture) {
    CairoSurface surface(cairo_image_surface_create(picture.opaque ? CAIRO_FORMAT_RGB24 : CAIRO_FORMAT_ARGB32,
                                                    picture.width, picture.height));
    if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) return nullptr;
    unsigned char* const bytes = cairo_image_surface_get_data(surface.get());
    const std::ptrdiff_t stride = cairo_image_surface_get_stride(surface.get());
    const std::uint8_t* from = picture.pixels.data();
    for (int y = 0; y < picture.height; ++y) {
        unsigned char* to = bytes + y * stride;
        for (int x = 0; x < picture.width; ++x, from += 4, to += 4) {
            const std::uint32_t alpha = from[3];
            const auto channel = [alpha](std::uint32_t value) { return (value * alpha + 127) / 255; };
            const std::uint32_t pixel =
                alpha << 24U | channel(from[0]) << 16U | channel(from[1]) << 8U | channel(from[2]);
            std::memcpy(to, &pixel, sizeof pixel);
        }
    }
    cairo_surface_mark_dirty(surface.get());
    return surface;
}

/// Lets a PDF take the JPEG file instead of the pixels.
void attach(cairo_surface_t* surface, const EncodedPicture& picture) {
    if (picture.type != "image/jpeg") return;
    auto* const bytes = static_cast<unsigned char*>(std::malloc(picture.bytes.size()));
    if (bytes == nullptr) return;
    std::ranges::copy(picture.bytes, bytes);
    if (cairo_surface_set_mime_data(surface, CAIRO_MIME_TYPE_JPEG, bytes, picture.bytes.size(), std::free,
                                    bytes) != CAIRO_STATUS_SUCCESS)
        std::free(bytes);
}

}  // namespace

/// One painting of a drawing.
struct CairoPainter::Painting {
    CairoPainter& painter;
    cairo_t* context;
    const layout::Layout& layout;
    const DeviceGrid& grid;
    const PaintOptions& options;

    void box(const DeviceBox& at, const Corners& corners) const {
        addRoundedBox(context, at.x, at.y, at.width, at.height, corners);
    }

    void operator()(const FillBox& fill) const {
        const DeviceBox at = grid.snapped(fill.box);
        if (at.isEmpty()) return;
        setColour(context, fill.colour);
        box(at, fill.corners.scaled(grid.scale));
        cairo_fill(context);
    }

    /// A ring of `width` px inside the edge of `at`.
    void ring(const DeviceBox& at, const Corners& corners, int width, const units::Colour& colour) const {
        if (at.isEmpty() || width <= 0) return;
        setColour(context, colour);
        box(at, corners);
        const DeviceBox inner{at.x + width, at.y + width, at.width - 2 * width, at.height - 2 * width};
        if (!inner.isEmpty()) box(inner, corners.fitted(at.width, at.height).inset(width));
        cairo_set_fill_rule(context, CAIRO_FILL_RULE_EVEN_ODD);
        cairo_fill(context);
        cairo_set_fill_rule(context, CAIRO_FILL_RULE_WINDING);
    }

    void operator()(const StrokeBox& stroke) const {
        ring(grid.snapped(stroke.box), stroke.corners.scaled(grid.scale), grid.borderWidth(stroke.width),
             stroke.colour);
    }

    void operator()(const OutlineBox& outline) const {
        const DeviceRing around = ringOf(outline, grid);
        ring(around.box, around.corners, around.width, outline.colour);
    }

    void operator()(const CastShadow& shadow) const {
        const CastingBox casting = castingBox(shadow);
        const DeviceBox from = grid.snapped(casting.box);
        if (from.isEmpty()) return;
        const double blur = std::min(shadow.blur * grid.scale, mostBlur);
        const int margin = static_cast<int>(std::ceil(1.5 * blur));
        const DeviceBox outer{from.x - margin, from.y - margin, from.width + 2 * margin,
                              from.height + 2 * margin};
        const double scale = options.shadowScale;
        const auto masked = [scale](int length) {
            return std::max(1, static_cast<int>(std::lround(length * scale)));
        };
        cairo_surface_t* const mask = painter.mask(masked(outer.width), masked(outer.height),
                                                   casting.radius * grid.scale * scale, blur * scale);
        if (mask == nullptr) return;
        cairo_save(context);
        if (!shadow.covered) {
            cairo_rectangle(context, outer.x, outer.y, outer.width, outer.height);
            box(grid.snapped(shadow.box), Corners::all(shadow.radius * grid.scale));
            cairo_set_fill_rule(context, CAIRO_FILL_RULE_EVEN_ODD);
            cairo_clip(context);
        }
        setColour(context, shadow.colour);
        cairo_translate(context, outer.x, outer.y);
        cairo_scale(context, static_cast<double>(outer.width) / masked(outer.width),
                    static_cast<double>(outer.height) / masked(outer.height));
        cairo_mask_surface(context, mask, 0, 0);
        cairo_restore(context);
    }

    void operator()(const ShowPicture& shown) const {
        const DeviceBox at = grid.snapped(shown.box);
        if (at.isEmpty()) return;
        const auto pixels = [this](int length) {
            return std::max(1, static_cast<int>(std::lround(length * options.pictureScale)));
        };
        const int width = pixels(at.width);
        const int height = pixels(at.height);
        const CutPicture* const picture =
            painter.pictures_.cut(shown.file, width, height, shown.focusX, shown.focusY);
        const CairoSurface surface = picture != nullptr ? surfaceOf(*picture) : nullptr;
        if (!surface) {
            placeholder(at, shown.file);
            return;
        }
        if (options.encodePictures) {
            const EncodedPicture* const encoded =
                painter.pictures_.encoded(shown.file, width, height, shown.focusX, shown.focusY);
            if (encoded != nullptr) attach(surface.get(), *encoded);
        }
        cairo_save(context);
        box(at, shown.corners.scaled(grid.scale));
        if (options.pictureScale == 1) {
            cairo_set_source_surface(context, surface.get(), at.x, at.y);
            cairo_fill(context);
        } else {
            cairo_clip(context);
            cairo_translate(context, at.x, at.y);
            cairo_scale(context, static_cast<double>(at.width) / width,
                        static_cast<double>(at.height) / height);
            cairo_set_source_surface(context, surface.get(), 0, 0);
            // With padding, Cairo would not take the JPEG file.
            if (!options.encodePictures)
                cairo_pattern_set_extend(cairo_get_source(context), CAIRO_EXTEND_PAD);
            cairo_paint(context);
        }
        cairo_restore(context);
    }

    /// A slot without a picture: a diagonal cross and the reason.
    void placeholder(const DeviceBox& at, const std::string& file) const {
        cairo_save(context);
        cairo_rectangle(context, at.x, at.y, at.width, at.height);
        cairo_clip(context);
        setColour(context, placeholderGround);
        cairo_paint(context);
        setColour(context, placeholderLine);
        cairo_set_line_width(context, grid.scale);
        cairo_move_to(context, at.x, at.y);
        cairo_line_to(context, at.x + at.width, at.y + at.height);
        cairo_move_to(context, at.x + at.width, at.y);
        cairo_line_to(context, at.x, at.y + at.height);
        cairo_stroke(context);
        BlockStyle style;
        style.size = placeholderSize * grid.scale;
        style.lineHeight = std::round(style.size * 1.35);
        style.align = TextAlign::Center;
        const TextBlock block(placeholderText(file), style, at.width, painter.store_);
        const double top = std::round(at.y + (at.height - block.height()) / 2);
        const double across = std::ceil(block.width()) + 2 * 8 * grid.scale;
        setColour(context, placeholderGround);
        cairo_rectangle(context, at.x + (at.width - across) / 2, top - 4 * grid.scale, across,
                        block.height() + 2 * 4 * grid.scale);
        cairo_fill(context);
        setColour(context, placeholderInk);
        const DeviceGrid place{1, at.x, static_cast<int>(top)};
        for (const layout::LaidLine& line : block.lines())
            painter.paintText(context, block.part(), line, place, false, false);
        cairo_restore(context);
    }

    void operator()(const ShowText& text) const {
        const layout::LaidPart& part = layout.parts[text.part];
        setColour(context, text.colour);
        for (std::uint32_t i = 0; i < part.lineCount; ++i)
            painter.paintText(context, part, layout.lines[part.firstLine + i], grid, text.italic,
                              text.underlineLinks);
    }
};

void CairoPainter::paint(cairo_t* context, const Drawing& drawing, const layout::Layout& layout,
                         const DeviceGrid& grid, const PaintOptions& options) {
    const Painting painting{*this, context, layout, grid, options};
    for (const Operation& operation : drawing)
        std::visit(painting, operation.what);
}

void CairoPainter::paintText(cairo_t* context, const layout::LaidPart& part, const layout::LaidLine& line,
                             const DeviceGrid& grid, bool italic, bool underlineLinks) {
    const LineInk ink = lineInk(grid, part, line, italic, underlineLinks, outlines_);
    const bool isShown =
        shower_ != nullptr && part.paragraph != nullptr && shower_->show(context, *part.paragraph, ink);
    for (const PlacedGlyph& glyph : isShown ? std::span<const PlacedGlyph>() : std::span(ink.glyphs))
        addGlyph(context, outlines_.of(*glyph.face, glyph.id), ink.size, glyph.x, glyph.y,
                 glyph.leaning ? obliqueSkew : 0);
    for (const UnderlinePiece& piece : ink.underlines)
        cairo_rectangle(context, piece.x, piece.y, piece.width, piece.height);
    cairo_fill(context);
}

const ShadowPatch& CairoPainter::patch(double radius, double blur) {
    const auto [kept, isNew] = patches_.try_emplace({std::lround(radius * 4), std::lround(blur * 4)});
    if (isNew) kept->second = shadowPatch(radius, blur);
    return kept->second;
}

// The patch stretched to a size: corners as they are, the row and the column between them repeated. Boxes of
// one size share it, and so does a PDF.
cairo_surface_t* CairoPainter::mask(int width, int height, double radius, double blur) {
    const auto [kept, isNew] =
        masks_.try_emplace({width, height, std::lround(radius * 4), std::lround(blur * 4)});
    if (!isNew) return kept->second.get();
    const ShadowPatch& piece = patch(radius, blur);
    CairoSurface made(cairo_image_surface_create(CAIRO_FORMAT_A8, width, height));
    if (cairo_surface_status(made.get()) != CAIRO_STATUS_SUCCESS) return nullptr;
    // A box too small for whole corner pieces shows the outer part of them.
    const auto sourceOf = [&](int at, int length) {
        const int corner = std::min(piece.corner, length / 2);
        if (at < corner) return at;
        return at >= length - corner ? piece.side - (length - at) : piece.corner;
    };
    unsigned char* const bytes = cairo_image_surface_get_data(made.get());
    const std::ptrdiff_t stride = cairo_image_surface_get_stride(made.get());
    std::vector<int> columns(static_cast<std::size_t>(width));
    for (int x = 0; x < width; ++x)
        columns[static_cast<std::size_t>(x)] = sourceOf(x, width);
    for (int y = 0; y < height; ++y) {
        const std::uint8_t* const from =
            piece.opacity.data() + static_cast<std::ptrdiff_t>(sourceOf(y, height)) * piece.side;
        unsigned char* const to = bytes + y * stride;
        for (int x = 0; x < width; ++x)
            to[x] = from[columns[static_cast<std::size_t>(x)]];
    }
    cairo_surface_mark_dirty(made.get());
    kept->second = std::move(made);
    return kept->second.get();
}

}  // namespace tenter::draw
