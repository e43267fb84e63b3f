// The markup of an imported row.
#pragma once

#include <string>

#include "emit/markup_writer.h"
#include "markup/given.h"

namespace tenter::emit {

/// The given row with the class of `variant`, and with the project's text where it has been edited since the
/// import. Cards or parts that the markup does not have are problems.
std::string writeGivenMarkup(const project::Project& project, std::size_t variant,
                             const markup::GivenRow& row, const MarkupOptions& options,
                             project::Problems& problems);

/// The tree of `row` with the class of `variant` and with each part marked as in an exported page. Its text
/// and pictures stay; differences from the project's text are problems.
markup::Tree markedPage(const project::Project& project, std::size_t variant, const markup::GivenRow& row,
                        project::Problems& problems);

}  // namespace tenter::emit
