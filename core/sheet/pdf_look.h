// Type and colours of the PDF sheet. Lengths in points.
#pragma once

#include "draw/text_block.h"

namespace tenter::sheet::look {

inline constexpr units::Colour text{0x1b, 0x24, 0x27};
inline constexpr units::Colour quiet{0x56, 0x62, 0x67};
inline constexpr units::Colour line{0xb9, 0xc2, 0xc5};
inline constexpr units::Colour faint{0xe0, 0xe5, 0xe6};
inline constexpr units::Colour tint{0xf2, 0xf5, 0xf5};
inline constexpr units::Colour accent{0x0a, 0x5c, 0x6c};

inline constexpr double bodyHeight = 12.5;
inline constexpr double noteHeight = 10.5;
inline constexpr double plotSize = 6.8;
inline constexpr double mostMeasure = 400;  // about 85 characters of body text

/// Body text.
draw::BlockStyle body(const units::Colour& colour, double weight = 400);
/// Captions and notes.
draw::BlockStyle note(const units::Colour& colour = quiet, double weight = 400);
/// The cells of tables.
draw::BlockStyle cell(double size, double weight = 400);
draw::BlockStyle title();
/// A heading of level 2 or 3.
draw::BlockStyle heading(int level);

}  // namespace tenter::sheet::look
