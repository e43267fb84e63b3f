// The accessible interface of a button that opens and closes what is below it.
#pragma once

#include <QAbstractButton>
#include <QAccessibleWidget>

namespace tenter::desktop::accessible {

/// The button is checked while its content is open.
class ExpanderInterface : public QAccessibleWidget {
public:
    explicit ExpanderInterface(QAbstractButton* button);
    [[nodiscard]] QAccessible::State state() const override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& action) override;

private:
    [[nodiscard]] QAbstractButton& button() const { return *static_cast<QAbstractButton*>(widget()); }
};

}  // namespace tenter::desktop::accessible
