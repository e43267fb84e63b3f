// The accessibility tree of a window, as a screen reader walks it.
#pragma once

#include <QAccessible>
#include <QAccessibleActionInterface>
#include <QAccessibleTableInterface>
#include <QAccessibleValueInterface>
#include <QMetaEnum>
#include <QWidget>
#include <vector>

namespace tenter::desktop {

/// An object of the tree, with what a screen reader reads of it.
struct AccessibleNode {
    QAccessibleInterface* interface;
    QString path;   ///< roles and names from the window down
    QString group;  ///< the path to the nearest object above it that has a name

    [[nodiscard]] QString name() const { return interface->text(QAccessible::Name).trimmed(); }
    [[nodiscard]] QAccessible::Role role() const { return interface->role(); }
    [[nodiscard]] QAccessible::State state() const { return interface->state(); }
    /// Null for what is drawn.
    [[nodiscard]] QWidget* widget() const { return qobject_cast<QWidget*>(interface->object()); }
    [[nodiscard]] bool can(const QString& action) const {
        auto* const actions = interface->actionInterface();
        return actions != nullptr && actions->actionNames().contains(action);
    }
    void doAction(const QString& action) const { interface->actionInterface()->doAction(action); }
};

enum class Hidden { Skipped, Included };

inline QString roleName(QAccessible::Role role) {
    const char* key = QMetaEnum::fromType<QAccessible::Role>().valueToKey(role);
    return key != nullptr ? QString(key) : QString::number(role);
}

/// All objects of the tree of `root`, in its order; without the cells of tables, which are data.
inline std::vector<AccessibleNode> accessibleTree(QObject* root, Hidden hidden = Hidden::Skipped) {
    std::vector<AccessibleNode> nodes;
    const auto walk = [&](auto&& self, QAccessibleInterface* interface, const QString& path,
                          const QString& group) -> void {
        if (interface == nullptr || !interface->isValid()) return;
        if (interface->state().invisible && hidden == Hidden::Skipped) return;
        const QString name = interface->text(QAccessible::Name);
        const QString here = path + '/' + roleName(interface->role()) + " “" + name + "”";
        nodes.push_back({interface, here, group});
        for (int i = 0; i < interface->childCount(); ++i) {
            QAccessibleInterface* const child = interface->child(i);
            if (child != nullptr && child->tableCellInterface() != nullptr) continue;
            self(self, child, here, name.isEmpty() ? group : here);
        }
    };
    walk(walk, QAccessible::queryAccessibleInterface(root), {}, {});
    return nodes;
}

}  // namespace tenter::desktop
