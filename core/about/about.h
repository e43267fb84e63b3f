// What the program is: its version, the commit it was built from, the libraries it uses.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tenter::about {

/// The version, such as `0.1.0`. Semantic Versioning 2.0.0: of the project file, of the command line with its
/// JSON, and of the headers of core together.
std::string_view version();

/// The commit as Git abbreviates it, with `-modified` if the source differed from it; `unknown` if the
/// program was not built in a Git repository.
std::string_view commit();

/// A library and its version: of the loaded library where it reports one, otherwise the one that the program
/// was compiled with.
struct Library {
    std::string name;
    std::string version;
};

/// The libraries of core, sorted by name.
std::vector<Library> libraries();

/// What `--version` prints: `program` with its version, the commit, and the libraries, those of `more` first.
std::string versionText(std::string_view program, const std::vector<Library>& more = {});

}  // namespace tenter::about
