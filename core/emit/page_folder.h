// The row as a folder that opens from disk: page, stylesheets, pictures and fonts.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "emit/folder_cuts.h"
#include "emit/stylesheet.h"
#include "project/problem.h"
#include "project/replace_folder.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// Options of a page folder.
struct PageFolderOptions {
    std::size_t variant = 0;
    bool fonts = true;          ///< include the fonts whose permission allows it
    bool lateFonts = false;     ///< `row.css` has fallback fonts for the time until the fonts have loaded
    StylesheetOptions sheet{};  ///< the form of `row.css`; its variants are ignored
    const FolderCuts* cuts = nullptr;  ///< the cut pictures of the variant; null: pictures are copied whole
};

/// A font that the folder contains, or leaves out.
struct ShippedFont {
    std::string family;
    std::string file;    ///< in the folder; empty if it is left out
    std::string reason;  ///< why it is left out, a predicate; empty if it is included
};

/// The content of a page folder.
struct PageFolder {
    std::vector<project::FolderFile> files;
    std::vector<ShippedFont> fonts;
};

/// `index.html` with the row in its markup, `row.css` (its stylesheet), `page.css` (what the theme of a site
/// would set), `fonts.css`, and the files in `pictures/` and `fonts/`. The page requests nothing else.
/// Pictures that are not cut, such as vector drawings, are copied.
/// Missing pictures are problems; the page shows empty ones. Empty, with problems, if the given markup
/// contains no row. `folder`: that of the project file.
std::optional<PageFolder> pageFolder(const project::Project& project, const std::filesystem::path& folder,
                                     const PageFolderOptions& options, text::ParagraphStore& store,
                                     project::Problems& problems);

/// The files with their sizes, then the fonts that are left out and why, for a terminal.
std::string folderList(const PageFolder& folder);

}  // namespace tenter::emit
