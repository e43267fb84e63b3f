// The row's own markup.
#pragma once

#include <functional>
#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

struct MarkupOptions {
    /// The address of a picture; `place` is its JSON pointer.
    std::function<std::string(const project::PicturePart&, const std::string& place)> address;
    bool marked = false;  ///< cards and parts carry data-tenter-… attributes with their indices
    int depth = 0;        ///< indent of the outermost element, in steps of two spaces
};

/// Addresses that are not emitted are told in `problems`.
std::string writeMarkup(const project::Project& project, std::size_t variant, const MarkupOptions& options,
                        project::Problems& problems);

}  // namespace tenter::emit
