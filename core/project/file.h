// Project files: JSON in and out.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::project {

inline constexpr int formatVersion = 1;
/// What a project file's name ends in.
inline constexpr const char* fileEnding = ".tenter.json";

/// Reads a project from JSON text. `name` is the file as told in problems; `folder` is where its pictures
/// and fonts are looked for (empty: they are not looked for). Empty with every problem found in `problems`.
std::optional<Project> parse(const std::string& text, const std::string& name,
                             const std::filesystem::path& folder, Problems& problems);

/// Reads a project file whole.
std::optional<Project> read(const std::filesystem::path& file, Problems& problems);

/// The project as JSON text: two spaces of indent, the file's own order of keys, `x-` keys kept.
std::string write(const Project& project);

/// Replaces `file` by `content` whole, or leaves it as it was: written beside it, synced, renamed.
bool replaceFile(const std::filesystem::path& file, const std::string& content, Problems& problems);

/// A setting's value as JSON, for panels that work by path, such as `text/heading/margin/top`.
/// Null if the layer does not set it, or there is no such setting.
Json settingAt(const Settings& settings, const std::string& path);
/// Sets it, or unsets it with a null value. A problem if the path or the value is wrong.
bool setSetting(Settings& settings, const std::string& path, const Json& value, Problems& problems);

}  // namespace tenter::project
