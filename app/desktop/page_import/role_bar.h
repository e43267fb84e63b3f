// The role of the selected element, and the selector that finds all elements with this role.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "controls/choice_editors.h"
#include "page_import/row_import.h"

namespace tenter::desktop::page_import {

class RoleBar : public QWidget {
    Q_OBJECT

public:
    explicit RoleBar(QWidget* parent = nullptr);
    /// Sets the roles of text that can be chosen.
    void setRoles(const std::vector<std::string>& roles) { textRoles_ = roles; }
    /// Shows an element of `row`, or no element if `row` is null.
    void showElement(const markup::GivenRow* row, markup::NodeId node);
    /// Shows a problem with the last change, or none if `problem` is empty.
    void showProblem(const QString& problem);

Q_SIGNALS:
    void roleChosen(quint32 node, const QString& role);  ///< markup::NodeId
    void selectorTyped(const QString& role, const QString& selector);

private:
    void fillRoles();
    void chooseRole(int index);
    void applySelector();

    QLabel* element_;
    controls::CalmCombo* role_;
    QLabel* selectorLabel_;
    QLineEdit* selector_;
    QLabel* problem_;
    std::vector<std::string> textRoles_;
    std::vector<std::string> offered_;  // by index in the list, without the last entry “New role…”
    markup::NodeId node_ = markup::noNode;
    std::string currentRole_;  // the role of `node_`
    QString shownSelector_;    // the selector of `currentRole_`
};

/// Why a selector cannot be read, with the place: `Column 4: …`. Empty if it can be read.
QString selectorProblem(const QString& selector);

}  // namespace tenter::desktop::page_import
