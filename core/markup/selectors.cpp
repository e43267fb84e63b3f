#include "markup/selectors.h"

#include <algorithm>
#include <map>

#include "markup/class_words.h"
#include "markup/matching.h"
#include "units/ascii.h"

namespace tenter::markup {

namespace {

// A tag as a selector, with special characters escaped. CSS Syntax 3 § 4.3.7.
std::string tagSelector(const Node& node) {
    std::string out;
    for (const char c : node.name) {
        const bool isPlain = units::isWordCharacter(c) || static_cast<unsigned char>(c) >= 0x80;
        if (!isPlain) out += '\\';
        out += c;
    }
    return out;
}

}  // namespace

std::vector<std::string> SelectorMaker::classesOf(NodeId node) const {
    constexpr std::size_t most = 12;
    std::vector<std::string> names;
    for (const std::string_view name : tree_[node].classes())
        if (names.size() < most && isStable(name) && std::ranges::find(avoided_, name) == avoided_.end())
            names.emplace_back(name);
    return names;
}

// The classes that all nodes have, in the order of the first.
std::vector<std::string> SelectorMaker::sharedClasses(const std::vector<NodeId>& nodes) const {
    std::vector<std::string> shared = classesOf(nodes.front());
    std::erase_if(shared, [&](const std::string& name) {
        return !std::ranges::all_of(nodes, [&](NodeId node) { return tree_[node].hasClass(name); });
    });
    return shared;
}

// The classes of ancestors inside the scope that all nodes have; those nearest to the first node come first.
std::vector<std::string> SelectorMaker::sharedAncestors(const std::vector<NodeId>& nodes) const {
    constexpr std::size_t most = 8;
    std::vector<std::string> shared;
    const auto standsIn = [&](NodeId node, const std::string& name) {
        for (NodeId at = tree_[node].parent; at != scope_ && at != noNode; at = tree_[at].parent)
            if (tree_[at].hasClass(name)) return true;
        return false;
    };
    for (NodeId at = tree_[nodes.front()].parent; at != scope_ && at != noNode; at = tree_[at].parent) {
        for (const std::string& name : classesOf(at)) {
            if (shared.size() == most) return shared;
            if (std::ranges::find(shared, name) != shared.end()) continue;
            if (std::ranges::all_of(nodes, [&](NodeId node) { return standsIn(node, name); }))
                shared.push_back(name);
        }
    }
    return shared;
}

std::vector<NodeId> SelectorMaker::selected(const std::string& selector) const {
    css::Problems unread;
    std::optional<css::SelectorList> list = css::readSelectors(selector, unread);
    return list ? selectedWithin(tree_, scope_, std::move(*list)) : std::vector<NodeId>();
}

// One selector by class or tag, with or without a class of an ancestor; empty if none is exact.
std::string SelectorMaker::byKind(const std::vector<NodeId>& wanted) const {
    const bool sameTag = std::ranges::all_of(
        wanted, [&](NodeId node) { return tree_[node].name == tree_[wanted.front()].name; });
    const std::string tag = sameTag ? tagSelector(tree_[wanted.front()]) : "";
    std::vector<std::string> own;
    for (const std::string& name : sharedClasses(wanted))
        own.push_back("." + name);
    if (sameTag) {
        for (std::size_t i = 0, count = own.size(); i < count; ++i)
            own.push_back(tag + own[i]);
    }
    for (const std::string& candidate : own)
        if (selected(candidate) == wanted) return candidate;
    if (sameTag) own.push_back(tag);
    for (const std::string& ancestor : sharedAncestors(wanted)) {
        for (const std::string& candidate : own) {
            std::string pair = "." + ancestor;
            pair += ' ';
            pair += candidate;
            if (selected(pair) == wanted) return pair;
        }
    }
    return sameTag && selected(tag) == wanted ? tag : "";
}

// `:nth-of-type()` of an element.
std::string SelectorMaker::placeAmongType(NodeId node) const {
    int place = 1;
    for (NodeId before = tree_[node].previous; before != noNode; before = tree_[before].previous)
        if (tree_[before].name == tree_[node].name) ++place;
    return ":nth-of-type(" + std::to_string(place) + ")";
}

// A path of child combinators that all nodes have: from a class that is a few levels above them, or from the
// scope; then with the position of the last element among its siblings.
std::string SelectorMaker::byPath(const std::vector<NodeId>& wanted) const {
    const auto pathFrom = [&](NodeId node, const auto& stops) {
        std::string path;
        NodeId at = node;
        for (; at != scope_ && at != noNode && (at == node || !stops(at)); at = tree_[at].parent)
            path.insert(0, " > " + tagSelector(tree_[at]));
        if (at == scope_) return ":scope" + path;
        return at == noNode ? std::string() : "." + classesOf(at).front() + path;
    };
    const auto isNamed = [&](NodeId at) { return !classesOf(at).empty(); };
    const auto never = [](NodeId) { return false; };
    const std::string nearest = pathFrom(wanted.front(), isNamed);
    const std::string whole = pathFrom(wanted.front(), never);
    for (const std::string& path : {nearest, whole}) {
        if (path.empty()) continue;
        for (const std::string& position : {std::string(), placeAmongType(wanted.front()),
                                            std::string(":last-child"), std::string(":only-child")}) {
            std::string candidate = path + position;
            if (selected(candidate) == wanted) return candidate;
        }
    }
    return {};
}

// Selectors separated by commas, one for the nodes of each tag or class.
std::string SelectorMaker::byKinds(const std::vector<NodeId>& wanted) const {
    std::map<std::string, std::vector<NodeId>> kinds;
    for (const NodeId node : wanted) {
        const std::vector<std::string> classes = classesOf(node);
        kinds[tree_[node].name + (classes.empty() ? "" : "." + classes.front())].push_back(node);
    }
    if (kinds.size() < 2 || kinds.size() > 4) return {};
    std::string out;
    for (const auto& [unused, nodes] : kinds) {
        std::string one = byKind(nodes);
        if (one.empty()) one = byPath(nodes);
        if (one.empty()) return {};
        out += (out.empty() ? "" : ", ") + one;
    }
    return out;
}

// The path to the node from the nearest ancestor with a class, or from the scope.
std::string SelectorMaker::positionOf(NodeId node, bool toScope) const {
    std::string out;
    for (NodeId at = node; at != scope_ && at != noNode; at = tree_[at].parent) {
        const std::vector<std::string> classes = classesOf(at);
        if (at != node && !toScope && !classes.empty()) return "." + classes.front() + " > " + out;
        const std::string step = tagSelector(tree_[at]) + placeAmongType(at);
        if (!out.empty()) out.insert(0, " > ");
        out.insert(0, step);
    }
    return ":scope > " + out;
}

// Selectors by position; empty if there are too many to be readable.
std::string SelectorMaker::byPosition(const std::vector<NodeId>& wanted, bool toScope) const {
    constexpr std::size_t most = 40;
    std::vector<std::string> ways;
    std::string out;
    for (const NodeId node : wanted) {
        if (ways.size() == most) return {};
        std::string way = positionOf(node, toScope);
        if (std::ranges::find(ways, way) != ways.end()) continue;
        out += (out.empty() ? "" : ", ") + way;
        ways.push_back(std::move(way));
    }
    return out;
}

Derived SelectorMaker::derived(const std::vector<NodeId>& wanted) const {
    if (std::string kind = byKind(wanted); !kind.empty()) return {std::move(kind), true};
    if (std::string path = byPath(wanted); !path.empty()) return {std::move(path), true};
    if (std::string kinds = byKinds(wanted); !kinds.empty()) return {std::move(kinds), true};
    for (const bool toScope : {false, true}) {
        std::string position = byPosition(wanted, toScope);
        if (!position.empty() && selected(position) == wanted) return {std::move(position), true};
    }
    return {tagSelector(tree_[wanted.front()]), false};
}

}  // namespace tenter::markup
