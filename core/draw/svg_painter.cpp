#include "draw/svg_painter.h"

#include <algorithm>
#include <cmath>

#include "draw/device_ring.h"
#include "draw/row_drawing.h"
#include "draw/shadow_patch.h"
#include "draw/text_block.h"
#include "draw/text_line.h"
#include "units/base64.h"
#include "units/number.h"

namespace tenter::draw {

namespace {

constexpr int thousandths = 1000;  // shared glyphs are in thousandths of an em

std::string attribute(const char* name, const std::string& value) {
    std::string out = " ";
    return out.append(name).append("=\"").append(value).append("\"");
}

std::string attribute(const char* name, double value) {
    return attribute(name, units::number(value, 2));
}

/// `fill` with an opacity if the colour has one: not every program reads colours with alpha.
std::string fillOf(const units::Colour& colour) {
    units::Colour opaque = colour;
    opaque.alpha = 255;
    std::string out = attribute("fill", opaque.css());
    if (colour.alpha < 255) out += attribute("fill-opacity", units::number(colour.alpha / 255.0, 3));
    return out;
}

std::string rectangle(const DeviceBox& box, const std::string& more) {
    return "<rect" + attribute("x", box.x) + attribute("y", box.y) + attribute("width", box.width) +
           attribute("height", box.height) + more + "/>\n";
}

std::string boxPath(const DeviceBox& box, const Corners& corners) {
    return draw::boxPath(box.x, box.y, box.width, box.height, corners);
}

std::string path(const std::string& data, const std::string& more) {
    return "<path" + attribute("d", data) + more + "/>\n";
}

/// Text for an element or a double-quoted attribute. XML 1.0 § 2.4.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '"')
            out += "&quot;";
        else if (static_cast<unsigned char>(c) >= 0x20)
            out += c;
    }
    return out;
}

}  // namespace

struct SvgPainter::Painting {
    SvgPainter& painter;
    const layout::Layout& layout;
    const DeviceGrid& grid;
    std::string& out;

    void operator()(const FillBox& fill) const {
        const DeviceBox at = grid.snapped(fill.box);
        if (at.isEmpty()) return;
        const Corners corners = fill.corners.scaled(grid.scale);
        out += corners.square() ? rectangle(at, fillOf(fill.colour))
                                : path(boxPath(at, corners), fillOf(fill.colour));
    }

    void ring(const DeviceBox& at, const Corners& corners, int width, const units::Colour& colour) const {
        if (at.isEmpty() || width <= 0) return;
        std::string data = boxPath(at, corners);
        const DeviceBox inner{at.x + width, at.y + width, at.width - 2 * width, at.height - 2 * width};
        if (!inner.isEmpty()) data += boxPath(inner, corners.fitted(at.width, at.height).inset(width));
        out += path(data, attribute("fill-rule", "evenodd") + fillOf(colour));
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
        const DeviceBox at = grid.snapped(casting.box);
        if (at.isEmpty()) return;
        const double blur = std::min(shadow.blur * grid.scale, mostBlur);
        std::string more = fillOf(shadow.colour);
        if (blur > 0) more += attribute("filter", "url(#" + painter.blurId(blur / 2, at) + ")");
        const std::string cast = path(boxPath(at, Corners::all(casting.radius * grid.scale)), more);
        if (shadow.covered) {
            out += cast;
            return;
        }
        const int margin = static_cast<int>(std::ceil(1.5 * blur)) + 1;
        const std::string around =
            boxPath({at.x - margin, at.y - margin, at.width + 2 * margin, at.height + 2 * margin}, {}) +
            boxPath(grid.snapped(shadow.box), Corners::all(shadow.radius * grid.scale));
        out +=
            "<g" + attribute("clip-path", "url(#" + painter.clipId(around) + ")") + ">\n" + cast + "</g>\n";
    }

