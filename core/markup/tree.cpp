#include "markup/tree.h"

#include <algorithm>
#include <array>

namespace tenter::markup {

namespace {

bool sameNode(const Node& left, const Node& right) {
    return left.parent == right.parent && left.next == right.next && left.space == right.space &&
           left.name == right.name && left.text == right.text && left.attributes == right.attributes;
}

}  // namespace

const std::string* Node::find(std::string_view attribute) const {
    const auto found = std::ranges::find(attributes, attribute, &Attribute::name);
    return found == attributes.end() ? nullptr : &found->value;
}

std::vector<std::string_view> Node::classes() const {
    std::vector<std::string_view> names;
    const std::string* value = find("class");
    if (value == nullptr) return names;
    const std::string_view list = *value;
    for (std::size_t at = 0; at < list.size();) {
        const std::size_t start = at;
        while (at < list.size() && !isSpace(list[at]))
            ++at;
        if (at > start) names.push_back(list.substr(start, at - start));
        ++at;
    }
    return names;
}

bool Node::hasClass(std::string_view wanted) const {
    const std::vector<std::string_view> names = classes();
    return std::ranges::find(names, wanted) != names.end();
}

NodeId Tree::add(NodeId parent, Node node) {
    const NodeId id = size();
    node.parent = parent;
    if (parent != noNode) {
        Node& above = nodes_[parent];
        node.previous = above.lastChild;
        (above.lastChild == noNode ? above.firstChild : nodes_[above.lastChild].next) = id;
        above.lastChild = id;
    }
    nodes_.push_back(std::move(node));
    return id;
}

NodeId Tree::addElement(NodeId parent, std::string name, Space space, std::vector<Attribute> attributes) {
    Node node;
    node.name = std::move(name);
    node.space = space;
    node.attributes = std::move(attributes);
    return add(parent, std::move(node));
}

void Tree::addText(NodeId parent, std::string_view text) {
    if (text.empty() || parent == noNode) return;
    const NodeId last = nodes_[parent].lastChild;
    if (last != noNode && nodes_[last].isText()) {
        nodes_[last].text += text;
        return;
    }
    Node node;
    node.text = text;
    add(parent, std::move(node));
}

NodeId Tree::following(NodeId node, NodeId top) const {
    const NodeId child = nodes_[node].firstChild;
    return child != noNode ? child : past(node, top);
}

NodeId Tree::past(NodeId node, NodeId top) const {
    for (; node != top && node != noNode; node = nodes_[node].parent)
        if (nodes_[node].next != noNode) return nodes_[node].next;
    return noNode;
}

bool Tree::isWithin(NodeId node, NodeId top) const {
    while (node != noNode && node != top)
        node = nodes_[node].parent;
    return node == top;
}

std::vector<NodeId> Tree::elementChildren(NodeId node) const {
    std::vector<NodeId> found;
    for (NodeId child = nodes_[node].firstChild; child != noNode; child = nodes_[child].next)
        if (!nodes_[child].isText()) found.push_back(child);
    return found;
}

std::vector<NodeId> Tree::between(NodeId top, NodeId node) const {
    std::vector<NodeId> chain;
    if (node == top) return chain;
    for (NodeId at = nodes_[node].parent; at != noNode && at != top; at = nodes_[at].parent)
        chain.push_back(at);
    std::ranges::reverse(chain);
    return chain;
}

std::string Tree::textOf(NodeId node) const {
    std::string text;
    for (NodeId at = node; at != noNode; at = following(at, node))
        text += nodes_[at].text;
    return text;
}

NodeId Tree::body() const {
    if (nodes_.empty()) return noNode;
    for (NodeId child = nodes_[0].firstChild; child != noNode; child = nodes_[child].next)
        if (nodes_[child].isHtml("body")) return child;
    return noNode;
}

bool operator==(const Tree& left, const Tree& right) {
    return std::ranges::equal(left.nodes_, right.nodes_, sameNode);
}

bool isVoid(const Node& node) {
    static constexpr std::array<std::string_view, 18> names{
        "area", "base",  "basefont", "bgsound", "br",   "col",   "embed",  "frame", "hr",
        "img",  "input", "keygen",   "link",    "meta", "param", "source", "track", "wbr"};
    return node.space == Space::Html && std::ranges::find(names, node.name) != names.end();
}

bool isPhrasing(const Node& node) {
    static constexpr std::array<std::string_view, 50> names{
        "a",        "abbr", "acronym", "audio", "b",        "bdi",    "bdo",   "big",    "br",     "button",
        "canvas",   "cite", "code",    "data",  "del",      "dfn",    "em",    "font",   "i",      "img",
        "input",    "ins",  "kbd",     "label", "map",      "mark",   "meter", "nobr",   "output", "picture",
        "progress", "q",    "ruby",    "s",     "samp",     "select", "small", "source", "span",   "strike",
        "strong",   "sub",  "sup",     "svg",   "textarea", "time",   "tt",    "u",      "var",    "wbr"};
    if (node.isText() || node.space != Space::Html) return true;
    if (node.isBlock) return false;
    return std::ranges::find(names, node.name) != names.end();
}

bool isBlank(std::string_view text) {
    return std::ranges::all_of(text, isSpace);
}

}  // namespace tenter::markup
