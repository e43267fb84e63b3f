// Writes drawing operations as SVG elements.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "draw/drawing.h"
#include "draw/line_ink.h"
#include "draw/picture_source.h"
#include "text/paragraph_store.h"

namespace tenter::draw {

/// How text becomes outlines.
enum class SvgText {
    Paths,  ///< one path for each line: every program reads it
    Shared  ///< each glyph once in the definitions: much smaller for many rows on one page
};

/// Writes rows as SVG elements. Elements that several rows share are in `definitions()`.
class SvgPainter {
public:
    /// `prefix` starts the id of every definition, so that several drawings can be in one document.
    /// `pictureScale`: px of a picture per unit.
    SvgPainter(PictureSource& pictures, text::ParagraphStore& store, SvgText text, double pictureScale,
               std::string prefix = "")
        : pictures_(pictures),
          store_(store),
          text_(text),
          pictureScale_(pictureScale),
          prefix_(std::move(prefix)) {}

    /// The elements of a row; one unit is one px of `grid`.
    std::string paint(const Drawing& drawing, const layout::Layout& layout, const DeviceGrid& grid);
    /// Sets the px of a picture per unit for what is painted next.
    void setPictureScale(double scale) { pictureScale_ = scale; }
    /// The elements that `paint` has referred to so far, for `<defs>`; empty if there are none.
    [[nodiscard]] const std::string& definitions() const { return definitions_; }

private:
    struct Painting;
    std::string glyphId(const text::Face& face, std::uint32_t glyph);
    /// A blur of what is drawn in `box`.
    std::string blurId(double deviation, const DeviceBox& box);
    std::string clipId(const std::string& path);
    /// The id of a picture definition; empty if the picture cannot be read.
    std::string pictureId(const ShowPicture& shown, int width, int height);
    std::string newId(char kind) { return prefix_ + kind + std::to_string(++ids_); }
    PictureSource& pictures_;
    text::ParagraphStore& store_;
    SvgText text_;
    double pictureScale_;
    std::string prefix_;
    GlyphOutlines outlines_;
    std::string definitions_;
    std::map<std::pair<const text::Face*, std::uint32_t>, std::string> glyphIds_;
    std::map<std::string, std::string> idsOf_;  // by what is defined
    int ids_ = 0;
};

/// Path data of a box with rounded corners.
std::string boxPath(double x, double y, double width, double height, const Corners& corners);
/// Path data of a glyph at `size` units per em, its origin at (x, y), with `decimals` decimals.
std::string glyphPath(const GlyphOutline& outline, double size, double x, double y, double skew,
                      int decimals);

}  // namespace tenter::draw
