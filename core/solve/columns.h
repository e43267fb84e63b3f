// The same row with another number of columns.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// The column counts of the bands of a row of `cards` cards, from one column to `columns`. Each step is about
/// half of the next, and leaves no empty cells in the last line if there is such a step (4 columns: 1, 2, 4;
/// 3 columns of three cards: 1, 3).
std::vector<int> columnSteps(int columns, std::size_t cards);

/// A class name for a variant with that many columns, derived from another variant's: `walks-trio` becomes
/// `walks-quartet` for four.
std::string classFor(const std::string& className, int columns);

/// A variant with `columns` columns, derived from variant `from`. Each band takes its settings from the band
/// of `from` with the nearest column count. A band with more columns starts where its cards are as wide as
/// the narrowest cards in several columns of `from`. Type has the size that it has in `from` at the same
/// column width; `solve` fits it to the wishes.
project::Variant withColumns(const project::Project& project, std::size_t from, int columns,
                             const std::string& className, text::ParagraphStore& store);

}  // namespace tenter::solve
