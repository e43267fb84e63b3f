// The browser's own stylesheet.
#pragma once

#include <string_view>

#include "css/rules.h"

namespace tenter::markup {

/// The rules of the browser's own stylesheet for rows and the elements around them. HTML § 15.3.
const css::Sheet& browserSheet();

}  // namespace tenter::markup
