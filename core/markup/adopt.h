// Importing the row of a page into a project: its markup, its selectors, its cards.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "markup/page_measure.h"
#include "markup/tree.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::markup {

/// A selector that the person gives for a role, instead of a guess. It is matched in the whole page; except
/// for the role `row`, only elements in the row count.
struct RoleChoice {
    std::string role;  ///< row, card, picture, or a role of text; empty: the elements are not parts
    std::string selector;
};

/// A page to import from.
struct PageToAdopt {
    std::string_view bytes;               ///< the page, or the row alone, as saved or pasted
    std::filesystem::path file;           ///< the saved file; named in problems
    std::filesystem::path projectFolder;  ///< the folder of the project file
    std::vector<RoleChoice> choices;
    /// Width and height of a picture file, image pixels, or nothing; unset: sizes are those of the markup.
    std::function<std::optional<std::pair<int, int>>(const std::filesystem::path&)> pictureSize = {};
    /// CSS of the theme given by the person, instead of the stylesheets of the page.
    std::optional<std::string> theme = {};
    /// The name of the file with that CSS; empty: none.
    std::string themeName = {};
    /// Measures the container and the root size in a browser; unset: they are only read from the CSS.
    Browse browse = {};
    /// True to get the page with which a browser can measure them later.
    bool wantsMeasuringPage = false;
    /// `bytes`, parsed; unset: who needs the tree parses it. Large pages take long to parse.
    std::shared_ptr<const Tree> tree = {};
};

/// The tree of `page`; null, with problems, if it cannot be parsed.
std::shared_ptr<const Tree> treeOf(const PageToAdopt& page, project::Problems& problems);

/// The result of an import.
struct Adopted {
    project::Project project;
    std::vector<std::string>
        report;  ///< one sentence each: first what to check (`Warning: …`), then what was found
    std::string measuringPage;  ///< if wanted and if the page has CSS for the row: see markup::measuringPage
};

/// The project with the row of the page. Replaced are: `given`, the cards, language and direction, the
/// heading level, and, if the page has CSS for the row, the root size and the container that its ancestors
/// make. All else stays; without such CSS the theme stays too. Empty, with problems, if no row is found or if
/// the result is not a valid project. Problems can also come with a result.
std::optional<Adopted> adopt(const project::Project& project, const PageToAdopt& page,
                             project::Problems& problems);

}  // namespace tenter::markup
