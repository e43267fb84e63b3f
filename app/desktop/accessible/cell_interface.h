// The accessible interface of a cell, or of the head of a column, in the data of a lane or a plot.
#pragma once

#include <QAccessible>

#include "accessible/table_interface.h"

namespace tenter::desktop::accessible {

class CellInterface : public QAccessibleInterface, public QAccessibleTableCellInterface {
public:
    /// Row −1: the head of the column.
    CellInterface(TableInterface& table, int row, int column) : table_(table), row_(row), column_(column) {}

    [[nodiscard]] bool isValid() const override;
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override { return &table_; }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text, const QString&) override {}
    /// That of the whole lane: a value can have several places in it.
    [[nodiscard]] QRect rect() const override { return table_.rect(); }
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] bool isSelected() const override { return false; }
    [[nodiscard]] QList<QAccessibleInterface*> columnHeaderCells() const override;
    [[nodiscard]] QList<QAccessibleInterface*> rowHeaderCells() const override { return {}; }
    [[nodiscard]] int columnIndex() const override { return column_; }
    [[nodiscard]] int rowIndex() const override { return row_; }
    [[nodiscard]] int columnExtent() const override { return 1; }
    [[nodiscard]] int rowExtent() const override { return 1; }
    [[nodiscard]] QAccessibleInterface* table() const override { return &table_; }

private:
    TableInterface& table_;
    int row_, column_;
};

}  // namespace tenter::desktop::accessible
