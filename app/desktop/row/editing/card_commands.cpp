#include "row/editing/card_commands.h"

#include <algorithm>
#include <utility>

#include "document/card_edits.h"
#include "row/editing/selected_cards.h"

namespace tenter::desktop::row::editing {

bool CardCommands::refuses() {
    const QString why = whyCardsStay(session_);
    if (!why.isEmpty()) Q_EMIT message(why);
    return !why.isEmpty();
}

void CardCommands::moveTo(const std::vector<std::size_t>& cards, std::size_t before) {
    if (cards.empty() || refuses()) return;
    std::size_t first = 0;
    if (!session_.scope.edit(
            cards.size() == 1 ? QObject::tr("Move card")
                              : QObject::tr("Move %n card(s)", nullptr, static_cast<int>(cards.size())),
            [&](project::Project& project) { first = moveCards(project.row(), cards, before); }))
        return;
    // What was selected stays selected.
    std::vector<Place> places = session_.selection.others();
    if (const auto place = session_.selection.place()) places.push_back(*place);
    const auto isMoved = [&](const Place& place) {
        return std::ranges::find(cards, place.card) != cards.end();
    };
    if (places.empty() || !isMoved(places.back())) places = {Place{cards.front(), {}}};
    for (Place& place : places)
        place.card = first + static_cast<std::size_t>(std::ranges::find(cards, place.card) - cards.begin());
    session_.selection.selectSeveral(places, true);
}

bool CardCommands::canMove(int by) const {
    const std::vector<std::size_t> cards = selectedCards(session_.selection);
    if (cards.empty()) return false;
    return by < 0 ? cards.front() > 0 : cards.back() + 1 < session_.document.project().row().cards.size();
}

void CardCommands::move(int by) {
    const std::vector<std::size_t> cards = selectedCards(session_.selection);
    if (cards.empty())
        Q_EMIT message(QObject::tr("Select a card, or a part of it, to move it."));
    else if (canMove(by))
        moveTo(cards, by < 0 ? cards.front() - 1 : cards.back() + 2);
    else
        Q_EMIT message(by < 0 ? QObject::tr("This is the first card.")
                              : QObject::tr("This is the last card."));
}

void CardCommands::duplicate() {
    const std::vector<std::size_t> cards = selectedCards(session_.selection);
    if (cards.empty() || refuses()) return;
    std::size_t first = 0;
    if (session_.scope.edit(
            cards.size() == 1 ? QObject::tr("Duplicate card")
                              : QObject::tr("Duplicate %n card(s)", nullptr, static_cast<int>(cards.size())),
            [&](project::Project& project) { first = duplicateCards(project.row(), cards); }))
        session_.selection.select(Place{first, session_.selection.place()->part}, true);
}

void CardCommands::remove() {
    const std::vector<std::size_t> cards = selectedCards(session_.selection);
    if (cards.empty() || refuses()) return;
    if (!session_.scope.edit(cards.size() == 1
                                 ? QObject::tr("Remove card")
                                 : QObject::tr("Remove %n card(s)", nullptr, static_cast<int>(cards.size())),
                             [&](project::Project& project) { removeCards(project.row(), cards); }))
        return;
    const std::size_t left = session_.document.project().row().cards.size();
    session_.selection.select(left == 0 ? std::optional<Place>()
                                        : Place{std::min(cards.front(), left - 1), {}});
}

void CardCommands::add() {
    if (refuses()) return;
    const std::vector<std::size_t> cards = selectedCards(session_.selection);
    const std::size_t count = session_.document.project().row().cards.size();
    std::size_t at = 0;
    if (session_.scope.edit(QObject::tr("Add card"), [&](project::Project& project) {
            at = addCard(project.row(), cards.empty() ? std::max<std::size_t>(count, 1) - 1 : cards.back());
        }))
        session_.selection.select(Place{at, 0}, true);
}

bool CardCommands::canMovePart(int by) const {
    const auto part = session_.selection.part();
    if (!part) return false;
    const auto& parts = session_.document.project().row().cards[part->card].parts;
    return by < 0 ? part->part > 0 : part->part + 1 < parts.size();
}

void CardCommands::movePart(int by) {
    const auto part = session_.selection.part();
    if (!part || refuses()) return;
    if (!canMovePart(by)) {
        Q_EMIT message(by < 0 ? QObject::tr("This is the first part of its card.")
                              : QObject::tr("This is the last part of its card."));
        return;
    }
    const std::size_t to = part->part + static_cast<std::size_t>(by);
    if (session_.scope.edit(QObject::tr("Move part"), [&](project::Project& project) {
            auto& parts = project.row().cards[part->card].parts;
            std::swap(parts[part->part], parts[to]);
        }))
        session_.selection.select(Place{part->card, to}, true);
}

QString CardCommands::removePartTitle() const {
    const auto parts = std::ranges::count_if(session_.selection.all(),
                                             [](const Place& place) { return place.part.has_value(); });
    return parts <= 1 ? QObject::tr("Remove part")
                      : QObject::tr("Remove %n part(s)", nullptr, static_cast<int>(parts));
}

void CardCommands::removePart() {
    const std::vector<Place> places = session_.selection.all();
    if (places.empty() || refuses()) return;
    session_.scope.edit(removePartTitle(), [&](project::Project& project) {
        // From the last, so that indices stay right.
        for (auto place = places.rbegin(); place != places.rend(); ++place) {
            if (!place->part) continue;
            auto& parts = project.row().cards[place->card].parts;
            parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(*place->part));
        }
    });
}

}  // namespace tenter::desktop::row::editing
