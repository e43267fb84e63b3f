// Project files: reading, writing, and single settings by path.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::project {

/// The newest version of the format. Version 2 has lists in `given/unread`. A file has the oldest version
/// that can hold it, so that earlier programs open it if they can.
inline constexpr int formatVersion = 2;
/// The end of a project file's name.
inline constexpr const char* fileEnding = ".tenter.json";

/// True for the name of a check. The checks themselves are known only outside of this folder.
using CheckNameTest = bool (*)(std::string_view name);
/// True for lower-case words of ASCII letters, joined by hyphens: what every name of a check is.
bool isWellFormedCheckName(std::string_view name);

/// The project in a JSON text; empty, with `problems`, if it is not valid. `name`: the file name for
/// problems. `folder`: the folder that pictures and fonts must exist in; empty: their existence is not
/// checked. A silenced check must pass `isCheckName`.
std::optional<Project> parse(const std::string& text, const std::string& name,
                             const std::filesystem::path& folder, Problems& problems,
                             CheckNameTest isCheckName = isWellFormedCheckName);

/// The project in a file; empty, with `problems`, if it cannot be read or is not valid.
std::optional<Project> read(const std::filesystem::path& file, Problems& problems,
                            CheckNameTest isCheckName = isWellFormedCheckName);

/// The project as JSON text: indented by two spaces, keys in the order of the file it came from, `x-` keys
/// kept.
std::string write(const Project& project);

/// Replaces the content of `file`. If that fails, the old file is unchanged and there is a problem. Writes a
/// new file in the same folder, syncs it and renames it.
bool replaceFile(const std::filesystem::path& file, const std::string& content, Problems& problems);

/// The value of a setting as JSON, by its path, such as `text/heading/margin/top`. Null if `settings` does
/// not set it, or if there is no such setting.
Json settingAt(const Settings& settings, const std::string& path);
/// Sets the setting at `path`; null unsets it. False, with a problem, if the path or the value is wrong.
bool setSetting(Settings& settings, const std::string& path, const Json& value, Problems& problems);

}  // namespace tenter::project
