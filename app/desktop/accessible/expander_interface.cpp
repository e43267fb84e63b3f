#include "accessible/expander_interface.h"

namespace tenter::desktop::accessible {

ExpanderInterface::ExpanderInterface(QAbstractButton* button)
    : QAccessibleWidget(button, QAccessible::Button) {
    QObject::connect(button, &QAbstractButton::toggled, button, [button] {
        QAccessible::State changed;
        changed.expanded = true;
        changed.collapsed = true;
        QAccessibleStateChangeEvent event(button, changed);
        QAccessible::updateAccessibility(&event);
    });
}

QAccessible::State ExpanderInterface::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.expandable = true;
    state.expanded = button().isChecked();
    state.collapsed = !button().isChecked();
    return state;
}

QString ExpanderInterface::text(QAccessible::Text kind) const {
    const QString text = QAccessibleWidget::text(kind);
    return kind == QAccessible::Name && text.isEmpty() ? button().text().remove('&') : text;
}

QStringList ExpanderInterface::actionNames() const {
    return QStringList{pressAction()} << QAccessibleWidget::actionNames();
}

void ExpanderInterface::doAction(const QString& action) {
    if (action != pressAction()) return QAccessibleWidget::doAction(action);
    if (button().isEnabled()) button().click();
}

}  // namespace tenter::desktop::accessible
