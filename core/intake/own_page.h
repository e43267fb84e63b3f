// The page around a row, from the stylesheet of a page that Tenter wrote.
#pragma once

#include <string>
#include <vector>

#include "css/rules.h"
#include "project/page.h"

namespace tenter::intake {

/// Root size, scrollbar and container with the ranges at which they change. `container`: the classes of the
/// element around the row.
project::Page ownPage(const css::Sheet& sheet, const std::vector<std::string>& container);

}  // namespace tenter::intake
