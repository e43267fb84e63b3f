// The accessible interface of a number field: a spin box with a value, its range and its step.
#pragma once

#include "accessible/line_edit_interface.h"
#include "controls/number_field.h"

namespace tenter::desktop::accessible {

class NumberFieldInterface : public LineEditInterface, public QAccessibleValueInterface {
public:
    explicit NumberFieldInterface(controls::NumberField* field)
        : LineEditInterface(field, QAccessible::SpinBox) {}

    void* interface_cast(QAccessible::InterfaceType type) override;
    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& action) override;
    /// The number in the unit that the field shows; for a keyword the keyword.
    [[nodiscard]] QVariant currentValue() const override;
    /// Sets the number; the unit stays. A number out of range is refused, as when it is typed.
    void setCurrentValue(const QVariant& value) override;
    [[nodiscard]] QVariant maximumValue() const override { return number().kind().most; }
    [[nodiscard]] QVariant minimumValue() const override { return number().kind().least; }
    [[nodiscard]] QVariant minimumStepSize() const override;

protected:
    void enter(const QString& text) override { number().enter(text); }

private:
    [[nodiscard]] controls::NumberField& number() const {
        return static_cast<controls::NumberField&>(field());
    }
};

}  // namespace tenter::desktop::accessible
