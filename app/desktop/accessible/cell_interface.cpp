#include "accessible/cell_interface.h"

namespace tenter::desktop::accessible {

bool CellInterface::isValid() const {
    return table_.isValid() && row_ < table_.rowCount() && column_ < table_.columnCount();
}

QString CellInterface::text(QAccessible::Text kind) const {
    if ((kind != QAccessible::Name && kind != QAccessible::Value) || !isValid()) return {};
    return row_ < 0 ? table_.data().heads[column_] : table_.data().rows[row_].value(column_);
}

QAccessible::Role CellInterface::role() const {
    return row_ < 0 ? QAccessible::ColumnHeader : QAccessible::Cell;
}

QAccessible::State CellInterface::state() const {
    QAccessible::State state;
    state.invisible = table_.state().invisible;
    state.readOnly = true;
    return state;
}

void* CellInterface::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::TableCellInterface ? static_cast<QAccessibleTableCellInterface*>(this)
                                                   : nullptr;
}

QList<QAccessibleInterface*> CellInterface::columnHeaderCells() const {
    if (row_ < 0) return {};
    return {table_.cell(-1, column_)};
}

}  // namespace tenter::desktop::accessible
