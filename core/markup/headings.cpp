#include "markup/headings.h"

namespace tenter::markup {

namespace {

/// The level of an element with the role heading and no level. WAI-ARIA 1.2, heading.
constexpr int usualLevel = 2;

int digitOf(char c) {
    return c >= '1' && c <= '6' ? c - '0' : 0;
}

}  // namespace

int headingLevelOf(const Node& node) {
    if (const std::string* role = node.find("role")) {
        if (*role != "heading") return 0;
        const std::string* said = node.find("aria-level");
        const int level = said != nullptr && said->size() == 1 ? digitOf((*said)[0]) : 0;
        if (level > 0) return level;
    }
    if (node.space == Space::Html && node.name.size() == 2 && node.name[0] == 'h') {
        const int level = digitOf(node.name[1]);
        if (level > 0) return level;
    }
    return node.find("role") != nullptr ? usualLevel : 0;
}

std::optional<int> levelBefore(const Tree& page, NodeId row) {
    for (NodeId at = row; at-- > 0;)
        if (const int level = headingLevelOf(page[at]); level > 0) return level;
    return std::nullopt;
}

}  // namespace tenter::markup
