// The accessible interface of the list of findings: its rows, each of which opens its finding.
#pragma once

#include <QAccessibleWidget>
#include <map>

#include "findings/list.h"

namespace tenter::desktop::accessible {

/// Its children are the rows. Qt’s own rows can only be selected, and hide the remedies of the open one.
class FindingListInterface : public QAccessibleWidget {
public:
    explicit FindingListInterface(findings::List* list) : QAccessibleWidget(list, QAccessible::List) {}
    ~FindingListInterface() override;

    [[nodiscard]] findings::List& list() const { return *static_cast<findings::List*>(widget()); }
    [[nodiscard]] QModelIndex indexOf(int row) const { return list().model()->index(row, 0); }

    [[nodiscard]] int childCount() const override;
    [[nodiscard]] QAccessibleInterface* child(int row) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    [[nodiscard]] QAccessibleInterface* focusChild() const override;

private:
    mutable std::map<int, QAccessible::Id> rows_;
};

/// A row. Its child is the box with the remedies, if it is open.
class FindingInterface : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    FindingInterface(FindingListInterface& list, int row) : list_(list), row_(row) {}
    [[nodiscard]] int row() const { return row_; }

    [[nodiscard]] bool isValid() const override;
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override { return list_.window(); }
    [[nodiscard]] QAccessibleInterface* parent() const override { return &list_; }
    [[nodiscard]] int childCount() const override { return remedies() != nullptr ? 1 : 0; }
    [[nodiscard]] QAccessibleInterface* child(int index) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] QStringList actionNames() const override;
    /// Press opens the finding; set focus makes its row current and moves the focus to the list.
    void doAction(const QString& action) override;
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    [[nodiscard]] QModelIndex index() const { return list_.indexOf(row_); }
    [[nodiscard]] QWidget* remedies() const { return list_.list().indexWidget(index()); }
    FindingListInterface& list_;
    int row_;
};

/// The box with the remedies of a finding. It lies in its row, not in the list’s viewport, which has no
/// interface.
class RemediesInterface : public QAccessibleWidget {
public:
    explicit RemediesInterface(QWidget* box) : QAccessibleWidget(box, QAccessible::Grouping) {}
    [[nodiscard]] QAccessibleInterface* parent() const override;
};

}  // namespace tenter::desktop::accessible
