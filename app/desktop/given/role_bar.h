// One element of the row: which role it has, and by which selector.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "controls/choice_editors.h"
#include "given/row_reading.h"

namespace tenter::desktop::given {

class RoleBar : public QWidget {
    Q_OBJECT

public:
    explicit RoleBar(QWidget* parent = nullptr);
    /// The roles of text that can be chosen.
    void setRoles(const std::vector<std::string>& roles) { textRoles_ = roles; }
    /// Shows an element; null row: none.
    void showElement(const markup::GivenRow* row, markup::NodeId node);
    /// What became of the last change; empty: nothing to tell.
    void tell(const QString& problem);

signals:
    void roleChosen(quint32 node, const QString& role);  ///< markup::NodeId
    void selectorTyped(const QString& role, const QString& selector);

private:
    void fillRoles();
    void chooseRole(int index);
    void takeSelector();

    QLabel* element_;
    controls::CalmCombo* role_;
    QLabel* foundBy_;
    QLineEdit* selector_;
    QLabel* problem_;
    std::vector<std::string> textRoles_;
    std::vector<std::string> offered_;  // by index; the last asks for another
    markup::NodeId node_ = markup::noNode;
    std::string has_;        // the role of `node_`
    QString shownSelector_;  // as it stands
};

/// Why a selector cannot be read, with its place: `Column 4: …`. Empty if it can.
QString selectorProblem(const QString& selector);

}  // namespace tenter::desktop::given
