// The given row of a project: its elements, found by the project's selectors.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "css/selectors.h"
#include "markup/tree.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::markup {

/// A role and its elements.
struct RoleNodes {
    std::string role;  ///< row, card, picture, or a role of text
    std::string selector;
    css::SelectorList parsed;   ///< empty if the row is the element with the class
    std::vector<NodeId> nodes;  ///< in document order
};

/// A part of a card and its element.
struct GivenPart {
    std::string role;  ///< picture, or a role of text
    NodeId node = noNode;
    std::vector<NodeId> wrappers;  ///< elements between card and part, outermost first
};

/// A card and its parts.
struct GivenCard {
    NodeId node = noNode;
    std::vector<NodeId> wrappers;  ///< elements between row and card, outermost first
    std::vector<GivenPart> parts;  ///< in document order
};

/// An element between a card and its parts. It contains the parts from `first` up to, but without, `end`.
struct GivenWrapper {
    NodeId node = noNode;
    std::size_t card = 0;
    std::size_t first = 0;
    std::size_t end = 0;
};

/// The given row in a tree.
struct GivenRow {
    Tree tree;
    std::size_t variant = 0;       ///< index of the variant whose class the markup has
    NodeId classElement = noNode;  ///< the element with that class
    NodeId row = noNode;           ///< the grid: that element or one inside it
    std::vector<NodeId> wrappers;  ///< elements between the two, outermost first
    std::vector<GivenCard> cards;
    std::vector<RoleNodes> roles;  ///< in the order of the project's selectors

    /// The elements of a role; null if the project has no selector for it.
    [[nodiscard]] const RoleNodes* find(const std::string& role) const;
    /// The wrappers of the parts of all cards, each once, in document order.
    [[nodiscard]] std::vector<GivenWrapper> partWrappers() const;
};

/// The given row of a project in its own markup. Problems have a JSON pointer as place. Empty if the project
/// has no given markup or no row with cards is found. A row can come with problems about its parts.
std::optional<GivenRow> givenRow(const project::Project& project, project::Problems& problems);

/// The same in another tree, such as a whole page that contains the row.
std::optional<GivenRow> givenRowIn(Tree tree, const project::Project& project, project::Problems& problems);

/// The first element in document order that has the class of a variant; `variant` becomes the index of that
/// variant. `noNode` if there is none.
NodeId classElementOf(const Tree& tree, const project::Project& project, std::size_t& variant);

}  // namespace tenter::markup
