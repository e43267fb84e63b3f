// The fonts that a page must load for a row to look as computed.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// A family and the faces of it that texts use.
struct NeededFont {
    std::string family;           ///< the first of a family list
    std::vector<double> upright;  ///< weights, 1 to 1000, ascending
    std::vector<double> italic;   ///< weights of slanted text, ascending
    /// `Vollkorn 600, 900 and 600 italic`.
    [[nodiscard]] std::string title() const;
};

/// The fonts of the texts in the variants with the indices `variants`, in document order. Families that are
/// generic (`serif`) are left out, because a page has nothing to load for them.
std::vector<NeededFont> neededFonts(const project::Project& project,
                                    const std::vector<std::size_t>& variants);

/// `The page must load these fonts: Vollkorn 600; Karla 400, 700. In other fonts the lines break at other
/// places.`; empty if there are none.
std::string fontSentence(const project::Project& project, const std::vector<std::size_t>& variants);

}  // namespace tenter::emit
