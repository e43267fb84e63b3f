// A page of the row alone, self-contained.
#pragma once

#include <filesystem>
#include <string>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// HTML with the row in its markup (the given one, if the project has it) and stylesheet, pictures and the
/// fonts of the measurement embedded. No script, no request. Empty, with problems, if given markup is no row.
std::string page(const project::Project& project, std::size_t variant, const std::filesystem::path& folder,
                 text::ParagraphStore& store, project::Problems& problems);

/// The row's markup alone.
std::string markup(const project::Project& project, std::size_t variant);

}  // namespace tenter::emit
