#include "accessible/finding_list_interface.h"

namespace tenter::desktop::accessible {

FindingListInterface::~FindingListInterface() {
    for (const auto& [row, id] : rows_)
        QAccessible::deleteAccessibleInterface(id);
}

int FindingListInterface::childCount() const {
    return list().model() != nullptr ? list().model()->rowCount() : 0;
}

QAccessibleInterface* FindingListInterface::child(int row) const {
    if (row < 0 || row >= childCount()) return nullptr;
    QAccessible::Id& id = rows_[row];
    if (id == 0)
        id = QAccessible::registerAccessibleInterface(
            new FindingInterface(const_cast<FindingListInterface&>(*this), row));
    return QAccessible::accessibleInterface(id);
}

QAccessibleInterface* FindingListInterface::childAt(int x, int y) const {
    const QPoint point = list().viewport()->mapFromGlobal(QPoint(x, y));
    return list().viewport()->rect().contains(point) ? child(list().indexAt(point).row()) : nullptr;
}

int FindingListInterface::indexOfChild(const QAccessibleInterface* child) const {
    const auto* row = dynamic_cast<const FindingInterface*>(child);
    return row != nullptr && row->isValid() ? row->row() : -1;
}

QAccessibleInterface* FindingListInterface::focusChild() const {
    return list().hasFocus() ? child(list().currentIndex().row()) : QAccessibleWidget::focusChild();
}

bool FindingInterface::isValid() const {
    return list_.isValid() && row_ < list_.childCount();
}

QAccessibleInterface* FindingInterface::child(int index) const {
    return index == 0 && isValid() ? QAccessible::queryAccessibleInterface(remedies()) : nullptr;
}

QAccessibleInterface* FindingInterface::childAt(int x, int y) const {
    QAccessibleInterface* const box = child(0);
    return box != nullptr && box->rect().contains(x, y) ? box : nullptr;
}

int FindingInterface::indexOfChild(const QAccessibleInterface* child) const {
    return child != nullptr && isValid() && child->object() != nullptr && child->object() == remedies() ? 0
                                                                                                        : -1;
}

QString FindingInterface::text(QAccessible::Text kind) const {
    if (kind != QAccessible::Name || !isValid()) return {};
    return index().data(Qt::AccessibleTextRole).toString();
}

QRect FindingInterface::rect() const {
    if (!isValid()) return {};
    const QRect there = list_.list().visualRect(index());
    return {list_.list().viewport()->mapToGlobal(there.topLeft()), there.size()};
}

QAccessible::State FindingInterface::state() const {
    QAccessible::State state;
    state.invalid = !isValid();
    if (state.invalid) return state;
    const bool isCurrent = list_.list().currentIndex() == index();
    state.invisible = list_.state().invisible;
    state.offscreen = !list_.list().viewport()->rect().intersects(list_.list().visualRect(index()));
    state.selectable = true;
    state.selected = list_.list().selectionModel()->isSelected(index());
    state.focusable = true;
    state.focused = list_.list().hasFocus() && isCurrent;
    // The current finding shows its details.
    state.expandable = true;
    state.expanded = isCurrent;
    state.collapsed = !isCurrent;
    return state;
}

void* FindingInterface::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
}

QStringList FindingInterface::actionNames() const {
    return {pressAction(), setFocusAction()};
}

void FindingInterface::doAction(const QString& action) {
    if (!isValid()) return;
    if (action == pressAction()) list_.list().open(index());
    if (action != setFocusAction()) return;
    list_.list().setCurrentIndex(index());
    list_.list().setFocus(Qt::OtherFocusReason);
}

QAccessibleInterface* RemediesInterface::parent() const {
    for (QWidget* above = widget()->parentWidget(); above != nullptr; above = above->parentWidget())
        if (auto* list = qobject_cast<findings::List*>(above)) {
            // The current finding has them; the row below the top edge is that of a box that is closing.
            const QModelIndex current = list->currentIndex();
            const int row =
                list->indexWidget(current) == widget() ? current.row() : list->indexAt(widget()->pos()).row();
            QAccessibleInterface* const rows = QAccessible::queryAccessibleInterface(list);
            QAccessibleInterface* const finding = rows->child(row);
            return finding != nullptr ? finding : rows;
        }
    return QAccessibleWidget::parent();
}

}  // namespace tenter::desktop::accessible
