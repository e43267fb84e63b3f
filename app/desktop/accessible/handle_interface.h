// The accessible interface of a handle on the axis: it can be moved in steps.
#pragma once

#include <QAccessibleWidget>

#include "axis/handle.h"

namespace tenter::desktop::accessible {

/// Increase and decrease move the end of a ramp up and down, and a breakpoint to the right and left.
class HandleInterface : public QAccessibleWidget {
public:
    explicit HandleInterface(axis::Handle* handle) : QAccessibleWidget(handle, QAccessible::Grip) {}
    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& action) override;

private:
    [[nodiscard]] axis::Handle& handle() const { return *static_cast<axis::Handle*>(widget()); }
};

}  // namespace tenter::desktop::accessible
