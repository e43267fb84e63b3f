#include "accessible/number_field_interface.h"

namespace tenter::desktop::accessible {

void* NumberFieldInterface::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return LineEditInterface::interface_cast(type);
}

QStringList NumberFieldInterface::actionNames() const {
    return LineEditInterface::actionNames() << increaseAction() << decreaseAction();
}

void NumberFieldInterface::doAction(const QString& action) {
    if (action != increaseAction() && action != decreaseAction()) return LineEditInterface::doAction(action);
    if (!number().isEnabled() || number().isReadOnly()) return;
    number().stepBy(action == increaseAction() ? 1 : -1);
    number().finish();
}

QVariant NumberFieldInterface::currentValue() const {
    const controls::Amount& amount = number().amount();
    return number().kind().keywords.contains(amount.unit) ? QVariant(amount.unit) : QVariant(amount.value);
}

void NumberFieldInterface::setCurrentValue(const QVariant& value) {
    controls::Amount amount = number().amount();
    if (number().kind().keywords.contains(amount.unit)) amount.unit.clear();
    amount.value = value.toDouble();
    setText(QAccessible::Value, controls::formatted(amount, number().kind()));
}

QVariant NumberFieldInterface::minimumStepSize() const {
    return controls::stepOf(number().amount(), number().kind());
}

}  // namespace tenter::desktop::accessible
