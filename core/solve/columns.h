// The same row in another number of columns.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// How a row of `cards` cards steps down from `columns` columns to one, in the order of rising widths: about
/// by half each time, without holes in its last line where some step has none (4, 2, 1; of three cards 3, 1).
std::vector<int> columnSteps(int columns, std::size_t cards);

/// A class for the variant of so many columns, after that of another: `walks-trio` makes `walks-quartet`.
std::string classFor(const std::string& className, int columns);

/// A variant of `columns` columns, made after variant `from`: its settings band by band, those of the band
/// with as many columns or nearly so. A band of more columns begins where its cards are as wide as `from` has
/// them at their narrowest in several columns. Type has the size it has in `from` where a column is as wide;
/// `solve` fits it.
project::Variant inColumns(const project::Project& project, std::size_t from, int columns,
                           const std::string& className, text::ParagraphStore& store);

}  // namespace tenter::solve
