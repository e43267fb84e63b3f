#include "text/font_bytes.h"

#include <map>
#include <mutex>
#include <utility>

#include "project/file_bytes.h"
#include "text/sfnt.h"

namespace tenter::text {

namespace {

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
    auto decoded = sfntBytes(project::fileBytes(file, largestFont).value_or(""));
    auto bytes = std::make_shared<const std::string>(decoded ? std::move(*decoded) : std::string());
    known[file] = {bytes, changed, size};
    return bytes;
}

}  // namespace tenter::text
