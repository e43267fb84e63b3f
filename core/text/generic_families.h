// Families that stand for whatever a system has of their kind. CSS Fonts 4 § 2.1.3.
#pragma once

#include <string_view>

namespace tenter::text {

/// True for `serif`, `system-ui` and the like, in any case.
bool isGenericFamily(std::string_view family);

}  // namespace tenter::text
