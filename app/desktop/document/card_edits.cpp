#include "document/card_edits.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "document/new_card.h"

namespace tenter::desktop {

namespace {

std::vector<project::Card> copies(const project::Row& row, const std::vector<std::size_t>& cards) {
    std::vector<project::Card> result;
    result.reserve(cards.size());
    for (const std::size_t card : cards)
        if (card < row.cards.size()) result.push_back(row.cards[card]);
    return result;
}

void insert(project::Row& row, std::size_t at, std::vector<project::Card> cards) {
    row.cards.insert(row.cards.begin() + static_cast<std::ptrdiff_t>(at),
                     std::make_move_iterator(cards.begin()), std::make_move_iterator(cards.end()));
}

}  // namespace

std::size_t moveCards(project::Row& row, const std::vector<std::size_t>& cards, std::size_t before) {
    std::vector<project::Card> moved = copies(row, cards);
    const auto ahead = std::ranges::count_if(cards, [&](std::size_t card) { return card < before; });
    removeCards(row, cards);
    const std::size_t at = std::min(before - static_cast<std::size_t>(ahead), row.cards.size());
    insert(row, at, std::move(moved));
    return at;
}

std::size_t duplicateCards(project::Row& row, const std::vector<std::size_t>& cards) {
    if (cards.empty()) return 0;
    const std::size_t at = std::min(cards.back() + 1, row.cards.size());
    insert(row, at, copies(row, cards));
    return at;
}

void removeCards(project::Row& row, const std::vector<std::size_t>& cards) {
    for (auto card = cards.rbegin(); card != cards.rend(); ++card)
        if (*card < row.cards.size()) row.cards.erase(row.cards.begin() + static_cast<std::ptrdiff_t>(*card));
}

std::size_t addCard(project::Row& row, std::size_t after) {
    if (row.cards.empty()) {
        row.cards.push_back(newCard());
        return 0;
    }
    after = std::min(after, row.cards.size() - 1);
    project::Card card = row.cards[after];
    for (project::Part& part : card.parts)
        if (auto* text = std::get_if<project::TextPart>(&part)) *text = newTextPart(text->role);
    insert(row, after + 1, {std::move(card)});
    return after + 1;
}

}  // namespace tenter::desktop
