#include "panels/project_row.h"

#include <QGridLayout>
#include <utility>

namespace tenter::desktop::panels {

ProjectRow::ProjectRow(Context& context, const QString& title, const QString& name, controls::Editor* editor,
                       Get get, Set set, QWidget* parent)
    : QWidget(parent),
      context_(context),
      name_(name),
      editor_(editor),
      title_(new QLabel(title, this)),
      get_(std::move(get)),
      set_(std::move(set)) {
    title_->setBuddy(editor);
    title_->setFixedWidth(96);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(12, 0, 24, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->addWidget(title_, 0, 0);
    grid->addWidget(editor_, 0, 1);
    grid->setColumnStretch(1, 1);
    editor_->setName(name_);
    connect(editor_, &controls::Editor::edited, this, [this] {
        if (!editing_) start_ = get_(context_.viewing.document().project());
        editing_ = true;
        put(editor_->value());
    });
    connect(editor_, &controls::Editor::finished, this, [this] {
        editing_ = false;
        context_.viewing.document().endGesture();
    });
    connect(editor_, &controls::Editor::takenBack, this, [this] {
        if (editing_) put(start_);
        editing_ = false;
        context_.viewing.document().endGesture();
        refresh();
    });
    connect(editor_, &controls::Editor::cleared, this, [this] {
        put(project::Json());
        refresh();
    });
    connect(editor_, &controls::Editor::refused, this,
            [this](const QString& why) { context_.say(name_ + ": " + why + '.'); });
}

void ProjectRow::put(const project::Json& value) {
    context_.viewing.document().edit(
        name_, [&](project::Project& project) { set_(project, value); }, "project/" + name_);
}

void ProjectRow::refresh() {
    editor_->setValue(get_(context_.viewing.shown()));
}

void ProjectRow::setTall() {
    auto* grid = static_cast<QGridLayout*>(layout());
    grid->removeWidget(editor_);
    grid->addWidget(editor_, 1, 0, 1, 2);
}

}  // namespace tenter::desktop::panels
