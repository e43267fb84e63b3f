#include "panels/panel.h"

#include <utility>

#include "panels/setting_help.h"

#include "controls/text_scale.h"

namespace tenter::desktop::panels {

Panel::Panel(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      panelBox_(new QVBoxLayout(this)),
      box_(panelBox_),
      sectionBox_(panelBox_) {
    panelBox_->setContentsMargins(12, 8, 12, 16);
    panelBox_->setSpacing(16);
}

QWidget* Panel::section(const QString& title) {
    sectionTitle_ = title;
    auto* widget = new QWidget(this);
    box_ = new QVBoxLayout(widget);
    box_->setContentsMargins(0, 0, 0, 0);
    box_->setSpacing(4);
    if (!title.isEmpty()) {
        auto* label = new QLabel(title, widget);
        QFont font = label->font();
        font.setWeight(QFont::DemiBold);
        label->setFont(font);
        label->setContentsMargins(12, 0, 0, 0);
        label->setMinimumHeight(controls::scaled(24));
        box_->addWidget(label);
        sectionLabel_ = label;
    }
    sectionBox_ = box_;
    panelBox_->addWidget(widget);
    return widget;
}

void Panel::explain(const QString& text) {
    sectionLabel_->setToolTip(text);
}

SettingRow* Panel::setting(const QString& title, controls::Editor* editor, const std::string& subject,
                           const std::string& setting) {
    auto* row = new SettingRow(context_, title, editor, subject, setting, this);
    box_->addWidget(row);
    settings_.push_back(row);
    addFindable(title, editor, subject);
    return row;
}

ProjectRow* Panel::property(const QString& title, const QString& name, controls::Editor* editor,
                            ProjectRow::Get get, ProjectRow::Set set) {
    auto* row = new ProjectRow(context_, title, name, editor, std::move(get), std::move(set), this);
    box_->addWidget(row);
    properties_.push_back(row);
    addFindable(title.isEmpty() ? name : title, editor, {}, name);
    return row;
}

void Panel::addWidget(QWidget* widget) {
    box_->addWidget(widget);
}

controls::Fold* Panel::fold(const QString& title) {
    auto* fold = new controls::Fold(title, this);
    sectionBox_->addWidget(fold);
    box_ = fold->box();
    return fold;
}

void Panel::addPart(Panel* part) {
    part->layout()->setContentsMargins(0, 0, 0, 0);
    panelBox_->addWidget(part);
    parts_.push_back(part);
    findables_.insert(findables_.end(), part->findables_.begin(), part->findables_.end());
}

void Panel::addFindable(const QString& words, QWidget* field, const std::string& subject,
                        const QString& also) {
    findables_.push_back({words, sectionTitle_, field, subject, also});
    if (const QString help = propertyHelp(words); !help.isEmpty() && helpOf(field).isEmpty())
        field->setWhatsThis(whatsThisText(words, help, {}));
}

void Panel::close() {
    panelBox_->addStretch(1);
}

void Panel::refresh() {
    for (SettingRow* row : settings_)
        row->refresh();
    for (ProjectRow* row : properties_)
        row->refresh();
    for (Panel* part : parts_)
        part->refresh();
}

void Panel::refreshPixels() {
    for (SettingRow* row : settings_)
        row->refreshPixels();
    for (Panel* part : parts_)
        part->refreshPixels();
}

}  // namespace tenter::desktop::panels
