// What the tests of markup share.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "markup/keep.h"
#include "markup/print.h"
#include "markup/tree.h"

namespace tenter::markup {

/// Every problem on a line of its own.
inline std::string linesOf(const project::Problems& problems) {
    std::string text;
    for (const project::Problem& problem : problems)
        text += problem.line() + "\n";
    return text;
}

/// A tree from HTML; a failure of the test if there is none.
inline Tree treeOf(std::string_view html) {
    project::Problems problems;
    std::optional<Tree> tree = parse(html, "page", problems);
    EXPECT_TRUE(tree) << linesOf(problems);
    return tree ? std::move(*tree) : Tree();
}

/// The first element with that tag, id or class; `noNode` without one.
inline NodeId find(const Tree& tree, std::string_view name) {
    for (NodeId at = 0; at < tree.size(); ++at) {
        const std::string* id = tree[at].find("id");
        if (tree[at].name == name || tree[at].hasClass(name) || (id != nullptr && *id == name)) return at;
    }
    return noNode;
}

/// The tree as html5lib's tests write it: one node a line, each level two spaces further in, attributes
/// sorted.
inline std::string outline(const Tree& tree) {
    std::string out;
    std::size_t depth = 0;
    for (NodeId at = 0; at != noNode;) {
        const Node& node = tree[at];
        const std::string indent = "| " + std::string(depth * 2, ' ');
        if (node.isText()) {
            out += indent + "\"" + node.text + "\"\n";
        } else {
            const char* prefix = node.space == Space::Svg      ? "svg "
                                 : node.space == Space::MathMl ? "math "
                                                               : "";
            out += indent + "<" + prefix + node.name + ">\n";
            for (const Attribute& attribute : node.attributes)
                out += indent + "  " + attribute.name + "=\"" + attribute.value + "\"\n";
        }
        if (node.firstChild != noNode) {
            ++depth;
            at = node.firstChild;
            continue;
        }
        while (at != noNode && tree[at].next == noNode) {
            at = tree[at].parent;
            --depth;
        }
        if (at != noNode) at = tree[at].next;
    }
    return out;
}

}  // namespace tenter::markup
