#include "row/editing/selected_cards.h"

namespace tenter::desktop::row::editing {

std::vector<std::size_t> selectedCards(const SelectionModel& selection) {
    std::vector<std::size_t> cards;
    for (const Place& place : selection.all())
        if (cards.empty() || cards.back() != place.card) cards.push_back(place.card);
    return cards;
}

QString whyCardsStay(const Session& session) {
    if (session.document.project().row().given)
        return QObject::tr(
            "This row is imported from a page. To add, move or remove cards, change the page and import the "
            "row again.");
    if (session.shown.trial()) return QObject::tr("A text test is shown. End it to change cards.");
    if (!session.shown.showsDocument())
        return QObject::tr("This is a preview. Apply or discard it to change cards.");
    return {};
}

}  // namespace tenter::desktop::row::editing
