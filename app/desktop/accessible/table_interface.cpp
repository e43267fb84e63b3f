#include "accessible/table_interface.h"

#include <QTimer>
#include <QWidget>

#include "accessible/cell_interface.h"

namespace tenter::desktop::accessible {

TableInterface::TableInterface(QWidget* widget, const controls::HasData& source)
    : QAccessibleWidget(widget, QAccessible::Table),
      source_(source),
      kept_(std::make_shared<std::optional<controls::DataTable>>()) {}

TableInterface::~TableInterface() {
    for (const auto& [place, id] : cells_)
        QAccessible::deleteAccessibleInterface(id);
}

const controls::DataTable& TableInterface::data() const {
    if (!kept_->has_value()) {
        *kept_ = source_.data();
        QTimer::singleShot(0, widget(), [kept = kept_] { kept->reset(); });
    }
    return **kept_;
}

void* TableInterface::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::TableInterface) return static_cast<QAccessibleTableInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

QString TableInterface::text(QAccessible::Text kind) const {
    const QString text = QAccessibleWidget::text(kind);
    if (kind != QAccessible::Description || !text.isEmpty()) return text;
    return QObject::tr("Table with %n row(s)", nullptr, rowCount());
}

int TableInterface::columnCount() const {
    return static_cast<int>(data().heads.size());
}

int TableInterface::rowCount() const {
    return static_cast<int>(data().rows.size());
}

int TableInterface::childCount() const {
    return (rowCount() + 1) * columnCount() + QAccessibleWidget::childCount();
}

QAccessibleInterface* TableInterface::child(int index) const {
    const int cells = (rowCount() + 1) * columnCount();
    if (index < 0) return nullptr;
    return index < cells ? cell(index / columnCount() - 1, index % columnCount())
                         : QAccessibleWidget::child(index - cells);
}

int TableInterface::indexOfChild(const QAccessibleInterface* child) const {
    if (const auto* cell = dynamic_cast<const CellInterface*>(child))
        return (cell->rowIndex() + 1) * columnCount() + cell->columnIndex();
    const int index = QAccessibleWidget::indexOfChild(child);
    return index < 0 ? index : (rowCount() + 1) * columnCount() + index;
}

QAccessibleInterface* TableInterface::cellAt(int row, int column) const {
    return row < 0 ? nullptr : cell(row, column);
}

QAccessibleInterface* TableInterface::cell(int row, int column) const {
    if (row < -1 || row >= rowCount() || column < 0 || column >= columnCount()) return nullptr;
    QAccessible::Id& id = cells_[{row, column}];
    if (id == 0)
        id = QAccessible::registerAccessibleInterface(
            new CellInterface(const_cast<TableInterface&>(*this), row, column));
    return QAccessible::accessibleInterface(id);
}

QString TableInterface::columnDescription(int column) const {
    return data().heads.value(column);
}

QString TableInterface::rowDescription(int row) const {
    return row >= 0 && row < rowCount() ? data().rows[row].value(0) : QString();
}

}  // namespace tenter::desktop::accessible
