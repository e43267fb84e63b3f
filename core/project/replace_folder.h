// Writing a whole folder, or nothing.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "project/problem.h"

namespace tenter::project {

/// A file of a folder to be written: its content, or a file to copy.
struct FolderFile {
    std::string name;              ///< relative, with `/`: `pictures/dunes.jpg`
    std::string content;           ///< ignored if there is a `source`
    std::filesystem::path source;  ///< empty: `content` is written
    /// Size in bytes; 0 if the source does not exist.
    [[nodiscard]] std::uintmax_t size() const;
};

/// The name of the list of files that every such folder contains.
inline constexpr const char* folderListName = "tenter-folder.json";

/// Called before each file with its index. False stops.
using FolderProgress = std::function<bool(std::size_t index)>;

/// True if `replaceFolder` may replace `folder`: it does not exist, is empty, or Tenter wrote everything in
/// it. If not, there is a problem.
bool canReplaceFolder(const std::filesystem::path& folder, Problems& problems);

/// Writes `files` as the folder `folder`, with a list of them (`folderListName`). Everything is written
/// beside it first; then the folders change places, so that a failure leaves what was there. A folder that
/// exists is replaced only if it is empty, or if its list names everything in it. False, with a problem
/// unless `progress` stopped it, if nothing was replaced.
bool replaceFolder(const std::filesystem::path& folder, const std::vector<FolderFile>& files,
                   Problems& problems, const FolderProgress& progress = {});

}  // namespace tenter::project
