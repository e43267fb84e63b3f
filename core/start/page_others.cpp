// Elements in the cards of a page that are no parts and take room.
#include <algorithm>
#include <array>
#include <set>

#include "markup/class_words.h"
#include "markup/page_lines.h"
#include "start/page_piece.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::NodeId;

/// Elements that are read in an interval. Cards have fewer.
constexpr std::size_t mostOthers = 2000;

/// Elements with a size of their own, besides pictures that are parts. HTML § 15.4, § 15.5.
bool isReplaced(const markup::Node& node) {
    constexpr std::array tags{"audio", "canvas", "embed",    "hr",     "iframe",   "img",  "input",
                              "meter", "object", "progress", "select", "textarea", "video"};
    return node.name == "svg" || std::ranges::any_of(tags, [&](const char* tag) { return node.isHtml(tag); });
}

class OthersReader {
public:
    explicit OthersReader(const PieceContext& context) : context_(context), tree_(context.row.tree) {}

    void read() {
        for (const markup::GivenCard& card : context_.row.cards)
            for (const markup::GivenPart& part : card.parts) {
                parts_.insert(part.node);
                around_.insert(part.wrappers.begin(), part.wrappers.end());
            }
        std::size_t count = 0;
        for (const markup::GivenCard& card : context_.row.cards)
            for (NodeId at = tree_.following(card.node, card.node);
                 at != markup::noNode && count < mostOthers; ++count)
                at = isDone(at) ? tree_.past(at, card.node) : tree_.following(at, card.node);
    }

private:
    [[nodiscard]] std::string value(NodeId node, const std::string& property) const {
        return context_.styles.value(node, property);
    }

    /// True if nothing inside the element needs to be read: a part, what takes no room, or what was reported.
    bool isDone(NodeId node) {
        if (tree_[node].isText() || parts_.contains(node)) return true;
        if (around_.contains(node)) return false;
        const bool isOut = value(node, "display") == "none" || markup::isHidden(tree_[node]) ||
                           markup::isIn(value(node, "position"), {"absolute", "fixed"});
        if (isOut) return true;
        const std::optional<std::string> property = roomOf(node);
        if (property) report(node, *property);
        return property.has_value() || tree_[node].space != markup::Space::Html;
    }

    /// The property that makes the element high: empty for a replaced element; nothing if it takes no room.
    [[nodiscard]] std::optional<std::string> roomOf(NodeId node) const {
        if (isReplaced(tree_[node]) && value(node, "height").empty()) return std::string();
        // The height and the padding of a box in a line take no room. CSS 2 § 10.6.1.
        const std::string around = value(tree_[node].parent, "display");
        const bool isItem =
            around.find("flex") != std::string::npos || around.find("grid") != std::string::npos;
        if (!isItem && markup::isIn(value(node, "display"), {"", "inline"})) return std::nullopt;
        for (const char* property : {"height", "min-height", "padding-top", "padding-bottom",
                                     "border-top-width", "border-bottom-width"}) {
            const std::string text = value(node, property);
            if (text.empty() || text == "auto") continue;
            const std::string name(property);
            const Line line =
                name.starts_with("border")
                    ? borderAt(context_, node, name.find("top") != std::string::npos ? "top" : "bottom")
                    : context_.styles.length(node, name, context_.container.width, "0").value_or(Line{});
            if (context_.at(line) > 0.5) return name;
            if (name == "height" && text.find('%') == std::string::npos) return std::nullopt;
        }
        if (isReplaced(tree_[node])) return std::string();
        return std::nullopt;
    }

    void report(NodeId node, const std::string& property) {
        const std::string* classes = tree_[node].find("class");
        std::string element = "<" + tree_[node].name;
        if (classes != nullptr) element += " class=\"" + classes->substr(0, 80) + "\"";
        element += ">";
        if (property.empty())
            context_.notes.add(
                "other-" + element,
                wording::say("%1 in the cards is no part. Its room is not in the layout of the project.",
                             {element}));
        else
            context_.notes.add(
                "other-" + element,
                wording::say("%1: %2 in the cards is no part. Its room is not in the layout of the project.",
                             {context_.notes.written(context_.styles, node, property), element}));
    }

    const PieceContext& context_;
    const markup::Tree& tree_;
    std::set<NodeId> parts_, around_;
};

}  // namespace

void noteOthers(const PieceContext& context) {
    OthersReader(context).read();
}

}  // namespace tenter::start
