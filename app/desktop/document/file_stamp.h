// Notices that another program has changed a file.
#pragma once

#include <cstdint>
#include <filesystem>

namespace tenter::desktop {

/// What identifies the content of a file: its size and a hash of its bytes.
struct FileStamp {
    std::uintmax_t size = 0;
    std::uint64_t hash = 0;
    bool exists = false;
    friend bool operator==(const FileStamp&, const FileStamp&) = default;
    /// The stamp of the file now. A file that cannot be read counts as missing.
    static FileStamp of(const std::filesystem::path& file);
};

}  // namespace tenter::desktop
