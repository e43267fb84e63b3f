#include "css/places.h"

#include <algorithm>

#include "css/ascii.h"

namespace tenter::css {

Lines::Lines(std::string_view source) : source_(source), starts_{0} {
    for (std::size_t i = 0; i < source.size(); ++i) {
        const bool firstOfTwo = source[i] == '\r' && i + 1 < source.size() && source[i + 1] == '\n';
        if (isNewline(source[i]) && !firstOfTwo) starts_.push_back(i + 1);
    }
}

std::size_t Lines::lineOf(std::size_t offset) const {
    return static_cast<std::size_t>(std::ranges::upper_bound(starts_, offset) - starts_.begin());
}

Place Lines::placeOf(std::size_t offset) const {
    const std::size_t line = lineOf(offset);
    const std::size_t end = std::min(offset, source_.size());
    Place place{line, 1};
    for (std::size_t i = starts_[line - 1]; i < end; ++place.column)
        i += std::max<std::size_t>(characterLength(source_, i), 1);
    return place;
}

}  // namespace tenter::css
