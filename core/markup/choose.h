// A role given to an element of an adopted row, as choices to adopt the page with.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "markup/adopt.h"
#include "markup/tree.h"

namespace tenter::markup {

/// The choices with which `adopt` gives an element the role, and all else stays as `page` with its own
/// choices has it. `node` is of the tree that the given markup of `adopt(project, page)` parses to. A part's
/// role, or none (empty), is given to what stands in every card as `node` does: the same kind of element, the
/// same one in order among its like. What was heading, or picture, in a card then is so no longer. With
/// another row or other cards their parts are guessed anew. Empty, with a problem, if the page has no row, or
/// the element cannot have the role where it stands.
std::optional<std::vector<RoleChoice>> choose(const project::Project& project, const PageToAdopt& page,
                                              NodeId node, const std::string& role,
                                              project::Problems& problems);

}  // namespace tenter::markup
