// Addresses that links and pictures may have.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tenter::project {

/// The scheme an address starts with, in lower case; empty if it has none. Read as browsers do: spaces and
/// controls before it, tabs and line ends anywhere, do not hide it. URL § 4.4.
std::optional<std::string> addressScheme(std::string_view address);

/// True for http, https, mailto, tel, and addresses without a scheme (relative, `#…`).
bool isSafeAddress(std::string_view address);

}  // namespace tenter::project
