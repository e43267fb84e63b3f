#include "draw/row.h"

namespace tenter::draw {

const project::TextStyle* styleOf(const LaidOutRow& row, const layout::LaidPart& part) {
    const auto& roles = row.prepared.roles();
    if (part.picture || part.role >= roles.size()) return nullptr;
    return row.settings().text.find(roles[part.role]);
}

std::string kindOf(const LaidOutRow& row, const layout::LaidPart& part) {
    const auto& roles = row.prepared.roles();
    return part.picture || part.role >= roles.size() ? "picture" : roles[part.role];
}

const project::Part* sourceOf(const LaidOutRow& row, std::size_t card, const layout::LaidPart& part) {
    const auto& cards = row.project.row().cards;
    return card < cards.size() && part.index < cards[card].parts.size() ? &cards[card].parts[part.index]
                                                                        : nullptr;
}

units::LengthBasis basisOf(const LaidOutRow& row, double em, double percent) {
    return {em, row.rem(), percent, row.layout.width, 0};
}

}  // namespace tenter::draw
