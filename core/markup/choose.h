// Giving a role to an element of an imported row.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "markup/adopt.h"
#include "markup/tree.h"

namespace tenter::markup {

/// The choices with which `adopt` gives an element the role; everything else stays as with the choices of
/// `page`. `node` is in the tree of the markup that `adopt(project, page)` gives. The role of a part, or none
/// (empty), is given to the corresponding element of every card: the same kind of element, with the same
/// index among those. The former heading or picture of a card loses that role. If the row or the cards
/// change, their parts are guessed again. Empty, with a problem, if the page has no row or the element cannot
/// have the role.
std::optional<std::vector<RoleChoice>> choose(const project::Project& project, const PageToAdopt& page,
                                              NodeId node, const std::string& role,
                                              project::Problems& problems);

}  // namespace tenter::markup
