#include "markup/block_marks.h"

#include <algorithm>
#include <array>
#include <vector>

#include "css/cascade.h"
#include "markup/browser_sheet.h"
#include "markup/class_words.h"
#include "markup/features.h"
#include "markup/matching.h"

namespace tenter::markup {

namespace {

bool isBlockDisplay(const std::string& display) {
    static constexpr std::array<std::string_view, 6> names{"block", "flex",      "grid",
                                                           "table", "list-item", "flow-root"};
    return std::ranges::find(names, display) != names.end();
}

class Marker {
public:
    Marker(const Tree& page, NodeId row, css::Styles& styles)
        : page_(page), row_(row), styles_(styles), features_(featuresOf(page, row)) {}

    [[nodiscard]] std::vector<NodeId> blocks() {
        std::vector<NodeId> found;
        for (NodeId at = page_.following(row_, row_); at != noNode;) {
            const Node& node = page_[at];
            const bool isDone = node.isText() || isWhole(at);
            if (!isDone && isPhrase(at) && isBlockDisplay(styles_.value(at, "display"))) found.push_back(at);
            at = isDone ? page_.past(at, row_) : page_.following(at, row_);
        }
        return found;
    }

private:
    [[nodiscard]] const Features& in(NodeId node) const { return features_[node - row_]; }

    /// True for an element that is one part with all that is in it.
    [[nodiscard]] bool isWhole(NodeId at) const {
        const Node& node = page_[at];
        if (node.space != Space::Html || isHeading(node) || node.isHtml("p") || node.isHtml("button"))
            return true;
        const bool isButton = hasWord(node, {"btn", "button", "cta"});
        return isButton && in(at).pictures == 0 && in(at).headings == 0;
    }

    [[nodiscard]] bool isPhrase(NodeId at) const {
        const Node& node = page_[at];
        if (!isPhrasing(node) || isVoid(node) || in(at).letters == 0) return false;
        for (NodeId beside = page_[node.parent].firstChild; beside != noNode; beside = page_[beside].next)
            if (page_[beside].isText() && !isBlank(page_[beside].text)) return false;
        return true;
    }

    const Tree& page_;
    NodeId row_;
    css::Styles& styles_;
    std::vector<Features> features_;
};

}  // namespace

void markBlocks(Tree& page, NodeId row, const css::Sheet& sheet, double width) {
    const TreeElements elements(page);
    const css::StyleRules rules(elements, browserSheet(), sheet);
    css::Styles styles(rules, width - 1, width, false);
    for (const NodeId block : Marker(page, row, styles).blocks())
        page[block].isBlock = true;
}

}  // namespace tenter::markup
