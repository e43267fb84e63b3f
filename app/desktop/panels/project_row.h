// One property of the project itself, which no layer overrides: its name and its editor.
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
    /// `name` is what undo calls an edit; `title` what stands beside the editor.
    ProjectRow(Context& context, const QString& title, const QString& name, controls::Editor* editor, Get get,
               Set set, QWidget* parent = nullptr);
    /// For a property that need not be said: a dot and a button to reset it while `said` of the project.
    using Said = std::function<bool(const project::Project&)>;
    void setOptional(Said said);
    [[nodiscard]] bool isSaid() const { return isSaid_; }
    void refresh();
    /// The name above the editor, which takes the whole width.
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
    Said said_;
    QToolButton* reset_ = nullptr;
    bool isSaid_ = false;
    project::Json start_;
    bool editing_ = false;
};

}  // namespace tenter::desktop::panels
