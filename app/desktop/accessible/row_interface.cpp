#include "accessible/row_interface.h"

#include "accessible/place_interface.h"

namespace tenter::desktop::accessible {

RowInterface::~RowInterface() {
    for (const auto& [place, id] : places_)
        QAccessible::deleteAccessibleInterface(id);
}

int RowInterface::cardCount() const {
    return static_cast<int>(view().session().layouts.layout().cards.size());
}

QAccessibleInterface* RowInterface::at(const Place& place) const {
    QAccessible::Id& id = places_[place];
    if (id == 0)
        id = QAccessible::registerAccessibleInterface(
            new PlaceInterface(const_cast<RowInterface&>(*this), place));
    return QAccessible::accessibleInterface(id);
}

int RowInterface::childCount() const {
    return cardCount() + QAccessibleWidget::childCount();
}

QAccessibleInterface* RowInterface::child(int index) const {
    if (index < 0) return nullptr;
    if (index < cardCount()) return at({static_cast<std::size_t>(index), {}});
    return QAccessibleWidget::child(index - cardCount());
}

QAccessibleInterface* RowInterface::childAt(int x, int y) const {
    const QPoint point = view().viewport()->mapFromGlobal(QPoint(x, y));
    if (const auto place = view().placeAt(point); place && view().viewport()->rect().contains(point))
        return at(*place);
    return QAccessibleWidget::childAt(x, y);
}

int RowInterface::indexOfChild(const QAccessibleInterface* child) const {
    if (const auto* place = dynamic_cast<const PlaceInterface*>(child))
        return static_cast<int>(place->place().card);
    const int index = QAccessibleWidget::indexOfChild(child);
    return index < 0 ? index : cardCount() + index;
}

QAccessibleInterface* RowInterface::focusChild() const {
    const auto& place = view().session().selection.place();
    return view().hasFocus() && place ? at(*place) : QAccessibleWidget::focusChild();
}

}  // namespace tenter::desktop::accessible
