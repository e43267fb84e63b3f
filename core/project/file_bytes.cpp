#include "project/file_bytes.h"

#include <fstream>

namespace tenter::project {

namespace {

/// Up to `count` bytes from the start of `file`. Nothing if it cannot be read.
std::optional<std::string> read(const std::filesystem::path& file, std::size_t count) {
    // An iterator over the stream would throw where the disk fails; read() tells.
    std::ifstream in(file, std::ios::binary);
    std::string bytes(count, '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(count));
    if (!in.is_open() || in.bad()) return std::nullopt;
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    return bytes;
}

}  // namespace

std::optional<std::string> fileBytes(const std::filesystem::path& file, std::uintmax_t most) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return std::nullopt;
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error || size > most) return std::nullopt;
    std::optional<std::string> bytes = read(file, static_cast<std::size_t>(size));
    return bytes && bytes->size() == size ? bytes : std::nullopt;
}

std::optional<std::string> fileStart(const std::filesystem::path& file, std::size_t most) {
    std::error_code error;
    return std::filesystem::is_regular_file(file, error) ? read(file, most) : std::nullopt;
}

}  // namespace tenter::project
