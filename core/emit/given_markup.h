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

}  // namespace tenter::emit
