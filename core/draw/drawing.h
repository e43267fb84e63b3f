// A list of drawing operations: what is drawn of a row, without saying how.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "draw/corners.h"
#include "layout/layout.h"
#include "units/colour.h"

namespace tenter::draw {

// All lengths are in CSS px of the page and not rounded. What draws them rounds boxes, borders and baselines
// to its device px (device_grid.h).

/// A box filled with a colour.
struct FillBox {
    layout::Box box;
    Corners corners;
    units::Colour colour;
};

/// A solid border of `width` inside the edge of the box.
struct StrokeBox {
    layout::Box box;
    Corners corners;
    double width = 0;
    units::Colour colour;
};

/// An outline of `width` outside the box, at a distance of `offset`: a focus ring. CSS UI 4 § 3.
struct OutlineBox {
    layout::Box box;
    Corners corners;
    double offset = 0;
    double width = 0;
    units::Colour colour;
};

/// An outer box shadow. The blur is a Gaussian with a standard deviation of half of `blur`. CSS Backgrounds 3
/// § 6.
struct CastShadow {
    layout::Box box;
    double radius = 0;
    double x = 0;
    double y = 0;
    double blur = 0;
    double spread = 0;
    units::Colour colour;
    bool covered = false;  ///< an opaque box is drawn over the place of the box next
    /// The largest distance from the box that the shadow reaches.
    [[nodiscard]] double reach() const;
};

/// A picture that fills its box, cropped to it around its focal point. CSS Images 3 § 5.5, `object-fit:
/// cover`.
struct ShowPicture {
    layout::Box box;
    Corners corners;
    std::string file;  ///< relative to the project file; empty: none was chosen
    double focusX = 0.5;
    double focusY = 0.5;
    std::string alt;
};

/// The text of part `part` of `Layout::parts`, apart from its glyphs.
struct ShowText {
    std::size_t part = 0;
    units::Colour colour;
    bool italic = false;  ///< an upright face is skewed if the family has no italic
    bool underlineLinks = true;
};

/// One operation and the part of the row that it belongs to.
struct Operation {
    std::optional<std::size_t> card;
    std::optional<std::size_t> part;  ///< index into `Layout::parts`
    std::variant<FillBox, StrokeBox, OutlineBox, CastShadow, ShowPicture, ShowText> what;
};

/// Operations in the order in which they are drawn, the lowest first.
using Drawing = std::vector<Operation>;

}  // namespace tenter::draw
