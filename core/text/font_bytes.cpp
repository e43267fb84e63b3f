#include "text/font_bytes.h"

#include <fstream>
#include <map>
#include <mutex>
#include <utility>

#include "text/sfnt.h"

namespace tenter::text {

namespace {

/// The size in bytes of the largest font file that is read.
constexpr std::uintmax_t largestFont = 64U << 20U;

/// The bytes of a font file; empty if it is too large or not a file: a pipe or a device could have no end.
std::string readWhole(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return {};
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error || size > largestFont) return {};
    std::ifstream in(file, std::ios::binary);
    std::string bytes(static_cast<std::size_t>(size), '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(size));
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    return bytes;
}

/// A file as it was read.
struct ReadFile {
    std::weak_ptr<const std::string> bytes;
    std::filesystem::file_time_type changed;
    std::uintmax_t size = 0;
};

}  // namespace

std::shared_ptr<const std::string> fontBytes(const std::filesystem::path& file) {
    static std::mutex mutex;
    static std::map<std::filesystem::path, ReadFile> known;
    std::error_code error;
    const auto changed = std::filesystem::last_write_time(file, error);
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    const std::scoped_lock lock(mutex);
    std::erase_if(known, [](const auto& entry) { return entry.second.bytes.expired(); });
    const auto found = known.find(file);
    if (found != known.end() && found->second.changed == changed && found->second.size == size)
        if (auto bytes = found->second.bytes.lock()) return bytes;
    auto decoded = sfntBytes(readWhole(file));
    auto bytes = std::make_shared<const std::string>(decoded ? std::move(*decoded) : std::string());
    known[file] = {bytes, changed, size};
    return bytes;
}

}  // namespace tenter::text
