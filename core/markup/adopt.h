// A page's row taken into a project: its markup, its selectors, its cards.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::markup {

/// What the person says of a role instead of having it guessed. The selector is matched in the whole page; of
/// what it selects only what stands in the row counts, but for the role `row` itself.
struct RoleChoice {
    std::string role;  ///< row, card, picture, or a role of text; empty: what it selects is no part
    std::string selector;
};

struct PageToAdopt {
    std::string_view bytes;               ///< the page, or the row alone, as it was saved or pasted
    std::filesystem::path file;           ///< where it was saved; told in problems
    std::filesystem::path projectFolder;  ///< where the project file is, or will be
    std::vector<RoleChoice> choices;
    /// CSS that the person says is the theme's, instead of what the page's own style sheets say.
    std::optional<std::string> theme = {};
};

struct Adopted {
    project::Project project;
    std::vector<std::string> report;  ///< what was found and guessed, a sentence each
};

/// The project with the page's row: its `given`, its cards, its language and direction, its level of
/// headings; of the theme its root size, and the container that the row's ancestors make by it. Everything
/// else stays, what was known of the theme too if the page brings no style sheet. Empty,
/// with problems, if no row is found, or what is found makes no sound project. Problems that do not stand in
/// the way are told beside the result.
std::optional<Adopted> adopt(const project::Project& project, const PageToAdopt& page,
                             project::Problems& problems);

}  // namespace tenter::markup
