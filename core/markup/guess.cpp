#include "markup/guess.h"

#include <algorithm>
#include <map>
#include <set>

#include "markup/class_words.h"
#include "markup/features.h"

namespace tenter::markup {

namespace {

constexpr int largestCard = 400;  // nodes

// A score for how much an element looks like a card; 0: not at all.
double richness(const Features& features) {
    if (features.nodes > largestCard || features.letters == 0 || features.headings > 2 ||
        features.pictures > 3)
        return 0;
    double rich = features.letters >= 40 ? 2 : 1;
    if (features.pictures > 0) rich += features.pictures == 1 ? 3 : 2;
    if (features.headings > 0) rich += features.headings == 1 ? 3 : 2;
    if (features.links >= 1 && features.links <= 3) rich += 1;
    return rich < 3 ? 0 : rich;
}

// The tag of an element, and its tag with each stable class.
std::vector<std::string> kindsOf(const Node& node) {
    std::vector<std::string> kinds{node.name};
    for (const std::string_view name : node.classes())
        if (isStable(name)) kinds.push_back(node.name + "." + std::string(name));
    return kinds;
}

std::set<std::string> kindsWithin(const Tree& tree, NodeId top) {
    std::set<std::string> kinds;
    for (NodeId at = top; at != noNode; at = tree.following(at, top)) {
        if (tree[at].isText()) continue;
        for (std::string& kind : kindsOf(tree[at]))
            kinds.insert(std::move(kind));
    }
    return kinds;
}

// The similarity of elements, from 0 to 1: the kinds each shares with the first, as a share of all kinds of
// both.
double likeness(const Tree& tree, const std::vector<NodeId>& nodes) {
    const std::set<std::string> first = kindsWithin(tree, nodes.front());
    double sum = 0;
    for (std::size_t i = 1; i < nodes.size(); ++i) {
        const std::set<std::string> other = kindsWithin(tree, nodes[i]);
        const auto shared = static_cast<double>(
            std::ranges::count_if(other, [&](const std::string& kind) { return first.contains(kind); }));
        sum += shared / (static_cast<double>(first.size() + other.size()) - shared);
    }
    return sum / static_cast<double>(nodes.size() - 1);
}

// Those of `nodes` that have the most common kind.
std::vector<NodeId> mostAlike(const Tree& tree, const std::vector<NodeId>& nodes) {
    std::map<std::string, std::size_t> counts;
    for (const NodeId node : nodes)
        for (const std::string& kind : kindsOf(tree[node]))
            ++counts[kind];
    std::string best;
    for (const auto& [kind, count] : counts)
        if (best.empty() || count > counts[best]) best = kind;
    std::vector<NodeId> alike;
    for (const NodeId node : nodes) {
        const std::vector<std::string> kinds = kindsOf(tree[node]);
        if (std::ranges::find(kinds, best) != kinds.end()) alike.push_back(node);
    }
    return alike;
}

struct RowCandidate {
    double score = 0;
    std::vector<NodeId> cards;
};

RowCandidate asRow(const Tree& tree, const std::vector<Features>& features, NodeId node) {
    std::vector<NodeId> rich;
    for (const NodeId child : tree.elementChildren(node))
        if (richness(features[child]) > 0) rich.push_back(child);
    if (rich.size() < 2) return {};
    RowCandidate candidate;
    candidate.cards = mostAlike(tree, rich);
    if (candidate.cards.size() < 2) return {};
    double sum = 0;
    int letters = 0;
    for (const NodeId card : candidate.cards) {
        sum += richness(features[card]);
        letters += features[card].letters;
    }
    const auto count = static_cast<double>(candidate.cards.size());
    const double alike = likeness(tree, candidate.cards);
    // Text next to the children lowers the score.
    const double own = static_cast<double>(letters) / std::max(1, features[node].letters);
    candidate.score =
        sum / count * (0.3 + 0.7 * alike) * (0.6 + 0.1 * std::min(count, 4.0)) * (0.5 + 0.5 * own);
    return candidate;
}

bool namesACard(const Node& node) {
    return node.isHtml("article") ||
           hasWord(node, {"box", "card", "entry", "item", "panel", "teaser", "tile"});
}

// The only child element of an element; `noNode` if there are more, or text.
NodeId onlyChild(const Tree& tree, NodeId node) {
    NodeId only = noNode;
    for (NodeId child = tree[node].firstChild; child != noNode; child = tree[child].next) {
        if (tree[child].isText() && isBlank(tree[child].text)) continue;
        if (only != noNode || tree[child].isText()) return noNode;
        only = child;
    }
    return only;
}

// The cards, if each column contains exactly one.
std::vector<NodeId> withinColumns(const Tree& tree, std::vector<NodeId> columns) {
    std::vector<NodeId> inner;
    for (const NodeId column : columns) {
        const NodeId only = onlyChild(tree, column);
        if (only == noNode || namesACard(tree[column]) || !namesACard(tree[only])) return columns;
        inner.push_back(only);
    }
    return inner;
}

}  // namespace

std::optional<GuessedRow> guessRow(const Tree& page) {
    if (page.isEmpty()) return std::nullopt;
    const std::vector<Features> features = featuresOf(page);
    RowCandidate best;
    NodeId row = noNode;
    for (NodeId at = 0; at < page.size(); ++at) {
        if (page[at].isText() || features[at].letters == 0) continue;
        RowCandidate candidate = asRow(page, features, at);
        if (candidate.score <= best.score) continue;
        best = std::move(candidate);
        row = at;
    }
    if (row == noNode) return std::nullopt;
    return GuessedRow{row, withinColumns(page, std::move(best.cards))};
}

std::vector<NodeId> guessCards(const Tree& page, NodeId row) {
    const std::vector<Features> features = featuresOf(page);
    RowCandidate candidate = asRow(page, features, row);
    if (candidate.cards.empty()) {
        for (const NodeId child : page.elementChildren(row))
            if (features[child].letters > 0 || features[child].pictures > 0) candidate.cards.push_back(child);
    }
    return withinColumns(page, std::move(candidate.cards));
}

}  // namespace tenter::markup
