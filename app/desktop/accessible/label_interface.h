// The accessible interface of a label, which may have a name besides its text, such as a result.
#pragma once

#include <QAccessibleWidget>
#include <QLabel>
#include <utility>

namespace tenter::desktop::accessible {

/// Reads the name and the text. Qt’s own reads the name in place of the text.
class LabelInterface : public QAccessibleWidget {
public:
    explicit LabelInterface(QLabel* label) : QAccessibleWidget(label, QAccessible::StaticText) {}
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    /// With the field of which it is the label.
    [[nodiscard]] QList<std::pair<QAccessibleInterface*, QAccessible::Relation>> relations(
        QAccessible::Relation match) const override;

private:
    [[nodiscard]] const QLabel& label() const { return *static_cast<const QLabel*>(widget()); }
};

}  // namespace tenter::desktop::accessible
