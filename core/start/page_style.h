// The look of an existing row, read from the theme of its page.
#pragma once

#include "markup/given.h"
#include "project/project.h"

namespace tenter::start {

/// The settings that the theme of a row states for its cards and texts: colours, backgrounds, borders, radii,
/// paddings, families, weights and sizes. `width`: viewport, CSS px. What the theme does not state, or not in
/// px, rem, em or hexadecimal colours, rgb() and the basic colour names, stays unset.
project::Settings pageStyle(const markup::GivenRow& row, const std::string& theme, double width);

/// The number of columns that the theme's grid has at that width; 0 if it states none.
int pageColumns(const markup::GivenRow& row, const std::string& theme, double width);

}  // namespace tenter::start
