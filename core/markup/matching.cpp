#include "markup/matching.h"

#include <algorithm>

#include "css/match.h"

namespace tenter::markup {

namespace {

// An attribute that only the scope has: no attribute of a page has a space in its name.
constexpr std::string_view scopeMark = "tenter scope";

// The same tree, in which one element has an extra attribute for selectors.
class ScopedElements final : public TreeElements {
public:
    ScopedElements(const Tree& tree, NodeId scope) : TreeElements(tree), scope_(scope) {}
    [[nodiscard]] std::optional<std::string_view> attribute(Element element,
                                                            std::string_view name) const override {
        if (name == scopeMark) return element == scope_ ? std::optional<std::string_view>("") : std::nullopt;
        return TreeElements::attribute(element, name);
    }

private:
    NodeId scope_;
};

}  // namespace

std::string_view TreeElements::tag(Element element) const {
    return tree_[static_cast<NodeId>(element)].name;
}

std::optional<std::string_view> TreeElements::attribute(Element element, std::string_view name) const {
    const std::string* value = tree_[static_cast<NodeId>(element)].find(name);
    return value == nullptr ? std::nullopt : std::optional<std::string_view>(*value);
}

std::optional<css::Elements::Element> TreeElements::parent(Element element) const {
    const NodeId parent = tree_[static_cast<NodeId>(element)].parent;
    return parent == noNode ? std::nullopt : std::optional<Element>(parent);
}

std::optional<css::Elements::Element> TreeElements::elementFrom(NodeId node, NodeId Node::*next) const {
    while (node != noNode && tree_[node].isText())
        node = tree_[node].*next;
    return node == noNode ? std::nullopt : std::optional<Element>(node);
}

std::optional<css::Elements::Element> TreeElements::previousSibling(Element element) const {
    return elementFrom(tree_[static_cast<NodeId>(element)].previous, &Node::previous);
}

std::optional<css::Elements::Element> TreeElements::nextSibling(Element element) const {
    return elementFrom(tree_[static_cast<NodeId>(element)].next, &Node::next);
}

std::optional<css::Elements::Element> TreeElements::firstChild(Element element) const {
    return elementFrom(tree_[static_cast<NodeId>(element)].firstChild, &Node::next);
}

bool TreeElements::isEmpty(Element element) const {
    return tree_[static_cast<NodeId>(element)].firstChild == noNode;
}

KeptElements::KeptElements(const Tree& tree, bool assumes)
    : TreeElements(tree), assumes_(assumes), chain_(tree.size()) {
    // The chain: below the body each element is an only child. The last of them, the row, may have one card.
    NodeId at = tree.isEmpty() ? noNode : tree.body();
    while (at != noNode) {
        chain_[at] = true;
        const std::vector<NodeId> children = tree.elementChildren(at);
        at = children.size() == 1 ? children.front() : noNode;
    }
}

bool KeptElements::knowsSiblings(Element element) const {
    return !chain_[element];
}

std::vector<NodeId> selectedWithin(const Tree& tree, NodeId scope, css::SelectorList selectors) {
    css::Compound top;
    top.simples.emplace_back();
    top.simples.back().kind = css::SimpleKind::Attribute;
    top.simples.back().name = scopeMark;
    for (css::Complex& selector : selectors) {
        css::Compound& first = selector.compounds.front();
        const bool isScope = first.simples.size() == 1 &&
                             first.simples.front().kind == css::SimpleKind::PseudoClass &&
                             first.simples.front().name == "scope" && selector.compounds.size() > 1;
        if (isScope)
            first = top;
        else
            selector.compounds.insert(selector.compounds.begin(), top);
    }
    const ScopedElements elements(tree, scope);
    std::vector<NodeId> found;
    for (NodeId at = tree.following(scope, scope); at != noNode; at = tree.following(at, scope))
        if (!tree[at].isText() && css::matches(selectors, elements, at)) found.push_back(at);
    return found;
}

std::vector<NodeId> selectedIn(const Tree& tree, const css::SelectorList& selectors) {
    const TreeElements elements(tree);
    std::vector<NodeId> found;
    for (NodeId at = 0; at < tree.size(); ++at)
        if (!tree[at].isText() && css::matches(selectors, elements, at)) found.push_back(at);
    return found;
}

bool isWithinLimits(const Tree& tree) {
    std::size_t elements = 0;
    std::vector<std::size_t> depth(tree.size());
    for (NodeId at = 0; at < tree.size(); ++at) {
        if (tree[at].parent != noNode) depth[at] = depth[tree[at].parent] + 1;
        if (!tree[at].isText()) ++elements;
        if (depth[at] > deepestRow || elements > largestRow) return false;
    }
    return true;
}

}  // namespace tenter::markup
