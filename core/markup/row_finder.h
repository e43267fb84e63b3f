// Finding the row of a page and the roles of its elements: by the person's choices, else by guesses.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "css/rules.h"
#include "css/selectors.h"
#include "markup/adopt.h"
#include "markup/guess.h"
#include "markup/keep.h"

namespace tenter::markup {

/// A card and its parts.
struct FoundCard {
    NodeId node = noNode;
    std::vector<GuessedPart> parts;
};

/// A row cut out of its page.
struct FoundRow {
    Kept kept;                       ///< its `row` is the parent of all cards
    NodeId pageRow = noNode;         ///< the same element in the page
    std::optional<int> levelBefore;  ///< level of the last heading before the row in the page
    NodeId classElement = noNode;
    bool classWasAdded = false;  ///< true if the row of the page had no class of a variant
    std::vector<FoundCard> cards;
    int loose = 0;  ///< pieces of text without an element of their own
};

/// The row of a cleaned page; empty, with a problem, if there is none. If neither the row nor an ancestor has
/// the class of a variant, the row gets that of the first. `sheet`: the rules of the page, by which phrases
/// can be parts (block_marks.h).
std::optional<FoundRow> findRow(Tree page, const project::Project& project, const std::string& file,
                                const std::vector<RoleChoice>& choices, const css::Sheet& sheet,
                                project::Problems& problems);

}  // namespace tenter::markup
