// Words that are wider than their boxes.
#pragma once

#include <string>
#include <vector>

#include "checks/subject.h"

namespace tenter::checks {

/// A range of widths at which a word of a part is wider than its box.
struct WordOverflow {
    sweep::Interval widths;
    double missing = 0;  ///< the most by which it is wider there, CSS px
    double at = 0;       ///< width at which it is, CSS px
};

/// Every such range of the part at `place` from `least` to `most` (CSS px), rising.
std::vector<WordOverflow> wordOverflows(const layout::LinearSizes& sizes, project::PartRef place,
                                        double least, double most);

/// True if such a word breaks, false if it overflows, in the band of `width`.
bool breaksWords(const layout::PreparedRow& row, project::PartRef place, double width);

/// The widest word of a part at `width`.
std::string widestWord(const layout::PreparedRow& row, project::PartRef place, double width);

}  // namespace tenter::checks