    void operator()(const ShowPicture& shown) const {
        const DeviceBox at = grid.snapped(shown.box);
        if (at.isEmpty()) return;
        const std::string id = painter.pictureId(shown, at.width, at.height);
        if (id.empty()) {
            placeholder(at, shown.file);
            return;
        }
        const Corners corners = shown.corners.scaled(grid.scale);
        std::string use = "<use";
        use += attribute("href", "#" + id) + attribute("x", at.x) + attribute("y", at.y);
        if (!shown.alt.empty()) use += attribute("role", "img") + attribute("aria-label", escaped(shown.alt));
        use += "/>\n";
        out += corners.square()
                   ? use
                   : "<g" + attribute("clip-path", "url(#" + painter.clipId(boxPath(at, corners)) + ")") +
                         ">\n" + use + "</g>\n";
    }

    void placeholder(const DeviceBox& at, const std::string& file) const {
        out += rectangle(at, fillOf(placeholderGround));
        const std::string right = units::number(at.x + at.width, 2);
        const std::string bottom = units::number(at.y + at.height, 2);
        const std::string left = units::number(at.x, 2);
        const std::string top = units::number(at.y, 2);
        std::string cross = "M";
        cross.append(left).append(" ").append(top).append("L").append(right).append(" ").append(bottom);
        cross.append("M").append(right).append(" ").append(top).append("L").append(left);
        cross.append(" ").append(bottom);
        out += path(cross, attribute("stroke", placeholderLine.css()) +
                               attribute("stroke-width", grid.scale) + attribute("fill", "none"));
        BlockStyle style;
        style.size = placeholderSize * grid.scale;
        style.lineHeight = std::round(style.size * 1.35);
        style.align = TextAlign::Center;
        const TextBlock block(placeholderText(file), style, at.width, painter.store_);
        const int start = static_cast<int>(std::lround(at.y + (at.height - block.height()) / 2));
        const int across = static_cast<int>(std::ceil(block.width() + 16 * grid.scale));
        out += rectangle(
            {at.x + (at.width - across) / 2, start, across, static_cast<int>(std::ceil(block.height()))},
            fillOf(placeholderGround));
        const DeviceGrid place{1, at.x, start};
        for (const layout::LaidLine& line : block.lines())
            text(block.part(), line, place, placeholderInk, false, false);
    }

    void operator()(const ShowText& shown) const {
        const layout::LaidPart& part = layout.parts[shown.part];
        for (std::uint32_t i = 0; i < part.lineCount; ++i)
            text(part, layout.lines[part.firstLine + i], grid, shown.colour, shown.italic,
                 shown.underlineLinks);
    }

    void text(const layout::LaidPart& part, const layout::LaidLine& line, const DeviceGrid& at,
              const units::Colour& colour, bool italic, bool underlineLinks) const {
        const LineInk ink = lineInk(at, part, line, italic, underlineLinks, painter.outlines_);
        std::string data;
        if (painter.text_ == SvgText::Paths) {
            for (const PlacedGlyph& glyph : ink.glyphs)
                data += glyphPath(painter.outlines_.of(*glyph.face, glyph.id), ink.size, glyph.x, glyph.y,
                                  glyph.leaning ? obliqueSkew : 0, 2);
        } else {
            shared(ink, colour);
        }
        for (const UnderlinePiece& piece : ink.underlines)
            data += draw::boxPath(piece.x, piece.y, piece.width, piece.height, {});
        if (!data.empty()) out += path(data, fillOf(colour));
    }

