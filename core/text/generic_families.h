// Generic font families. CSS Fonts 4 § 2.1.3.
#pragma once

#include <string_view>

namespace tenter::text {

/// True for a generic family such as `serif` or `system-ui`, in upper or lower case.
bool isGenericFamily(std::string_view family);

}  // namespace tenter::text
