#include "accessible/handle_interface.h"

namespace tenter::desktop::accessible {

QStringList HandleInterface::actionNames() const {
    return QAccessibleWidget::actionNames() << increaseAction() << decreaseAction();
}

void HandleInterface::doAction(const QString& action) {
    if (action != increaseAction() && action != decreaseAction())
        QAccessibleWidget::doAction(action);
    else if (handle().isEnabled())
        handle().nudge(action == increaseAction() ? 1 : -1);
}

}  // namespace tenter::desktop::accessible
