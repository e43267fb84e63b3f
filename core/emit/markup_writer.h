// Tenter's own markup of the row.
#pragma once

#include <functional>
#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// Options of printing markup.
struct MarkupOptions {
    /// The address of a picture; `place` is its JSON pointer.
    std::function<std::string(const project::PicturePart&, const std::string& place)> address;
    bool marked = false;  ///< cards and parts have data-tenter-… attributes with their indices
    int depth = 0;        ///< indent of the outermost element, in steps of two spaces
};

/// The markup of the row with the class of `variant`. An unsafe address is a problem and is replaced by `#`.
std::string writeMarkup(const project::Project& project, std::size_t variant, const MarkupOptions& options,
                        project::Problems& problems);

}  // namespace tenter::emit
