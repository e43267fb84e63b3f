#include "start/page_chrome.h"

#include <algorithm>
#include <vector>

namespace tenter::start {

namespace {

using markup::GivenCard;
using markup::NodeId;

bool hasChrome(css::Styles& styles, NodeId node) {
    const auto isSet = [&](const char* property, std::initializer_list<std::string_view> usual) {
        return std::ranges::find(usual, styles.value(node, property)) == usual.end();
    };
    return isSet("background-color", {"", "none", "transparent"}) ||
           isSet("border-top-style", {"", "none", "hidden"}) ||
           isSet("border-bottom-style", {"", "none", "hidden"}) || isSet("box-shadow", {"", "none"});
}

/// The number of wrappers that all parts of the card share, from the outermost.
std::size_t sharedWrappers(const GivenCard& card) {
    if (card.parts.empty()) return 0;
    std::size_t shared = card.parts.front().wrappers.size();
    for (const markup::GivenPart& part : card.parts) {
        std::size_t same = 0;
        while (same < std::min(shared, part.wrappers.size()) &&
               part.wrappers[same] == card.parts.front().wrappers[same])
            ++same;
        shared = same;
    }
    return shared;
}

/// How many wrappers are around the element with the chrome, itself included; 0 if the card has it.
std::size_t depthOf(const GivenCard& card, css::Styles& styles) {
    if (hasChrome(styles, card.node)) return 0;
    const std::size_t shared = sharedWrappers(card);
    for (std::size_t depth = 0; depth < shared; ++depth)
        if (hasChrome(styles, card.parts.front().wrappers[depth])) return depth + 1;
    return 0;
}

}  // namespace

void moveToChrome(markup::GivenRow& row, css::Styles& styles) {
    if (row.cards.empty()) return;
    const std::size_t depth = depthOf(row.cards.front(), styles);
    if (depth == 0) return;
    for (const GivenCard& card : row.cards)
        if (sharedWrappers(card) < depth) return;
    for (GivenCard& card : row.cards) {
        const std::vector<NodeId> inside(
            card.parts.front().wrappers.begin(),
            card.parts.front().wrappers.begin() + static_cast<std::ptrdiff_t>(depth));
        card.wrappers.push_back(card.node);
        card.wrappers.insert(card.wrappers.end(), inside.begin(), inside.end() - 1);
        card.node = inside.back();
        for (markup::GivenPart& part : card.parts)
            part.wrappers.erase(part.wrappers.begin(),
                                part.wrappers.begin() + static_cast<std::ptrdiff_t>(depth));
    }
}

}  // namespace tenter::start
