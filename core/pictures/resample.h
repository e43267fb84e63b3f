// Makes a smaller picture in linear light.
#pragma once

#include "pictures/crop.h"
#include "pictures/source.h"

namespace tenter::pictures {

/// Makes pictures of several sizes from one part of a source. What they share is computed once.
class Resampler {
public:
    /// `source` must outlive the resampler.
    Resampler(const Source& source, const Crop& crop);

    /// The part at `size`, in memory, 8 bits a component, sRGB. Resampled with a Lanczos filter of three
    /// lobes on light, not on sRGB's components, so that fine patterns keep their brightness; colours are
    /// weighted by their opacity. `size` must be at most that of the part. Null if memory runs out.
    [[nodiscard]] ImagePtr resized(const PixelSize& size);

private:
    [[nodiscard]] const ImagePtr& lightFor(double scale);

    bool hasAlpha_;
    Crop crop_;
    ImagePtr light_;  // of the part: 16 bits a component, and opacity
    ImagePtr half_;   // the same at half the size; null until it is needed
};

}  // namespace tenter::pictures
