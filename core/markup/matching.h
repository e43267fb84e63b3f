// Matching CSS selectors in a tree.
#pragma once

#include <string>
#include <vector>

#include "css/elements.h"
#include "css/selectors.h"
#include "markup/tree.h"

namespace tenter::markup {

/// The elements of a tree for css::matches, numbered by their nodes.
class TreeElements : public css::Elements {
public:
    explicit TreeElements(const Tree& tree) : tree_(tree) {}
    [[nodiscard]] std::string_view tag(Element element) const override;
    [[nodiscard]] std::optional<std::string_view> attribute(Element element,
                                                            std::string_view name) const override;
    [[nodiscard]] std::optional<Element> parent(Element element) const override;
    [[nodiscard]] std::optional<Element> previousSibling(Element element) const override;
    [[nodiscard]] std::optional<Element> nextSibling(Element element) const override;
    [[nodiscard]] std::optional<Element> firstChild(Element element) const override;
    [[nodiscard]] bool isEmpty(Element element) const override;

protected:
    [[nodiscard]] const Tree& tree() const { return tree_; }

private:
    [[nodiscard]] std::optional<Element> elementFrom(NodeId node, NodeId Node::*next) const;
    const Tree& tree_;
};

/// The elements of a tree that has only the chain of ancestors of a row, without their siblings.
class KeptElements final : public TreeElements {
public:
    /// `assumes`: whether selectors match that could match with the siblings that are missing.
    explicit KeptElements(const Tree& tree, bool assumes = true);
    [[nodiscard]] bool knowsSiblings(Element element) const override;
    [[nodiscard]] bool assumesSiblings() const override { return assumes_; }

private:
    bool assumes_;
    std::vector<bool> chain_;  ///< by node: true for the row and its ancestors
};

/// The elements inside `scope`, without `scope`, that `selectors` match, in document order. Every compound of
/// a selector must match inside the scope, as if the selector followed the class of the scope and a space.
/// `:scope` at the start of a selector is the scope itself: `:scope > div` selects its children.
std::vector<NodeId> selectedWithin(const Tree& tree, NodeId scope, css::SelectorList selectors);

/// The elements of the whole tree that `selectors` match, in document order.
std::vector<NodeId> selectedIn(const Tree& tree, const css::SelectorList& selectors);

/// The largest number of elements of a row, and its deepest nesting.
inline constexpr std::size_t largestRow = 6000;
inline constexpr std::size_t deepestRow = 512;
/// True if the tree is within both limits, so that matching is fast.
bool isWithinLimits(const Tree& tree);

}  // namespace tenter::markup
