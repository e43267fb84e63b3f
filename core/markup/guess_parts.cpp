#include <algorithm>

#include "markup/class_words.h"
#include "markup/features.h"
#include "markup/guess.h"

namespace tenter::markup {

namespace {

constexpr int longestHeading = 60;  // bytes of text without white space
constexpr int longestKicker = 40;
constexpr int longestPhrase = 24;  // of phrases that are together on one line

// An element of text that is not divided further.
struct Leaf {
    NodeId node = noNode;
    int letters = 0;
};

class CardReader {
public:
    CardReader(const Tree& tree, NodeId card) : tree_(tree), card_(card), features_(featuresOf(tree, card)) {}

    std::vector<GuessedPart> parts(int& loose) {
        collect(loose);
        const std::size_t heading = findHeading();
        for (std::size_t i = 0; i < leaves_.size(); ++i)
            parts_.push_back({roleOf(i, heading), leaves_[i].node});
        std::ranges::sort(parts_, {}, &GuessedPart::node);
        return parts_;
    }

private:
    [[nodiscard]] const Features& in(NodeId node) const { return features_[node - card_]; }

    [[nodiscard]] bool holdsLooseText(NodeId node) const {
        for (NodeId child = tree_[node].firstChild; child != noNode; child = tree_[child].next)
            if (tree_[child].isText() && !isBlank(tree_[child].text)) return true;
        return false;
    }

    [[nodiscard]] bool isButtonLike(const Node& node) const {
        const std::string* role = node.find("role");
        return node.isHtml("button") || (role != nullptr && *role == "button") ||
               hasWord(node, {"btn", "button", "cta", "more"});
    }
    [[nodiscard]] static bool canBePressed(const Node& node) {
        return node.isHtml("a") || node.isHtml("button");
    }

    // The links and buttons in the element, at any depth, if there is no other text.
    [[nodiscard]] bool holdsOnlyLinks(NodeId node) const {
        bool any = false;
        for (const NodeId child : tree_.elementChildren(node)) {
            if (in(child).letters == 0) continue;
            const bool isButton = isButtonLike(tree_[child]) && !isButtonLike(tree_[node]);
            if (!canBePressed(tree_[child]) && !isButton && (holdsLooseText(child) || !holdsOnlyLinks(child)))
                return false;
            any = true;
        }
        return any;
    }

    // Phrases with classes, one of them long: each is a part on a line of its own.
    [[nodiscard]] bool holdsStackedPhrases(NodeId node) const {
        int count = 0;
        int longest = 0;
        for (const NodeId child : tree_.elementChildren(node)) {
            if (in(child).letters == 0) continue;
            if (tree_[child].find("class") == nullptr) return false;
            ++count;
            longest = std::max(longest, in(child).letters);
        }
        return count > 1 && longest > longestPhrase;
    }

    [[nodiscard]] bool isLeaf(NodeId node) const {
        const Node& element = tree_[node];
        const Features& features = in(node);
        if (features.letters == 0 || features.block) return false;
        if (isHeading(element) || holdsLooseText(node)) return true;
        if (!canBePressed(element) && holdsOnlyLinks(node)) return false;
        if (!element.isHtml("p") && holdsStackedPhrases(node)) return false;
        return features.pictures == 0 || isButtonLike(element) || element.isHtml("p");
    }

    // A phrase inside loose text, which is counted with it.
    [[nodiscard]] bool isInLooseLine(NodeId node) const {
        return isPhrasing(tree_[node]) && holdsLooseText(tree_[node].parent) && !in(node).block &&
               in(node).pictures == 0;
    }

    // Handles a node that is a part or has none; false if there are parts inside it.
    bool take(NodeId at, int& loose) {
        const Node& node = tree_[at];
        if (node.isText()) {
            if (!isBlank(node.text)) ++loose;
            return true;
        }
        if (node.space != Space::Html || isHidden(node)) return true;
        if (node.isHtml("img")) {
            parts_.push_back({"picture", at});
            return true;
        }
        if (isInLooseLine(at)) return true;
        if (!isLeaf(at)) return false;
        leaves_.push_back({at, in(at).letters});
        return true;
    }

    void collect(int& loose) {
        for (NodeId at = tree_.following(card_, card_); at != noNode;)
            at = take(at, loose) ? tree_.past(at, card_) : tree_.following(at, card_);
    }

    [[nodiscard]] bool isButton(std::size_t index) const {
        const Node& node = tree_[leaves_[index].node];
        if (isHeading(node)) return false;
        if (isButtonLike(node)) return canBePressed(node) || leaves_[index].letters <= longestHeading;
        if (!canBePressed(node)) return false;
        const NodeId parent = node.parent;
        if (parent != card_ && isButtonLike(tree_[parent])) return true;
        return index + 1 == leaves_.size() && index > 0;
    }

    // The index of the leaf that is the heading; the number of leaves if none is.
    [[nodiscard]] std::size_t findHeading() const {
        const std::size_t none = leaves_.size();
        for (std::size_t i = 0; i < none; ++i)
            if (isHeading(tree_[leaves_[i].node])) return i;
        for (std::size_t i = 0; i < none; ++i) {
            const Node& node = tree_[leaves_[i].node];
            const bool isBig = node.isHtml("strong") || node.isHtml("b") || node.isHtml("dt") ||
                               hasWord(node, {"heading", "headline", "name", "title"});
            if (isBig && !isButton(i) && leaves_[i].letters <= 2 * longestHeading) return i;
        }
        for (std::size_t i = 0; i < none; ++i) {
            if (isButton(i)) continue;
            const bool longerFollows =
                std::any_of(leaves_.begin() + static_cast<std::ptrdiff_t>(i) + 1, leaves_.end(),
                            [&](const Leaf& leaf) { return leaf.letters > leaves_[i].letters; });
            return leaves_[i].letters <= longestHeading && longerFollows ? i : none;
        }
        return none;
    }

    [[nodiscard]] std::string roleOf(std::size_t index, std::size_t heading) const {
        const Leaf& leaf = leaves_[index];
        if (index == heading) return "heading";
        if (isButton(index)) return "button";
        if (isHeading(tree_[leaf.node])) return "subheading";
        if (hasWord(tree_[leaf.node], {"cost", "fee", "price"})) return "price";
        const bool isBefore = heading < leaves_.size() && index < heading;
        return isBefore && leaf.letters <= longestKicker ? "kicker" : "body";
    }

    const Tree& tree_;
    NodeId card_;
    std::vector<Features> features_;
    std::vector<Leaf> leaves_;
    std::vector<GuessedPart> parts_;
};

}  // namespace

std::vector<GuessedPart> guessParts(const Tree& page, NodeId card, int& loose) {
    return CardReader(page, card).parts(loose);
}

}  // namespace tenter::markup
