#include "row/lookup.h"

#include <algorithm>

namespace tenter::desktop::row {

namespace {

bool holds(const layout::Box& box, const QPointF& point) {
    return point.x() >= box.x && point.x() < box.right() && point.y() >= box.y && point.y() < box.bottom();
}

}  // namespace

std::optional<std::size_t> partAt(const layout::Layout& layout, const QPointF& page) {
    for (std::size_t i = layout.parts.size(); i-- > 0;)
        if (holds(layout.parts[i].box, page)) return i;
    return std::nullopt;
}

std::size_t cardOf(const layout::Layout& layout, std::size_t part) {
    std::size_t card = 0;
    while (card + 1 < layout.cards.size() && layout.cards[card + 1].firstPart <= part)
        ++card;
    return card;
}

std::optional<std::size_t> cardAt(const layout::Layout& layout, const QPointF& page) {
    for (std::size_t i = layout.cards.size(); i-- > 0;)
        if (holds(layout.cards[i].box, page)) return i;
    return std::nullopt;
}

std::optional<std::size_t> indexOf(const layout::Layout& layout,
                                   const std::optional<project::PartRef>& part) {
    if (!part || part->card >= layout.cards.size()) return std::nullopt;
    const layout::LaidCard& card = layout.cards[part->card];
    for (std::uint32_t i = 0; i < card.partCount; ++i)
        if (layout.parts[card.firstPart + i].index == part->part) return card.firstPart + i;
    return std::nullopt;
}

const layout::Box* boxOf(const layout::Layout& layout, const Place& place) {
    if (const auto part = indexOf(layout, place.partRef())) return &layout.parts[*part].box;
    return !place.part && place.card < layout.cards.size() ? &layout.cards[place.card].box : nullptr;
}

project::PartRef refOf(const layout::Layout& layout, std::size_t part) {
    return {cardOf(layout, part), layout.parts[part].index};
}

std::optional<std::size_t> partBeside(const layout::Layout& layout, std::optional<std::size_t> current,
                                      int cards, int parts) {
    if (layout.cards.empty() || layout.parts.empty()) return std::nullopt;
    if (!current) return cards < 0 ? layout.cards.back().firstPart : 0;
    const auto card = static_cast<int>(cardOf(layout, *current));
    const int to = card + cards;
    if (to < 0 || to >= static_cast<int>(layout.cards.size())) return std::nullopt;
    const layout::LaidCard& from = layout.cards[static_cast<std::size_t>(card)];
    const layout::LaidCard& target = layout.cards[static_cast<std::size_t>(to)];
    if (target.partCount == 0) return std::nullopt;
    const int place = static_cast<int>(*current - from.firstPart) + parts;
    if (place < 0 || (cards == 0 && place >= static_cast<int>(target.partCount))) return std::nullopt;
    return target.firstPart + std::min<std::size_t>(static_cast<std::size_t>(place), target.partCount - 1);
}

std::optional<double> fontSizeHere(const LaidOutRow& row, const std::string& role) {
    const auto& roles = row.prepared.roles();
    const auto at = std::find(roles.begin(), roles.end(), role);
    if (at == roles.end()) return std::nullopt;
    return row.prepared.fontSize(static_cast<std::uint32_t>(at - roles.begin()), row.layout.width);
}

}  // namespace tenter::desktop::row
