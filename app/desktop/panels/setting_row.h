// A row of a panel for one setting: its title, its editor, its value in px, and where the value comes from.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <vector>

#include "panels/binding.h"

namespace tenter::desktop::panels {

class SettingRow : public QWidget {
    Q_OBJECT

public:
    /// `subject`, `setting` as for Binding. `title`: the label beside the editor; a check box has its own.
    /// `name`: the setting in the accessible name, if another one than `title`.
    SettingRow(Context& context, const QString& title, controls::Editor* editor, const std::string& subject,
               const std::string& setting, QWidget* parent = nullptr, const QString& name = {});
    /// Puts the title above the editor, which then has the whole width.
    void setTall();
    void refresh() { binding_->refresh(); }
    void refreshPixels();
    [[nodiscard]] Binding& binding() const { return *binding_; }
    [[nodiscard]] controls::Editor& editor() const { return *editor_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void nameButtons();
    void showOrigin();

    Context& context_;
    controls::Editor* editor_;
    Binding* binding_;
    QString explanation_;
    QLabel* title_;
    QLabel* pixels_;
    QToolButton* reset_;
    QLabel* reach_;            ///< shown if the value is not that of the whole edit scope
    QPushButton* everywhere_;  ///< shown with `reach_`; uses the value in the whole edit scope
};

}  // namespace tenter::desktop::panels
