#include "project/file_bytes.h"

#include <fstream>

namespace tenter::project {

std::optional<std::string> fileBytes(const std::filesystem::path& file, std::uintmax_t most) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return std::nullopt;
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error || size > most) return std::nullopt;
    // An iterator over the stream would throw where the disk fails; read() tells.
    std::ifstream in(file, std::ios::binary);
    std::string bytes(static_cast<std::size_t>(size), '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(size));
    if (!in.is_open() || in.bad() || static_cast<std::uintmax_t>(in.gcount()) != size) return std::nullopt;
    return bytes;
}

}  // namespace tenter::project
