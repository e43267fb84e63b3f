// Builds the content of a spec sheet from a project.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "sheet/content.h"
#include "text/paragraph_store.h"

namespace tenter::sheet {

/// What a sheet is made of.
struct SheetOptions {
    std::vector<std::size_t> variants;  ///< indices; empty: all
    std::string date;                   ///< as shown
    const text::BreakProfile* profile = nullptr;
    std::function<bool()> isStopped;  ///< asked between steps; may be empty
};

/// The sheet of `project`. Thumbnails refer to `project`, which must live longer. Without blocks if it was
/// stopped.
Sheet buildSheet(const project::Project& project, text::ParagraphStore& store, const SheetOptions& options);

}  // namespace tenter::sheet
