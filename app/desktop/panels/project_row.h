// A row of a panel for one property of the project, which no layer overrides: its title and its editor.
#pragma once

#include <QLabel>
#include <QToolButton>
#include <functional>

#include "controls/editor.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class ProjectRow : public QWidget {
    Q_OBJECT

public:
    using Get = std::function<project::Json(const project::Project&)>;
    using Set = std::function<void(project::Project&, const project::Json&)>;
    /// `title`: the label beside the editor; none for a check box, which has its own. `name`: the accessible
    /// name, also used for the undo step.
    ProjectRow(Context& context, const QString& title, const QString& name, controls::Editor* editor, Get get,
               Set set, QWidget* parent = nullptr);
    /// Makes the property optional: while `isSet` of the project, it has a dot and a reset button.
    using IsSet = std::function<bool(const project::Project&)>;
    void setOptional(IsSet isSet);
    [[nodiscard]] bool isSet() const { return isSet_; }
    void refresh();
    /// Puts the title above the editor, which then has the whole width.
    void setTall();
    [[nodiscard]] controls::Editor& editor() const { return *editor_; }
    [[nodiscard]] QString title() const { return title_->text(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void put(const project::Json& value);

    Context& context_;
    QString name_;
    controls::Editor* editor_;
    QLabel* title_;
    Get get_;
    Set set_;
    IsSet isSetIn_;
    QToolButton* reset_ = nullptr;
    bool isSet_ = false;
    project::Json start_;
    bool editing_ = false;
};

}  // namespace tenter::desktop::panels
