// A page as a tree: elements and texts in one list, each known by its index. Nothing in it is run or fetched.
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/problem.h"

namespace tenter::markup {

/// The index of a node in its tree. The nodes of a parsed tree are in document order.
using NodeId = std::uint32_t;
inline constexpr NodeId noNode = 0xFFFFFFFF;

/// The language of an element: HTML, or one embedded in it. HTML § 13.2.6.5.
enum class Space { Html, Svg, MathMl };

/// An attribute of an element.
struct Attribute {
    std::string name;  ///< as in the DOM: lower case in HTML, with its prefix if it has one
    std::string value;
    friend bool operator==(const Attribute&, const Attribute&) = default;
};

/// An element or a text.
struct Node {
    std::string name;  ///< tag of an element, as in the DOM; empty for text
    std::string text;  ///< content of a text, UTF-8
    Space space = Space::Html;
    std::vector<Attribute> attributes;
    NodeId parent = noNode;
    NodeId firstChild = noNode;
    NodeId lastChild = noNode;
    NodeId next = noNode;      ///< sibling
    NodeId previous = noNode;  ///< sibling
    std::uint32_t line = 0;    ///< of a text: its start in the source, from 1; 0: not known
    std::uint32_t column = 0;  ///< the same in characters
    bool isBlock = false;      ///< a phrase that is laid out as a block; see block_marks.h
    [[nodiscard]] bool isText() const { return name.empty(); }
    [[nodiscard]] bool isHtml(std::string_view tag) const { return space == Space::Html && name == tag; }
    /// The value of an attribute; null if there is none.
    [[nodiscard]] const std::string* find(std::string_view attribute) const;
    /// The classes in the order of the attribute. HTML § 3.2.6.
    [[nodiscard]] std::vector<std::string_view> classes() const;
    [[nodiscard]] bool hasClass(std::string_view name) const;
};

/// A tree of elements and texts, without comments and document type.
class Tree {
public:
    [[nodiscard]] bool isEmpty() const { return nodes_.empty(); }
    /// The number of nodes. Node 0 is the root.
    [[nodiscard]] NodeId size() const { return static_cast<NodeId>(nodes_.size()); }
    [[nodiscard]] const Node& operator[](NodeId node) const { return nodes_[node]; }
    [[nodiscard]] Node& operator[](NodeId node) { return nodes_[node]; }

    /// Adds an element as the last child of `parent`, or as the root (`noNode`). Returns its index.
    NodeId addElement(NodeId parent, std::string name, Space space, std::vector<Attribute> attributes);
    /// Adds text at the end of `parent`. It is appended to the last child if that is text.
    void addText(NodeId parent, std::string_view text);

    /// The next node after `node` in document order inside `top`; `noNode` if there is none.
    [[nodiscard]] NodeId following(NodeId node, NodeId top) const;
    /// The same, without the nodes inside `node`.
    [[nodiscard]] NodeId past(NodeId node, NodeId top) const;
    [[nodiscard]] bool isWithin(NodeId node, NodeId top) const;  ///< true for `top` too
    [[nodiscard]] std::vector<NodeId> elementChildren(NodeId node) const;
    /// The elements between `top` and `node`, without these two, outermost first.
    [[nodiscard]] std::vector<NodeId> between(NodeId top, NodeId node) const;
    /// All text in `node`, unchanged. DOM § 4.4, textContent.
    [[nodiscard]] std::string textOf(NodeId node) const;
    /// The body of the page; `noNode` if there is none.
    [[nodiscard]] NodeId body() const;

    /// True if both trees have the same nodes at the same places.
    friend bool operator==(const Tree& left, const Tree& right);

private:
    NodeId add(NodeId parent, Node node);
    std::deque<Node> nodes_;
};

/// The size in bytes of the largest page that is parsed.
inline constexpr std::size_t largestPage = 6U << 20U;

/// The tree of an HTML text (UTF-8), as browsers parse it, HTML § 13.2. It always has html, head and body,
/// except for a page of frames. Empty, with one problem, for a page that is too large, or that takes more
/// than `seconds` of processor time or too much memory, such as one with elements nested ten thousands deep.
std::optional<Tree> parse(std::string_view html, const std::string& file, project::Problems& problems,
                          double seconds = 0.5);

/// True for an element without end tag. HTML § 13.1.2.
bool isVoid(const Node& node);
/// True for phrasing content, which is inside lines of text: links, emphasis, buttons, pictures; not for a
/// phrase that is marked as a block. HTML § 3.2.5.2.5.
bool isPhrasing(const Node& node);

/// True for white space of HTML: tab, line feed, form feed, carriage return, space. Infra § 4.6.
constexpr bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\f' || c == '\r';
}
/// True for a text of white space only.
bool isBlank(std::string_view text);

}  // namespace tenter::markup
