// Addresses that links and pictures may have.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tenter::emit {

/// True for http, https, mailto, tel, and addresses without a scheme (relative, `#…`). Reads the scheme as
/// browsers do: spaces and controls before it, tabs and line ends anywhere, do not hide it. URL § 4.4.
bool isSafeAddress(std::string_view address);

/// A file's path as a relative address: what an address cannot hold is percent-encoded. RFC 3986 § 2.1.
std::string pathAddress(std::string_view path);

}  // namespace tenter::emit
