// Files as relative addresses.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace tenter::emit {

/// A file path as a relative address, with percent escapes. RFC 3986 § 2.1.
std::string pathAddress(std::string_view path);

/// The relative address of `folder` from a file in the folder `from`: empty, or ending in `/`.
std::string folderAddress(const std::filesystem::path& folder, const std::filesystem::path& from);

}  // namespace tenter::emit
