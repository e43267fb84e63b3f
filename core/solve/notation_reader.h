// Reading the values of wishes in their short notation.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "project/project.h"
#include "project/project_json.h"

namespace tenter::solve {

/// Reads values into JSON as a project file has it. Each function returns false if its value is invalid, and
/// then adds a problem that names the wish.
class NotationReader {
public:
    NotationReader(const std::string& text, const project::Project& project, project::Problems& problems)
        : text_(text), project_(project), problems_(problems) {}

    /// Adds a problem. Always returns false.
    bool wrong(const std::string& what, const std::string& fix);
    /// A number; nothing else may follow it.
    [[nodiscard]] static std::optional<double> number(const std::string& text);
    bool putNumber(project::Json& json, const char* key, const std::string& text, const char* fix);
    /// `20%` or `0.2` as 0.2.
    bool putShare(project::Json& json, const char* key, const std::string& text);
    /// `15-20`, `15-`, `-20`.
    bool putRange(project::Json& json, const char* least, const char* most, const std::string& text,
                  const char* fix);
    /// One of `words`, each with the value that it stands for.
    bool putWord(project::Json& json, const char* key, const std::string& text,
                 const std::vector<std::pair<std::string, project::Json>>& words);
    /// True if the project has the role.
    bool isRole(const std::string& name);

private:
    const std::string& text_;
    const project::Project& project_;
    project::Problems& problems_;
};

}  // namespace tenter::solve
