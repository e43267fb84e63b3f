// A self-contained page of the row alone.
#pragma once

#include <filesystem>
#include <string>

#include "emit/picture_sources.h"
#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// HTML of the row in its markup (the given one if the project has it), with its stylesheet, and with
/// pictures and the fonts of the measurement embedded. No scripts, no requests. Empty, with problems, if the
/// given markup contains no row.
std::string page(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                 text::ParagraphStore& store, project::Problems& problems);

/// The markup of the row alone, with the cut files of `cut` if it has any.
std::string markup(const project::Project& project, std::size_t variant, const CutPictures& cut = {});

/// The elements of the pictures of `variant` that `cut` has files for, each below a comment with its card.
std::string pictureElements(const project::Project& project, std::size_t variant, const CutPictures& cut);

}  // namespace tenter::emit
