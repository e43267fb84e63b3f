// One setting in a panel: its name, its editor, what it comes to, and where it comes from.
#pragma once

#include <QLabel>
#include <QToolButton>

#include "panels/binding.h"

namespace tenter::desktop::panels {

class SettingRow : public QWidget {
    Q_OBJECT

public:
    SettingRow(Context& context, const QString& title, controls::Editor* editor, const std::string& subject,
               const std::string& setting, QWidget* parent = nullptr);
    /// The name above the editor, which takes the whole width.
    void setTall();
    void refresh() { binding_->refresh(); }
    void refreshPixels();
    [[nodiscard]] Binding& binding() const { return *binding_; }
    [[nodiscard]] controls::Editor& editor() const { return *editor_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void showOrigin();

    Context& context_;
    controls::Editor* editor_;
    Binding* binding_;
    QLabel* title_;
    QLabel* pixels_;
    QToolButton* reset_;
    QToolButton* nearer_;  ///< says that a nearer layer hides the value, and goes there
};

}  // namespace tenter::desktop::panels
