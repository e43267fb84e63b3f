// The row as drawing operations, as a browser would draw it with the emitted CSS.
#pragma once

#include <optional>

#include "draw/drawing.h"
#include "draw/row.h"

namespace tenter::draw {

/// The parts with the pointer and with the keyboard focus, as indices into `Layout::parts`.
struct Attention {
    std::optional<std::size_t> hovered;
    std::optional<std::size_t> focused;
    friend bool operator==(const Attention&, const Attention&) = default;
};

/// Overwrites `out` with the page at the width of the layout: the page's background, container, row, cards
/// with their parts, and a classic scrollbar if the project has one. `height` is the height of the page's
/// background, CSS px; 0: that of the page.
void drawRow(const LaidOutRow& row, const Attention& attention, double height, Drawing& out);
Drawing drawRow(const LaidOutRow& row);

/// The words in place of a picture that cannot be shown: no file was chosen, or it was not found.
std::string placeholderText(const std::string& file);
/// Colours of that place, and the font size of the words in CSS px.
inline constexpr units::Colour placeholderGround{0xe6, 0xe6, 0xe4};
inline constexpr units::Colour placeholderLine{0x9a, 0x9a, 0x98};
inline constexpr units::Colour placeholderInk{0x33, 0x33, 0x33};
inline constexpr double placeholderSize = 13;

}  // namespace tenter::draw
