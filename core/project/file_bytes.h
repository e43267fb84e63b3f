// Reading a file as a whole, or its start.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace tenter::project {

/// The bytes of `file`. Nothing if it is not a regular file (a pipe or a device could have no end), has more
/// than `most` bytes, or cannot be read to its end.
std::optional<std::string> fileBytes(const std::filesystem::path& file, std::uintmax_t most);

/// The first `most` bytes of `file`, or all if it has fewer. Nothing if it is not a regular file or cannot be
/// read.
std::optional<std::string> fileStart(const std::filesystem::path& file, std::size_t most);

}  // namespace tenter::project