    void shared(const LineInk& ink, const units::Colour& colour) const {
        const double baseline = ink.glyphs.empty() ? 0 : ink.glyphs.front().y;
        const double factor = ink.size / thousandths;
        std::string uses;
        for (const PlacedGlyph& glyph : ink.glyphs) {
            const std::string id = painter.glyphId(*glyph.face, glyph.id);
            if (id.empty()) continue;
            uses += "<use";
            uses += attribute("href", "#" + id) + attribute("x", units::number(glyph.x / factor, 0));
            if (glyph.y != baseline) uses += attribute("y", units::number((glyph.y - baseline) / factor, 0));
            if (glyph.leaning) uses += attribute("transform", skew());
            uses += "/>";
        }
        if (uses.empty()) return;
        out += "<g" + fillOf(colour) +
               attribute("transform", "translate(0 " + units::number(baseline, 2) + ")scale(" +
                                          units::number(factor, 6) + ")") +
               ">" + uses + "</g>\n";
    }

    // Skews around the origin of a glyph on the baseline.
    static std::string skew() { return "matrix(1 0 " + units::number(-obliqueSkew, 3) + " 1 0 0)"; }
};

std::string SvgPainter::glyphId(const text::Face& face, std::uint32_t glyph) {
    const auto [kept, isNew] = glyphIds_.try_emplace({&face, glyph});
    if (!isNew) return kept->second;
    const GlyphOutline& outline = outlines_.of(face, glyph);
    if (outline.verbs.empty()) return {};
    kept->second = newId('g');
    definitions_ += "<path" + attribute("id", kept->second) +
                    attribute("d", glyphPath(outline, thousandths, 0, 0, 0, 0)) + "/>\n";
    return kept->second;
}

std::string SvgPainter::blurId(double deviation, const DeviceBox& box) {
    const double margin = std::ceil(3 * deviation);
    const std::string region = attribute("x", box.x - margin) + attribute("y", box.y - margin) +
                               attribute("width", box.width + 2 * margin) +
                               attribute("height", box.height + 2 * margin);
    const std::string value = units::number(deviation, 2);
    std::string& id = idsOf_["blur " + value + region];
    if (!id.empty()) return id;
    id = newId('b');
    definitions_ += "<filter" + attribute("id", id) + attribute("filterUnits", "userSpaceOnUse") + region +
                    attribute("color-interpolation-filters", "sRGB") + "><feGaussianBlur" +
                    attribute("stdDeviation", value) + "/></filter>\n";
    return id;
}

std::string SvgPainter::clipId(const std::string& data) {
    std::string& id = idsOf_["clip " + data];
    if (!id.empty()) return id;
    id = newId('c');
    definitions_ += "<clipPath" + attribute("id", id) + "><path" + attribute("clip-rule", "evenodd") +
                    attribute("d", data) + "/></clipPath>\n";
    return id;
}

std::string SvgPainter::pictureId(const ShowPicture& shown, int width, int height) {
    const auto pixels = [this](int length) {
        return std::max(1, static_cast<int>(std::lround(length * pictureScale_)));
    };
    const EncodedPicture* const picture =
        pictures_.encoded(shown.file, pixels(width), pixels(height), shown.focusX, shown.focusY);
    if (picture == nullptr) return {};
    std::string key = "picture " + shown.file;
    for (const double number :
         {static_cast<double>(width), static_cast<double>(height), shown.focusX, shown.focusY})
        key += " " + units::number(number);
    std::string& id = idsOf_[key];
    if (!id.empty()) return id;
    id = newId('p');
    definitions_ += "<image" + attribute("id", id) + attribute("width", width) + attribute("height", height) +
                    attribute("preserveAspectRatio", "none") +
                    attribute("href", "data:" + picture->type + ";base64," + units::base64(picture->bytes)) +
                    "/>\n";
    return id;
}

std::string SvgPainter::paint(const Drawing& drawing, const layout::Layout& layout, const DeviceGrid& grid) {
    std::string out;
    std::optional<std::size_t> card;
    const Painting painting{*this, layout, grid, out};
    for (const Operation& operation : drawing) {
        if (operation.card != card) {
            if (card) out += "</g>\n";
            if (operation.card) out += "<g>\n";
            card = operation.card;
        }
        std::visit(painting, operation.what);
    }
    if (card) out += "</g>\n";
    return out;
}

}  // namespace tenter::draw
