// Tenter's own markup of the row.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "emit/picture_sources.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// Options of printing markup.
struct MarkupOptions {
    /// The address of a picture; `place` is its JSON pointer.
    std::function<std::string(const project::PicturePart&, const std::string& place)> address;
    /// The cut files of part `part` of card `card`; empty: the picture's own file is the only one.
    std::function<std::optional<PictureSources>(std::size_t card, std::size_t part)> sources = {};
    bool marked = false;  ///< cards and parts have data-tenter-… attributes with their indices
    int depth = 0;        ///< indent of the outermost element, in steps of two spaces
};

/// The markup of the row with the class of `variant`. An unsafe address is a problem and is replaced by `#`.
std::string writeMarkup(const project::Project& project, std::size_t variant, const MarkupOptions& options,
                        project::Problems& problems);

/// The element of one picture as that markup has it, on one line.
std::string pictureElement(const project::Project& project, const project::PartRef& place,
                           const MarkupOptions& options);

}  // namespace tenter::emit
