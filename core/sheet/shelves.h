// Arranges thumbnails in lines, all to one scale.
#pragma once

#include <string>
#include <vector>

#include "sheet/content.h"

namespace tenter::sheet {

/// Where a thumbnail is cut, because a page is only so tall.
struct ShelfItem {
    std::size_t index = 0;  ///< in `Thumbnails::list`
    double width = 0;       ///< of the picture
    double height = 0;      ///< of what is shown of it
    bool isCut = false;     ///< the lower part is not shown
    double place = 0;       ///< width of its place: the picture or its caption, whichever is wider
};

/// A line of thumbnails with their tops aligned.
struct Shelf {
    std::vector<ShelfItem> items;
    [[nodiscard]] double height() const;
};

/// The share of the width that the widest thumbnail takes, so that the others stand beside each other.
inline constexpr double widestShare = 0.66;

/// The scale at which the widest thumbnail has `widestShare` of `width`, or up to a quarter less if then none
/// must be cut, and the shelves. A picture is at most `mostHeight` tall. Captions are at least `leastPlace`
/// wide; `gap` is between two places.
struct Shelves {
    double scale = 1;
    std::vector<Shelf> shelves;
};
Shelves shelvesOf(const Thumbnails& thumbnails, double width, double mostHeight, double leastPlace,
                  double gap);

/// Why the thumbnail is shown, and if it is cut, that its lower part is not shown.
std::string whyOf(const Thumbnail& thumbnail, const ShelfItem& item);

}  // namespace tenter::sheet
