// Words wider than the room there is for them.
#pragma once

#include <string>
#include <vector>

#include "checks/subject.h"

namespace tenter::checks {

/// A stretch of widths at which some word of a part has less room than it needs.
struct Wide {
    sweep::Interval widths;
    double missing = 0;  ///< CSS px, the most there
    double at = 0;       ///< where it is the most
};

/// Every such stretch of part `part` of card `card` from `least` to `most` (CSS px).
std::vector<Wide> wideWords(const layout::PreparedRow& row, std::size_t card, std::size_t part, double least,
                            double most);

/// True if such a word is cut rather than sticks out, in the band that holds `width`.
bool cutsWords(const layout::PreparedRow& row, std::size_t card, std::size_t part, double width);

/// The widest word of a part at `width`.
std::string widestWord(const layout::PreparedRow& row, std::size_t card, std::size_t part, double width);

}  // namespace tenter::checks
