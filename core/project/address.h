// Addresses of links and pictures.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tenter::project {

/// The scheme of an address in lower case; empty if it has none. As in browsers, spaces and control
/// characters before it, and tabs and line ends anywhere, are ignored. URL § 4.4.
std::optional<std::string> addressScheme(std::string_view address);

/// True for http, https, mailto, tel, and addresses without a scheme (relative, `#…`).
bool isSafeAddress(std::string_view address);

}  // namespace tenter::project
