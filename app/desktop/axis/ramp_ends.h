// The ends of ramps: where they stand on the plot, and which layer of the cascade they belong to.
#pragma once

#include <string>
#include <vector>

#include "axis/curves.h"

namespace tenter::desktop::axis {

enum class Layer { Style, Variant, Band };

struct RampEnd {
    std::string role;
    bool upper = false;  ///< the end at the larger width
    Layer layer = Layer::Style;
    std::size_t band = 0;  ///< whose ramp it is, for `Layer::Band`; else the first it holds in
    std::size_t firstBand = 0, lastBand = 0;  ///< the bands it holds in lie between these
    bool followsCard = false;
    double width = 0;  ///< where it stands: viewport, CSS px
    double size = 0;   ///< font size as shown, CSS px
    units::RampPoint
        other;         ///< the ramp's other end, as it is set or, if it is flat without widths, would be
    double scale = 1;  ///< size as shown to size as set: the reader's text size
    /// Tells it apart from every other end.
    [[nodiscard]] std::string name() const;
};

/// Ends of every role's ramps in a variant. Of ramps that follow the card, those in the band of `width`.
std::vector<RampEnd> rampEnds(const project::Project& project, std::size_t variant,
                              const layout::PreparedRow& row, double width);

/// Moves an end to viewport width `width` (CSS px) and size `size` as shown, in the layer that sets the ramp.
void moveEnd(project::Project& project, std::size_t variant, const RampEnd& end, double cardWidth,
             double width, double size);

}  // namespace tenter::desktop::axis
