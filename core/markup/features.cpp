#include "markup/features.h"

#include <algorithm>

#include "markup/class_words.h"

namespace tenter::markup {

bool isHeading(const Node& node) {
    // WAI-ARIA 1.2 § 5.4, role heading.
    if (const std::string* role = node.find("role"); role != nullptr && *role == "heading") return true;
    return node.space == Space::Html && node.name.size() == 2 && node.name[0] == 'h' && node.name[1] >= '1' &&
           node.name[1] <= '6';
}

std::vector<Features> featuresOf(const Tree& tree, NodeId top) {
    const NodeId past = tree.past(top, 0);
    const NodeId end = past == noNode ? tree.size() : past;
    std::vector<Features> features(end - top);
    // In reverse document order each node is complete before its parent.
    for (NodeId at = end; at-- > top;) {
        const Node& node = tree[at];
        Features& own = features[at - top];
        if (node.isText()) {
            own.letters =
                static_cast<int>(std::ranges::count_if(node.text, [](char c) { return !isSpace(c); }));
        } else if (node.space != Space::Html || isHidden(node)) {
            own = {};
        } else {
            own.pictures += node.name == "img" ? 1 : 0;
            own.headings += isHeading(node) ? 1 : 0;
            own.links += node.name == "a" || node.name == "button" ? 1 : 0;
        }
        if (at == top) continue;
        Features& above = features[node.parent - top];
        above.nodes += own.nodes;
        above.pictures += own.pictures;
        above.headings += own.headings;
        above.links += own.links;
        above.letters += own.letters;
        above.block = above.block || own.block || !isPhrasing(node);
    }
    return features;
}

}  // namespace tenter::markup
