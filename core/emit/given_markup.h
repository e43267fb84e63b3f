// The row's markup where a page prints it already.
#pragma once

#include <string>

#include "emit/markup_writer.h"
#include "markup/given.h"

namespace tenter::emit {

/// The given row with the class of `variant`, and with the project's copy where that has been edited since
/// the page's row was taken in. Told in `problems`: cards or parts that the markup has not.
std::string writeGivenMarkup(const project::Project& project, std::size_t variant,
                             const markup::GivenRow& row, const MarkupOptions& options,
                             project::Problems& problems);

/// The tree that `row` was found in, with the class of `variant` and each part marked as in an exported page;
/// its words and pictures stay. Told in `problems`: where they are others than the project's.
markup::Tree markedPage(const project::Project& project, std::size_t variant, const markup::GivenRow& row,
                        project::Problems& problems);

}  // namespace tenter::emit
