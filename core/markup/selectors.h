// Selectors for the parts of a row: short ones that are likely to last.
#pragma once

#include <string>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// A selector, and whether it selects what it should and nothing else.
struct Derived {
    std::string selector;
    bool exact = false;
};

/// Makes selectors for elements within one scope, matched as `selectedWithin` does: by a class, else by a tag
/// with a class, else by either within a class, else by tag, else by several of these with commas, else by
/// position. Classes that are not stable (`isStable`) or stand in `avoided` are not used.
class SelectorMaker {
public:
    SelectorMaker(const Tree& tree, NodeId scope, std::vector<std::string> avoided)
        : tree_(tree), scope_(scope), avoided_(std::move(avoided)) {}
    /// A selector that selects `wanted`, which are some, and nothing else within the scope.
    [[nodiscard]] Derived derived(const std::vector<NodeId>& wanted) const;

private:
    [[nodiscard]] std::vector<std::string> classesOf(NodeId node) const;
    [[nodiscard]] std::vector<std::string> sharedClasses(const std::vector<NodeId>& nodes) const;
    [[nodiscard]] std::vector<std::string> sharedAncestors(const std::vector<NodeId>& nodes) const;
    [[nodiscard]] std::string byKind(const std::vector<NodeId>& wanted) const;
    [[nodiscard]] std::string byKinds(const std::vector<NodeId>& wanted) const;
    [[nodiscard]] std::string positionOf(NodeId node, bool toScope) const;
    [[nodiscard]] std::string byPosition(const std::vector<NodeId>& wanted, bool toScope) const;
    [[nodiscard]] std::vector<NodeId> selected(const std::string& selector) const;

    const Tree& tree_;
    NodeId scope_;
    std::vector<std::string> avoided_;
};

}  // namespace tenter::markup
