// A project's given row: its elements, found by the project's selectors.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "css/selectors.h"
#include "markup/tree.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::markup {

/// A role, and the elements it is said of.
struct RoleNodes {
    std::string role;  ///< row, card, picture, or a role of text
    std::string selector;
    css::SelectorList parsed;   ///< empty for a row that is the element with the class itself
    std::vector<NodeId> nodes;  ///< in document order
};

struct GivenPart {
    std::string role;  ///< picture, or a role of text
    NodeId node = noNode;
    std::vector<NodeId> wrappers;  ///< between card and part, outermost first
};

struct GivenCard {
    NodeId node = noNode;
    std::vector<NodeId> wrappers;  ///< between row and card, outermost first
    std::vector<GivenPart> parts;  ///< in document order
};

/// An element between a card and its parts, and which of them it holds: those from `first` to before `end`,
/// which stand together since parts are in document order.
struct GivenWrapper {
    NodeId node = noNode;
    std::size_t card = 0;
    std::size_t first = 0;
    std::size_t end = 0;
};

struct GivenRow {
    Tree tree;
    std::size_t variant = 0;       ///< whose class the markup has
    NodeId classElement = noNode;  ///< the element with that class
    NodeId row = noNode;           ///< the grid: it, or an element within it
    std::vector<NodeId> wrappers;  ///< between the two, outermost first
    std::vector<GivenCard> cards;
    std::vector<RoleNodes> roles;  ///< in the project's order of selectors

    /// The elements of a role; null if the project does not say which.
    [[nodiscard]] const RoleNodes* find(const std::string& role) const;
    /// The wrappers of all cards' parts, card by card, each once, in document order.
    [[nodiscard]] std::vector<GivenWrapper> partWrappers() const;
};

/// Finds the elements of a project's given row. What is wrong is told with its JSON pointer; empty if there
/// is no row with cards to be had, or the project has no given markup. A row may come with problems: of
/// parts.
std::optional<GivenRow> givenRow(const project::Project& project, project::Problems& problems);

/// The same in another tree: a whole page that prints the row.
std::optional<GivenRow> givenRowIn(Tree tree, const project::Project& project, project::Problems& problems);

/// The first element, in document order, that has a variant's class; `variant` is which. `noNode` without
/// one.
NodeId classElementOf(const Tree& tree, const project::Project& project, std::size_t& variant);

}  // namespace tenter::markup
