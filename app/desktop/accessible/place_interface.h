// The accessible interface of a card, or of a part of a card, in the row view.
#pragma once

#include <QAccessible>

#include "accessible/row_interface.h"

namespace tenter::desktop::accessible {

/// Name: the text of a part, or the number of a card. Description: size, measure, lines and findings.
class PlaceInterface : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PlaceInterface(RowInterface& row, const Place& place) : row_(row), place_(place) {}
    [[nodiscard]] const Place& place() const { return place_; }

    [[nodiscard]] bool isValid() const override;
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override { return row_.window(); }
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] int childCount() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] QStringList actionNames() const override;
    /// Press selects the card or part; set focus does so too and moves the focus to the row.
    void doAction(const QString& action) override;
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    [[nodiscard]] Session& session() const { return row_.view().session(); }
    /// The part in the project that is shown; null for a card.
    [[nodiscard]] const project::Part* part() const;
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString description() const;
    RowInterface& row_;
    Place place_;
};

}  // namespace tenter::desktop::accessible
