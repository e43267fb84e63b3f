// Files as relative addresses.
#pragma once

#include <string>
#include <string_view>

namespace tenter::emit {

/// A file path as a relative address, with percent escapes. RFC 3986 § 2.1.
std::string pathAddress(std::string_view path);

}  // namespace tenter::emit
