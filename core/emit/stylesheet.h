// The stylesheet that is handed over.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

struct StylesheetOptions {
    /// Variants by index; several share what they have in common.
    std::vector<std::size_t> variants{0};
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px, for font sizes
};

/// The stylesheet, safe to paste into a CMS's box: class and type selectors and `max-width` queries, no `<`,
/// `>` or `&`.
std::string stylesheet(const project::Project& project, const StylesheetOptions& options);

/// The same for the row that a page prints already, as the project's given markup has it: its selectors, and
/// the resets its theme makes necessary. Empty, with problems, if the project has no such row.
std::optional<std::string> givenStylesheet(const project::Project& project, const StylesheetOptions& options,
                                           project::Problems& problems);

/// The size of `role` in band `band` alone, as a declaration's value: `clamp(…)` or a length.
std::string fontSize(const project::Project& project, std::size_t variant, std::size_t band,
                     const std::string& role);

}  // namespace tenter::emit
