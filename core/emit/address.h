// Files as addresses.
#pragma once

#include <string>
#include <string_view>

namespace tenter::emit {

/// A file's path as a relative address: what an address cannot hold is percent-encoded. RFC 3986 § 2.1.
std::string pathAddress(std::string_view path);

}  // namespace tenter::emit
