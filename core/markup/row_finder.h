// Finds a page's row, cut out of the page, and what is what in it: by what the person says, else by guessing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "css/selectors.h"
#include "markup/adopt.h"
#include "markup/guess.h"
#include "markup/keep.h"

namespace tenter::markup {

struct FoundCard {
    NodeId node = noNode;
    std::vector<GuessedPart> parts;
};

struct FoundRow {
    Kept kept;                       ///< its `row` is the cards' common parent
    NodeId pageRow = noNode;         ///< the same in the page it was cut out of
    std::optional<int> levelBefore;  ///< of the last heading before it there
    NodeId classElement = noNode;
    bool classWasAdded = false;  ///< the page's row had no variant's class
    std::vector<FoundCard> cards;
    int loose = 0;  ///< places where text stands loose beside blocks
};

/// Empty, with a problem, if there is no row. `page` is cleaned; the row in it is given a variant's class if
/// it stands in no element that has one.
std::optional<FoundRow> findRow(Tree page, const project::Project& project, const std::string& file,
                                const std::vector<RoleChoice>& choices, project::Problems& problems);

}  // namespace tenter::markup
