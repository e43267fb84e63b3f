#include "accessible/axis_interface.h"

namespace tenter::desktop::accessible {

void* AxisInterface::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

}  // namespace tenter::desktop::accessible
