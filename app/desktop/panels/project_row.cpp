#include "panels/project_row.h"

#include <QGridLayout>
#include <utility>

#include "controls/number_editors.h"
#include "controls/scrub.h"
#include "document/wording.h"
#include "panels/row_parts.h"
#include "panels/setting_help.h"

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
    if (auto* number = qobject_cast<controls::NumberEditor*>(editor))
        new controls::Scrub(title_, &number->field());
    title_->setFixedWidth(titleWidth());
    title_->setWordWrap(true);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(markRoom, 0, buttonSide + 4, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->addWidget(title_, 0, 0);
    grid->addWidget(editor_, 0, 1);
    grid->setColumnStretch(1, 1);
    if (isTooWide(*editor_)) setTall();
    editor_->setName(name_);
    const QString help = propertyHelp(name_);
    title_->setToolTip(toolTipText(help));
    setHelp(*this, *editor_, title.isEmpty() ? name_ : title, help);
    connect(editor_, &controls::Editor::edited, this, [this] {
        if (!editing_) start_ = get_(context_.session.document.project());
        editing_ = true;
        put(editor_->value());
    });
    connect(editor_, &controls::Editor::finished, this, [this] {
        editing_ = false;
        context_.session.document.endGesture();
    });
    connect(editor_, &controls::Editor::reverted, this, [this] {
        if (editing_) put(start_);
        editing_ = false;
        context_.session.document.endGesture();
        refresh();
    });
    connect(editor_, &controls::Editor::cleared, this, [this] {
        put(project::Json());
        refresh();
    });
    connect(editor_, &controls::Editor::rejected, this,
            [this](const QString& why) { context_.showError(name_, why); });
}

void ProjectRow::put(const project::Json& value) {
    const bool accepted = context_.edit(
        undoName(name_, value.is_null()), [&](project::Project& project) { set_(project, value); },
        "project/" + name_, name_);
    if (!accepted) refresh();
}

void ProjectRow::setOptional(IsSet isSet) {
    isSetIn_ = std::move(isSet);
    auto* grid = static_cast<QGridLayout*>(layout());
    grid->setContentsMargins(markRoom, 0, 0, 0);
    reset_ = resetButton(this);
    reset_->setAccessibleName(QObject::tr("Reset %1", "setting").arg(name_));
    grid->addWidget(reset_, 0, 2);
    connect(reset_, &QToolButton::clicked, editor_, &controls::Editor::cleared);
}

void ProjectRow::refresh() {
    const project::Project& project = context_.session.shown.project();
    editor_->setValue(get_(project));
    if (!isSetIn_) return;
    isSet_ = isSetIn_(project);
    editor_->setResettable(isSet_);
    reset_->setVisible(isSet_);
    title_->setForegroundRole(isSet_ ? QPalette::WindowText : QPalette::PlaceholderText);
    update();
}

void ProjectRow::paintEvent(QPaintEvent*) {
    if (isSet_) paintSetHere(this, title_->geometry().center().y());
}

void ProjectRow::setTall() {
    auto* grid = static_cast<QGridLayout*>(layout());
    grid->removeWidget(editor_);
    grid->addWidget(editor_, 1, 0, 1, 2);
}

}  // namespace tenter::desktop::panels
