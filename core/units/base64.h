// Base64.
#pragma once

#include <string>
#include <string_view>

namespace tenter::units {

/// Base64 of `bytes`. RFC 4648 § 4.
std::string base64(std::string_view bytes);

}  // namespace tenter::units
