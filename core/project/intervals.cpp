#include "project/intervals.h"

#include <algorithm>

namespace tenter::project {

std::vector<Interval> intervals(const Page& page, const Variant& variant) {
    std::vector<double> ends;
    for (const Band& band : variant.bands)
        if (band.upTo && &band != &variant.bands.back()) ends.push_back(*band.upTo);
    for (const PageRange& range : page.ranges)
        if (range.upTo) ends.push_back(*range.upTo);
    std::ranges::sort(ends);
    ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
    std::vector<Interval> all;
    all.reserve(ends.size() + 1);
    for (const double end : ends)
        all.push_back({end, bandAt(variant, end), page.rangeAt(end)});
    const std::size_t last = variant.bands.empty() ? 0 : variant.bands.size() - 1;
    const bool isOpen = !page.ranges.empty() && !page.ranges.back().upTo;
    all.push_back({std::nullopt, last, page.ranges.size() - (isOpen ? 1 : 0)});
    return all;
}

}  // namespace tenter::project
