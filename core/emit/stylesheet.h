// The stylesheet of the row.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// How a stylesheet is written. Every form lays the row out in the same way.
struct SheetForm {
    /// Values are custom properties on the row; media queries set only these.
    bool properties = false;
    /// All rules are in a cascade layer with the name of the row; for Tenter's own markup only, because rules
    /// of a theme without a layer override those in layers. CSS Cascade 5 § 6.4.
    bool layer = false;
    bool comments = true;
    bool minified = false;  ///< without comments, line feeds and spaces that change nothing
    friend bool operator==(const SheetForm&, const SheetForm&) = default;
};

/// Options of printing a stylesheet.
struct StylesheetOptions {
    /// Indices of the variants; several variants share common rules.
    std::vector<std::size_t> variants{0};
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px, for font sizes
    SheetForm form = {};
    std::string fontRules = {};  ///< `@font-face` rules to print first (emit/late_fonts.h)
};

/// The stylesheet for Tenter's own markup. Safe to paste into a CMS: class and type selectors and `max-width`
/// queries, no `<`, `>` or `&`.
std::string stylesheet(const project::Project& project, const StylesheetOptions& options);

/// The same for the project's given row: with its selectors, and the resets that its theme makes necessary.
/// Empty, with problems, if the project has no given row. Never in a layer.
std::optional<std::string> givenStylesheet(const project::Project& project, const StylesheetOptions& options,
                                           project::Problems& problems);

/// The font size of `role` around viewport width `width` (CSS px) as a CSS value: `clamp(…)` or a length.
std::string fontSize(const project::Project& project, std::size_t variant, double width,
                     const std::string& role);

}  // namespace tenter::emit
