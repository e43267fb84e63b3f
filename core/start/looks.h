// Looks: designs of our own for a new row.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"

namespace tenter::start {

/// A design: a style for all columns. Its sizes grow with the viewport width of a row with one column.
struct Look {
    std::string name;         ///< for the command line: `quay`
    std::string title;        ///< `Quay`
    std::string description;  ///< in one short sentence
    project::Settings style;
    double mostCardWidth = 400;  ///< of one card in the widest row, CSS px; sets the maximum width of the row
};

/// All looks; the first is the default.
const std::vector<Look>& looks();
/// The look with that name; null if there is none.
const Look* lookNamed(std::string_view name);

}  // namespace tenter::start
