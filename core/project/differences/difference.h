// What differs between two projects.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "project/json_text.h"
#include "project/project.h"

namespace tenter::project {

/// One difference between an old and a new project. A value that a file leaves out because it is the default
/// has the place at which the file would have it.
// NOLINTNEXTLINE(bugprone-exception-escape): moving JSON throws only where it is used wrongly.
struct Difference {
    enum class Kind { Changed, Added, Removed, Moved };
    Kind kind = Kind::Changed;
    std::string oldPlace;  ///< JSON pointer in the old file; empty for something added
    std::string newPlace;  ///< JSON pointer in the new file; empty for something removed
    Json before;           ///< the value in the old file; null if the old file does not have it
    Json after;            ///< the value in the new file; null if the new file does not have it
    std::string says;      ///< a sentence with the names of the window
};

/// The name of a check for people, by its name in project files. The checks know it, not the project.
using TitleOfCheck = std::function<std::string(std::string_view)>;

/// `changed`, `added`, `removed` or `moved`.
std::string word(Difference::Kind kind);

/// The differences, in the order of a project file. Values are compared, not the way in which files write
/// them: a value that is only the default is no difference, nor is the order of keys, nor keys that start
/// with `x-`. Cards, parts, variants, bands, page ranges and fonts are recognised when they have moved.
/// Sentences name a silenced check as `titleOfCheck` returns it for the name in the file.
std::vector<Difference> differences(const Project& before, const Project& after,
                                    const TitleOfCheck& titleOfCheck);

}  // namespace tenter::project
