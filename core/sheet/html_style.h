// The style of the HTML sheet.
#pragma once

#include <string_view>

namespace tenter::sheet {

/// The rules of the sheet, for screen and print.
std::string_view htmlStyle();

}  // namespace tenter::sheet
