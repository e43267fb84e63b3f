// The accessible interface of a lane or a plot: its data as a table.
#pragma once

#include <QAccessibleWidget>
#include <map>
#include <memory>
#include <optional>

#include "controls/data_table.h"

namespace tenter::desktop::accessible {

/// Its children are the cells, row by row with the heads first, then the widgets in the lane.
class TableInterface : public QAccessibleWidget, public QAccessibleTableInterface {
public:
    /// `widget` derives from HasData.
    TableInterface(QWidget* widget, const controls::HasData& source);
    ~TableInterface() override;

    [[nodiscard]] const controls::DataTable& data() const;
    void* interface_cast(QAccessible::InterfaceType type) override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] int childCount() const override;
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;

    [[nodiscard]] QAccessibleInterface* caption() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* summary() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* cellAt(int row, int column) const override;
    [[nodiscard]] int selectedCellCount() const override { return 0; }
    [[nodiscard]] QList<QAccessibleInterface*> selectedCells() const override { return {}; }
    [[nodiscard]] QString columnDescription(int column) const override;
    [[nodiscard]] QString rowDescription(int row) const override;
    [[nodiscard]] int columnCount() const override;
    [[nodiscard]] int rowCount() const override;
    [[nodiscard]] int selectedColumnCount() const override { return 0; }
    [[nodiscard]] int selectedRowCount() const override { return 0; }
    [[nodiscard]] QList<int> selectedColumns() const override { return {}; }
    [[nodiscard]] QList<int> selectedRows() const override { return {}; }
    [[nodiscard]] bool isColumnSelected(int) const override { return false; }
    [[nodiscard]] bool isRowSelected(int) const override { return false; }
    bool selectRow(int) override { return false; }
    bool selectColumn(int) override { return false; }
    bool unselectRow(int) override { return false; }
    bool unselectColumn(int) override { return false; }
    void modelChange(QAccessibleTableModelChangeEvent*) override {}

private:
    friend class CellInterface;
    /// Row −1: the head of the column.
    [[nodiscard]] QAccessibleInterface* cell(int row, int column) const;
    const controls::HasData& source_;
    /// Kept until control returns to the event loop, because a reader asks cell by cell.
    std::shared_ptr<std::optional<controls::DataTable>> kept_;
    mutable std::map<std::pair<int, int>, QAccessible::Id> cells_;
};

}  // namespace tenter::desktop::accessible
