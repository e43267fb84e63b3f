// A project from a stylesheet or a page that Tenter wrote.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::intake {

/// What is read.
struct OwnSource {
    std::string_view bytes;               ///< of the file
    std::filesystem::path file;           ///< its name; a page finds its stylesheets and pictures beside it
    std::filesystem::path projectFolder;  ///< that of the new project file
    double rootSize = 16;                 ///< root font size of the theme in CSS px, for a stylesheet alone
};

/// A project and what was found out about it.
struct OwnProject {
    project::Project project;
    std::vector<std::string> report;  ///< one sentence each: first what to check (`Warning: …`)
};

/// The project of a stylesheet in any of the forms that Tenter prints. Its cards have placeholder texts and
/// no pictures. Empty, with a problem, if the text is no such stylesheet.
std::optional<OwnProject> projectOfSheet(const OwnSource& sheet, project::Problems& problems);

/// The project of a page in Tenter's own markup: stylesheet, container, root size, texts and pictures. Empty,
/// with a problem, if it has no such row. Nothing is run or fetched.
std::optional<OwnProject> projectOfPage(const OwnSource& page, project::Problems& problems);

/// Why a page or a stylesheet in Tenter's own markup is not read as such, from the problems that its reading
/// gave: warnings, one for each value that no project can have. Empty if it is not in that markup.
std::vector<std::string> whyNotOwn(const project::Problems& problems);

}  // namespace tenter::intake
