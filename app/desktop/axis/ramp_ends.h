// The two ends of each ramp: their position on the plot and the layer of the cascade that sets the ramp.
#pragma once

#include "project/cascade.h"

#include <string>
#include <vector>

#include "axis/curves.h"

namespace tenter::desktop::axis {

struct RampEnd {
    std::string role;
    bool upper = false;  ///< true for the end at the larger width
    project::CascadeLayer layer = project::CascadeLayer::Style;
    std::size_t band =
        0;  ///< the band that sets the ramp, for `CascadeLayer::Band`; else the first band with the ramp
    std::size_t firstBand = 0, lastBand = 0;  ///< first and last band that use the ramp
    bool followsCard = false;  ///< the ramp depends on the card's width instead of the viewport's
    double width = 0;          ///< viewport width of the end, CSS px
    double size = 0;           ///< font size as shown, CSS px
    units::RampPoint
        other;         ///< the other end of the ramp; for a constant size, at the other end of its bands
    double scale = 1;  ///< size as shown divided by size as set, from the reader's text size
    /// A name that is unique among the ends of a variant.
    [[nodiscard]] std::string name() const;
};

/// The ends of the ramps of every role in a variant. A ramp that follows the card's width has ends in the
/// band of `width` (CSS px) only.
std::vector<RampEnd> rampEnds(const project::Project& project, std::size_t variant,
                              const layout::PreparedRow& row, double width);

/// Moves an end to viewport width `width` and font size `size` as shown (CSS px), in the layer that sets the
/// ramp. `cardWidth` is the width of a card's content at `width`, CSS px; used only if the ramp follows the
/// card.
void moveEnd(project::Project& project, std::size_t variant, const RampEnd& end, double cardWidth,
             double width, double size);

}  // namespace tenter::desktop::axis
