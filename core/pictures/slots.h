// Slots of pictures over all viewport widths, and the sizes of files that fill them.
#pragma once

#include <optional>
#include <vector>

#include "sweep/curves.h"

namespace tenter::pictures {

/// Size of a file in pixels.
struct PixelSize {
    int width = 0;
    int height = 0;
    friend bool operator==(const PixelSize&, const PixelSize&) = default;
};

/// The smallest whole number of pixels that is at least `px`; less than 0.01 px too few is rounding.
int wholePixels(double px);

/// Aspect ratios that differ by less than this share are one: at 4000 px it is less than half a pixel.
inline constexpr double sameRatio = 1e-4;

/// A width of a curve with its value, both CSS px.
using SlotPoint = sweep::Vertex;

/// The slot of one picture: the box that the picture fills in the layout.
///
/// A slot can have several aspect ratios (another setting in a band; a picture beside the text). The file is
/// cut only as far as no slot shows what is cut off: to the ratio of the file itself, limited to the ratios
/// of the slots. The rest stays to `object-position`, which places the cut file exactly as it would place the
/// whole file.
struct Slot {
    project::PartRef place;
    sweep::Curve width;     ///< CSS px
    sweep::Curve height;    ///< CSS px
    sweep::Curve drawn;     ///< width at which a cut file is drawn: max(width, height × cutRatio), CSS px
    double cutRatio = 0;    ///< width over height of a cut file; 0: the slot has no area
    double leastRatio = 0;  ///< smallest width over height of the slot
    double mostRatio = 0;   ///< largest width over height of the slot
    PixelSize file;         ///< of the picture's present file; 0 × 0: not known
    SlotPoint largest;      ///< the largest value of `drawn`, at the smallest viewport width that has it

    /// Width over height of the present file; empty: not known.
    [[nodiscard]] std::optional<double> fileRatio() const;
    /// True if the slot has the same aspect ratio at all widths.
    [[nodiscard]] bool hasOneRatio() const;
    /// Width and height of the slot at `largest`, CSS px.
    [[nodiscard]] double largestWidth() const { return sweep::valueAt(width, largest.width); }
    [[nodiscard]] double largestHeight() const { return sweep::valueAt(height, largest.width); }
};

/// The file sizes that fill a slot at every viewport width, for a screen with `pixelRatio` device pixels per
/// CSS px.
struct Need {
    double pixelRatio = 1;
    PixelSize cut;    ///< of a file that is cut to `Slot::cutRatio`
    PixelSize uncut;  ///< of a file with the present file's aspect ratio; 0 × 0: not known
};

/// The pixel ratios that tables of needs show. Device pixel ratios of phones are 2 or 3, of desktop screens 1
/// to 2. Common practice, no source.
inline constexpr double shownRatios[] = {1, 2, 3};

/// The slots of all pictures of `row`, by card, then part. `curves` are those of the row (sweep/sweep.h),
/// `project` is the project that the row was prepared from; its files of unknown size count as having the
/// ratio of their slot.
std::vector<Slot> slotsOf(const project::Project& project, const layout::PreparedRow& row,
                          const sweep::Curves& curves);

/// The need of `slot` at `pixelRatio`: max(slot width, slot height × file ratio) × pixel ratio, rounded up to
/// whole pixels. CSS Images 3 § 5.5 (`object-fit: cover`).
Need needOf(const Slot& slot, double pixelRatio);

/// The needs at `shownRatios`.
std::vector<Need> needsOf(const Slot& slot);

/// Pixels that the present file, uncut, has per CSS px where its slot is largest; empty: size not known.
std::optional<double> pixelsPerCssPx(const Slot& slot);

/// What to upload if the site's software makes its own candidates from one file: a file of `size`, already
/// cut. If `isTooSmall`, the present file has fewer pixels, and no cutting can change that.
struct Upload {
    PixelSize size;
    bool isTooSmall = false;
};
Upload uploadOf(const Slot& slot, double pixelRatio = 2);

}  // namespace tenter::pictures
