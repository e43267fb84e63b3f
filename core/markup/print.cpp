#include "markup/print.h"

#include <algorithm>
#include <array>

namespace tenter::markup {

namespace {

// Elements whose text is not escaped. HTML § 13.3.
bool holdsRawText(const Node& node) {
    static constexpr std::array<std::string_view, 7> names{"style",   "script",   "xmp",      "iframe",
                                                           "noembed", "noframes", "plaintext"};
    return node.space == Space::Html && std::ranges::find(names, node.name) != names.end();
}

void appendEscaped(std::string& out, std::string_view text, bool isAttribute) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '&') {
            out += "&amp;";
        } else if (c == '<') {
            out += "&lt;";
        } else if (c == '>') {
            out += "&gt;";
        } else if (c == '"' && isAttribute) {
            out += "&quot;";
        } else if (c == '\r') {
            // Without an escape it would be parsed as a line feed.
            out += "&#13;";
        } else if (c == '\xC2' && text.substr(i, 2) == "\xC2\xA0") {
            out += "&nbsp;";
            ++i;
        } else {
            out += c;
        }
    }
}

void appendStart(std::string& out, const Tree& tree, NodeId id) {
    const Node& node = tree[id];
    out += '<';
    out += node.name;
    for (const Attribute& attribute : node.attributes) {
        out += ' ';
        out += attribute.name;
        if (attribute.value.empty()) continue;
        out += "=\"";
        appendEscaped(out, attribute.value, true);
        out += '"';
    }
    out += '>';
    // Parsers drop the first line feed in these elements.
    const bool losesFeed = node.isHtml("pre") || node.isHtml("textarea") || node.isHtml("listing");
    if (losesFeed && node.firstChild != noNode && tree[node.firstChild].text.starts_with('\n')) out += '\n';
}

void appendNode(std::string& out, const Tree& tree, NodeId id) {
    const Node& node = tree[id];
    if (!node.isText()) {
        appendStart(out, tree, id);
    } else if (node.parent != noNode && holdsRawText(tree[node.parent])) {
        out += node.text;
    } else {
        appendEscaped(out, node.text, false);
    }
}

void appendEnd(std::string& out, const Node& node) {
    if (node.isText() || isVoid(node)) return;
    out += "</";
    out += node.name;
    out += '>';
}

// True if the start tag of the body can be left out, because the next content starts the body.
bool bodyIsPlain(const Tree& tree, NodeId body) {
    if (!tree[body].attributes.empty()) return false;
    const NodeId first = tree[body].firstChild;
    if (first == noNode) return true;
    static constexpr std::array<std::string_view, 16> forHead{
        "base", "basefont", "bgsound",  "body",     "frame",  "frameset", "head",     "html",
        "link", "meta",     "noframes", "noscript", "script", "style",    "template", "title"};
    return !tree[first].isText() && std::ranges::find(forHead, tree[first].name) == forHead.end();
}

}  // namespace

std::string printed(const Tree& tree, NodeId top) {
    std::string out;
    for (NodeId at = top; at != noNode;) {
        appendNode(out, tree, at);
        if (tree[at].firstChild != noNode) {
            at = tree[at].firstChild;
            continue;
        }
        appendEnd(out, tree[at]);
        while (at != top && tree[at].next == noNode) {
            at = tree[at].parent;
            appendEnd(out, tree[at]);
        }
        at = at == top ? noNode : tree[at].next;
    }
    return out;
}

std::string printed(const Tree& tree) {
    if (tree.isEmpty()) return {};
    std::string out;
    if (!tree[0].attributes.empty()) appendStart(out, tree, 0);
    for (NodeId child = tree[0].firstChild; child != noNode; child = tree[child].next) {
        const Node& node = tree[child];
        const bool isHead = node.isHtml("head");
        if (isHead && node.attributes.empty() && node.firstChild == noNode) continue;
        if (!node.isHtml("body") || !bodyIsPlain(tree, child)) {
            out += printed(tree, child);
            continue;
        }
        for (NodeId inner = node.firstChild; inner != noNode; inner = tree[inner].next) {
            if (tree[inner].isText())
                appendEscaped(out, tree[inner].text, false);
            else
                out += printed(tree, inner);
        }
    }
    return out;
}

}  // namespace tenter::markup
