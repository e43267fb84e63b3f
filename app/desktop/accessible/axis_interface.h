// The accessible interface of the width axis: a slider whose value is the viewport width.
#pragma once

#include <QAccessibleWidget>

#include "axis/axis_pane.h"

namespace tenter::desktop::accessible {

/// Values are in CSS px.
class AxisInterface : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit AxisInterface(axis::AxisPane* axis) : QAccessibleWidget(axis, QAccessible::Slider) {}
    void* interface_cast(QAccessible::InterfaceType type) override;
    [[nodiscard]] QVariant currentValue() const override { return axis().viewportWidth(); }
    void setCurrentValue(const QVariant& value) override { axis().setViewportWidth(value.toDouble()); }
    [[nodiscard]] QVariant maximumValue() const override { return axis().mostWidth(); }
    [[nodiscard]] QVariant minimumValue() const override { return axis().leastWidth(); }
    [[nodiscard]] QVariant minimumStepSize() const override { return 1; }

private:
    [[nodiscard]] axis::AxisPane& axis() const { return *static_cast<axis::AxisPane*>(widget()); }
};

}  // namespace tenter::desktop::accessible
