// The accessible interface of a label that has a name besides its text, such as a result.
#pragma once

#include <QAccessibleWidget>
#include <QLabel>

namespace tenter::desktop::accessible {

/// Reads the name and the text. Qt’s own reads the name in place of the text.
class LabelInterface : public QAccessibleWidget {
public:
    explicit LabelInterface(QLabel* label) : QAccessibleWidget(label, QAccessible::StaticText) {}
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] QAccessible::State state() const override;

private:
    [[nodiscard]] const QLabel& label() const { return *static_cast<const QLabel*>(widget()); }
};

}  // namespace tenter::desktop::accessible
