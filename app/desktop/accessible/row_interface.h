// The accessible interface of the row view: a list of the cards, each with its parts.
#pragma once

#include <QAccessibleWidget>
#include <map>

#include "row/row_view.h"

namespace tenter::desktop::accessible {

/// Its children are the cards of the current variant, then the widgets in the view.
class RowInterface : public QAccessibleWidget {
public:
    explicit RowInterface(row::RowView* view) : QAccessibleWidget(view, QAccessible::List) {}
    ~RowInterface() override;

    [[nodiscard]] row::RowView& view() const { return *static_cast<row::RowView*>(widget()); }
    /// The object of a card or a part.
    [[nodiscard]] QAccessibleInterface* at(const Place& place) const;

    [[nodiscard]] int childCount() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    [[nodiscard]] QAccessibleInterface* focusChild() const override;

private:
    [[nodiscard]] int cardCount() const;
    mutable std::map<Place, QAccessible::Id> places_;
};

}  // namespace tenter::desktop::accessible
