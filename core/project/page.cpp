#include "project/page.h"

#include <algorithm>

namespace tenter::project {

namespace {

template <class T>
void set(T& value, const std::optional<T>& change) {
    if (change) value = *change;
}

void set(std::optional<Length>& value, const std::optional<Length>& change) {
    if (change) value = change;
}

}  // namespace

std::size_t Page::rangeAt(double w) const {
    const auto found =
        std::ranges::find_if(ranges, [&](const PageRange& range) { return !range.upTo || w <= *range.upTo; });
    return static_cast<std::size_t>(found - ranges.begin());
}

PageSettings Page::settings(std::size_t range) const {
    PageSettings there{rootSize, container};
    if (range >= ranges.size()) return there;
    const PageRange& change = ranges[range];
    set(there.rootSize, change.rootSize);
    set(there.container.width, change.container.width);
    set(there.container.maxWidth, change.container.maxWidth);
    set(there.container.place, change.container.place);
    set(there.container.addedWidth, change.container.addedWidth);
    set(there.container.shift, change.container.shift);
    set(there.container.background, change.container.background);
    const Sides& padding = change.container.padding;
    for (const auto side : {&Sides::top, &Sides::right, &Sides::bottom, &Sides::left})
        set(there.container.padding.*side, padding.*side);
    return there;
}

}  // namespace tenter::project
