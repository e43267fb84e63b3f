// The stylesheet of the row.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// Options of printing a stylesheet.
struct StylesheetOptions {
    /// Indices of the variants; several variants share common rules.
    std::vector<std::size_t> variants{0};
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px, for font sizes
};

/// The stylesheet for Tenter's own markup. Safe to paste into a CMS: class and type selectors and `max-width`
/// queries, no `<`, `>` or `&`.
std::string stylesheet(const project::Project& project, const StylesheetOptions& options);

/// The same for the project's given row: with its selectors, and the resets that its theme makes necessary.
/// Empty, with problems, if the project has no given row.
std::optional<std::string> givenStylesheet(const project::Project& project, const StylesheetOptions& options,
                                           project::Problems& problems);

/// The font size of `role` around viewport width `width` (CSS px) as a CSS value: `clamp(…)` or a length.
std::string fontSize(const project::Project& project, std::size_t variant, double width,
                     const std::string& role);

}  // namespace tenter::emit
