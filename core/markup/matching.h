// Trees as CSS selectors see them.
#pragma once

#include <string>
#include <vector>

#include "css/elements.h"
#include "css/selectors.h"
#include "markup/tree.h"

namespace tenter::markup {

/// A tree's elements, numbered by their nodes.
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

private:
    [[nodiscard]] std::optional<Element> elementFrom(NodeId node, NodeId Node::*next) const;
    const Tree& tree_;
};

/// The elements within `scope`, itself left out, that `selectors` select, in document order. All that a
/// selector asks for must stand within the scope, as if it were written behind the scope's own class and a
/// space.
std::vector<NodeId> selectedWithin(const Tree& tree, NodeId scope, css::SelectorList selectors);

/// The elements of the whole tree that `selectors` select.
std::vector<NodeId> selectedIn(const Tree& tree, const css::SelectorList& selectors);

/// Elements of the largest row that is worked with, and how deep they may stand.
inline constexpr std::size_t largestRow = 6000;
inline constexpr std::size_t deepestRow = 512;
/// True if the tree is within both, so that selectors are answered at once.
bool isWithinLimits(const Tree& tree);

}  // namespace tenter::markup
