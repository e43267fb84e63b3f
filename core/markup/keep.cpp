#include "markup/keep.h"

#include <algorithm>
#include <array>

#include "markup/print.h"
#include "project/address.h"
#include "units/ascii.h"

namespace tenter::markup {

namespace {

constexpr std::array<std::string_view, 22> droppedElements{
    "applet", "base",    "bgsound",  "embed",    "frame",  "frameset", "iframe",    "link",
    "meta",   "noembed", "noframes", "noscript", "object", "param",    "plaintext", "portal",
    "script", "style",   "template", "title",    "xmp",    "head"};
// Elements of SVG that run, that change attributes over time, or that contain HTML.
constexpr std::array<std::string_view, 9> droppedDrawing{"script",  "style",         "foreignObject",
                                                         "desc",    "title",         "set",
                                                         "animate", "animateMotion", "animateTransform"};
constexpr std::array<std::string_view, 12> addressAttributes{"href",     "xlink:href", "src",    "action",
                                                             "cite",     "data",       "poster", "background",
                                                             "longdesc", "lowsrc",     "dynsrc", "codebase"};
constexpr std::array<std::string_view, 5> droppedAttributes{"srcdoc", "formaction", "ping", "attributionsrc",
                                                            "nonce"};

template <std::size_t n>
bool isIn(const std::array<std::string_view, n>& names, std::string_view name) {
    return std::ranges::find(names, name) != names.end();
}

bool isNameCharacter(char c) {
    return units::isWordCharacter(c) || c == ':' || c == '.' || static_cast<unsigned char>(c) >= 0x80;
}
// True for a name that is the same after printing and parsing.
bool isPlainName(std::string_view name) {
    return !name.empty() && std::ranges::all_of(name, isNameCharacter);
}

bool keepsElement(const Node& node) {
    if (node.space == Space::MathMl || !isPlainName(node.name)) return false;
    if (node.space == Space::Svg) return !isIn(droppedDrawing, node.name);
    return !isIn(droppedElements, node.name);
}

// Candidates of srcset: addresses separated by commas, each with a width or density. HTML § 4.8.4.2.1.
bool areSafeCandidates(std::string_view candidates) {
    for (std::size_t at = 0; at < candidates.size();) {
        const std::size_t end = std::min(candidates.find(',', at), candidates.size());
        if (!project::isSafeAddress(candidates.substr(at, end - at))) return false;
        at = end + 1;
    }
    return true;
}

bool keepsAttribute(const Attribute& attribute) {
    const std::string& name = attribute.name;
    if (!isPlainName(name) || isIn(droppedAttributes, name)) return false;
    if (name.size() > 2 && (name[0] == 'o' || name[0] == 'O') && (name[1] == 'n' || name[1] == 'N'))
        return false;
    if (name == "srcset" || name == "imagesrcset") return areSafeCandidates(attribute.value);
    return !isIn(addressAttributes, name) || project::isSafeAddress(attribute.value);
}

std::vector<Attribute> keptAttributes(const Node& node) {
    std::vector<Attribute> kept;
    std::ranges::copy_if(node.attributes, std::back_inserter(kept), keepsAttribute);
    return kept;
}

// Copies `top` of `from` below `parent` of `to`, without unsafe content. Returns the index of the copy.
NodeId copyKept(const Tree& from, NodeId top, Tree& to, NodeId parent) {
    const NodeId copy = to.addElement(parent, from[top].name, from[top].space, keptAttributes(from[top]));
    NodeId under = copy;  // the copy of the parent of `at`
    NodeId at = from[top].firstChild;
    while (at != noNode) {
        const Node& node = from[at];
        bool goesIn = false;
        if (node.isText()) {
            to.addText(under, node.text);
        } else if (keepsElement(node)) {
            const NodeId element = to.addElement(under, node.name, node.space, keptAttributes(node));
            goesIn = node.firstChild != noNode;
            if (goesIn) under = element;
        }
        if (goesIn) {
            at = node.firstChild;
            continue;
        }
        while (at != top && from[at].next == noNode) {
            at = from[at].parent;
            if (at != top) under = to[under].parent;
        }
        at = at == top ? noNode : from[at].next;
    }
    return copy;
}

// The row and its chain of ancestors.
NodeId copyChain(const Tree& page, NodeId row, Tree& to) {
    std::vector<NodeId> chain = page.between(0, row);
    NodeId parent = to.addElement(noNode, page[0].name, page[0].space, keptAttributes(page[0]));
    to.addElement(parent, "head", Space::Html, {});
    for (const NodeId at : chain)
        parent = to.addElement(parent, page[at].name, page[at].space, keptAttributes(page[at]));
    return copyKept(page, row, to, parent);
}

// The element `steps` levels below the body, each an only child; `noNode` if there are others.
NodeId rowBelow(const Tree& tree, std::size_t steps) {
    NodeId at = tree.body();
    for (; steps > 0 && at != noNode; --steps) {
        const NodeId child = tree[at].firstChild;
        if (child == noNode || tree[child].isText() || tree[child].next != noNode) return noNode;
        at = child;
    }
    return at;
}

}  // namespace

Tree cleaned(const Tree& tree) {
    Tree out;
    if (tree.isEmpty()) return out;
    const NodeId root = out.addElement(noNode, tree[0].name, tree[0].space, keptAttributes(tree[0]));
    out.addElement(root, "head", Space::Html, {});
    if (const NodeId body = tree.body(); body != noNode)
        copyKept(tree, body, out, root);
    else
        out.addElement(root, "body", Space::Html, {});
    return out;
}

std::optional<Kept> keptRow(const Tree& page, NodeId row, const std::string& file,
                            project::Problems& problems) {
    Kept kept;
    kept.row = copyChain(page, row, kept.tree);
    const NodeId body = kept.tree.body();
    const std::size_t steps = kept.row == body ? 0 : kept.tree.between(body, kept.row).size() + 1;
    // Elements that browsers do not nest like this change when parsed again: once, rarely twice.
    for (int round = 0; round < 8; ++round) {
        kept.markup = printed(kept.tree);
        std::optional<Tree> again = parse(kept.markup, file, problems);
        if (!again) return std::nullopt;
        if (*again == kept.tree) return kept;
        kept.tree = cleaned(*again);
        kept.row = rowBelow(kept.tree, steps);
        if (kept.row == noNode) break;
    }
    problems.push_back({file, "", "The elements of the row are nested in a way that browsers change.",
                        "Close each element where it ends, and put no link inside another."});
    return std::nullopt;
}

}  // namespace tenter::markup
