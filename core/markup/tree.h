// A page as a tree: elements and text in one list, each known by its index. Nothing of it is run or fetched.
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/problem.h"

namespace tenter::markup {

/// A node's index in its tree. A parsed tree holds its nodes in document order, so that of two nodes the one
/// that starts first has the lower index.
using NodeId = std::uint32_t;
inline constexpr NodeId noNode = 0xFFFFFFFF;

/// Which language an element is of: HTML, or one that stands within it. HTML § 13.2.6.5.
enum class Space { Html, Svg, MathMl };

struct Attribute {
    std::string name;  ///< as the DOM has it: lower case in HTML; with its prefix where it has one
    std::string value;
    friend bool operator==(const Attribute&, const Attribute&) = default;
};

struct Node {
    std::string name;  ///< an element's tag, as the DOM has it; empty for text
    std::string text;  ///< a text's content, UTF-8
    Space space = Space::Html;
    std::vector<Attribute> attributes;
    NodeId parent = noNode;
    NodeId firstChild = noNode;
    NodeId lastChild = noNode;
    NodeId next = noNode;      ///< sibling
    NodeId previous = noNode;  ///< sibling
    [[nodiscard]] bool isText() const { return name.empty(); }
    [[nodiscard]] bool isHtml(std::string_view tag) const { return space == Space::Html && name == tag; }
    /// The value of an attribute; null without it.
    [[nodiscard]] const std::string* find(std::string_view attribute) const;
    /// The classes, in the order written. HTML § 3.2.6.
    [[nodiscard]] std::vector<std::string_view> classes() const;
    [[nodiscard]] bool hasClass(std::string_view name) const;
};

/// Elements and text. Comments and the document type are not kept.
class Tree {
public:
    [[nodiscard]] bool isEmpty() const { return nodes_.empty(); }
    /// How many nodes there are; the first, 0, is the root.
    [[nodiscard]] NodeId size() const { return static_cast<NodeId>(nodes_.size()); }
    [[nodiscard]] const Node& operator[](NodeId node) const { return nodes_[node]; }
    [[nodiscard]] Node& operator[](NodeId node) { return nodes_[node]; }

    /// Adds an element as the last child of `parent`, or as root (`noNode`).
    NodeId addElement(NodeId parent, std::string name, Space space, std::vector<Attribute> attributes);
    /// Adds text as the last child of `parent`; it joins text that is there.
    void addText(NodeId parent, std::string_view text);

    /// The node after `node` in document order within `top`, or `noNode`.
    [[nodiscard]] NodeId following(NodeId node, NodeId top) const;
    /// The same, passing over what is in `node`.
    [[nodiscard]] NodeId past(NodeId node, NodeId top) const;
    [[nodiscard]] bool isWithin(NodeId node, NodeId top) const;  ///< true for `top` itself
    [[nodiscard]] std::vector<NodeId> elementChildren(NodeId node) const;
    /// The elements between `top` and `node`, both left out, outermost first.
    [[nodiscard]] std::vector<NodeId> between(NodeId top, NodeId node) const;
    /// All text in `node` as it is written. DOM § 4.4, textContent.
    [[nodiscard]] std::string textOf(NodeId node) const;
    /// The page's body; `noNode` if there is none.
    [[nodiscard]] NodeId body() const;

    /// True if both hold the same nodes, each at the same place.
    friend bool operator==(const Tree& left, const Tree& right);

private:
    NodeId add(NodeId parent, Node node);
    std::deque<Node> nodes_;
};

/// Bytes of the largest page that is parsed.
inline constexpr std::size_t largestPage = 20U << 20U;

/// Parses HTML (UTF-8) as browsers do, HTML § 13.2. Whatever the text, there are html, head and body, unless
/// it is a page of frames. Empty, with one problem, for a page too large, or one that takes more than
/// `seconds` of the processor or a memory out of proportion, as elements nested some ten thousands deep do.
std::optional<Tree> parse(std::string_view html, const std::string& file, project::Problems& problems,
                          double seconds = 1);

/// Tag names that have no end tag. HTML § 13.1.2.
bool isVoid(const Node& node);
/// Elements that stand in a line of text, and what of them does: links, emphasis, buttons, pictures. HTML
/// § 3.2.5.2.5.
bool isPhrasing(const Node& node);

/// White space as HTML has it: tab, line feed, form feed, carriage return, space. Infra § 4.6.
constexpr bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\f' || c == '\r';
}
bool isBlank(std::string_view text);

}  // namespace tenter::markup
