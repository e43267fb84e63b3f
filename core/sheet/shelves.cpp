#include "sheet/shelves.h"
#include "wording/say.h"

#include <algorithm>

namespace tenter::sheet {

namespace {

constexpr double leastShrink = 0.75;

}  // namespace

double Shelf::height() const {
    double tallest = 0;
    for (const ShelfItem& item : items)
        tallest = std::max(tallest, item.height);
    return tallest;
}

std::string whyOf(const Thumbnail& thumbnail, const ShelfItem& item) {
    return item.isCut ? wording::say("%1; the lower part is not shown", {thumbnail.why}) : thumbnail.why;
}

Shelves shelvesOf(const Thumbnails& thumbnails, double width, double mostHeight, double leastPlace,
                  double gap) {
    double widest = 1;
    double tallest = 1;
    for (const Thumbnail& thumbnail : thumbnails.list) {
        widest = std::max(widest, thumbnail.layout.width);
        tallest = std::max(tallest, thumbnail.layout.pageHeight);
    }
    Shelves out;
    // Rather somewhat smaller than cut.
    const double largest = widestShare * width / widest;
    out.scale = std::min(largest, std::max(mostHeight / tallest, leastShrink * largest));
    double used = width + 1;
    for (std::size_t i = 0; i < thumbnails.list.size(); ++i) {
        const layout::Layout& layout = thumbnails.list[i].layout;
        const double tall = layout.pageHeight * out.scale;
        ShelfItem item{i, layout.width * out.scale, std::min(tall, mostHeight),
                       tall > mostHeight * (1 + 1e-9), 0};
        item.place = std::max(item.width, leastPlace);
        if (used + gap + item.place > width + 0.01) {
            out.shelves.emplace_back();
            used = -gap;
        }
        used += gap + item.place;
        out.shelves.back().items.push_back(item);
    }
    return out;
}

}  // namespace tenter::sheet
