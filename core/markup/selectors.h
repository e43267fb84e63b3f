// Making selectors for the parts of a row: short, and likely to stay valid.
#pragma once

#include <string>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// A selector; `exact` if it selects the wanted elements and no others.
struct Derived {
    std::string selector;
    bool exact = false;
};

/// Makes selectors for elements inside one scope, matched like `selectedWithin`. Tries in this order: a
/// class, a tag with a class, either of them inside a class, a tag, a path of children from the nearest class
/// or from the scope (`:scope > div > p`), several of these separated by commas, positions. Classes that are
/// not stable (`isStable`) or that are in `avoided` are not used.
class SelectorMaker {
public:
    SelectorMaker(const Tree& tree, NodeId scope, std::vector<std::string> avoided)
        : tree_(tree), scope_(scope), avoided_(std::move(avoided)) {}
    /// A selector for `wanted`, which is not empty.
    [[nodiscard]] Derived derived(const std::vector<NodeId>& wanted) const;

private:
    [[nodiscard]] std::vector<std::string> classesOf(NodeId node) const;
    [[nodiscard]] std::vector<std::string> sharedClasses(const std::vector<NodeId>& nodes) const;
    [[nodiscard]] std::vector<std::string> sharedAncestors(const std::vector<NodeId>& nodes) const;
    [[nodiscard]] std::string byKind(const std::vector<NodeId>& wanted) const;
    [[nodiscard]] std::string placeAmongType(NodeId node) const;
    [[nodiscard]] std::string byPath(const std::vector<NodeId>& wanted) const;
    [[nodiscard]] std::string byKinds(const std::vector<NodeId>& wanted) const;
    [[nodiscard]] std::string positionOf(NodeId node, bool toScope) const;
    [[nodiscard]] std::string byPosition(const std::vector<NodeId>& wanted, bool toScope) const;
    [[nodiscard]] std::vector<NodeId> selected(const std::string& selector) const;

    const Tree& tree_;
    NodeId scope_;
    std::vector<std::string> avoided_;
};

}  // namespace tenter::markup
