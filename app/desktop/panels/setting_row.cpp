#include "panels/setting_row.h"

#include <QGridLayout>

#include "controls/choice_editors.h"
#include "controls/number_editors.h"
#include "controls/scrub.h"
#include "document/wording.h"
#include "panels/row_parts.h"
#include "panels/setting_help.h"

namespace tenter::desktop::panels {

namespace {

constexpr int pixelsWidth = 54;

}  // namespace

SettingRow::SettingRow(Context& context, const QString& title, controls::Editor* editor,
                       const std::string& subject, const std::string& setting, QWidget* parent,
                       const QString& name)
    : QWidget(parent),
      context_(context),
      editor_(editor),
      binding_(new Binding(context, *editor, subject, setting, name.isEmpty() ? title : name)),
      title_(new QLabel(title, this)),
      pixels_(new QLabel(this)),
      reset_(resetButton(this)),
      reach_(new QLabel(this)),
      everywhere_(new QPushButton(this)) {
    title_->setBuddy(editor);
    if (auto* number = qobject_cast<controls::NumberEditor*>(editor))
        new controls::Scrub(title_, &number->field());
    title_->setFixedWidth(titleWidth());
    title_->setWordWrap(true);
    pixels_->setFixedWidth(controls::scaled(pixelsWidth));
    pixels_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    pixels_->setForegroundRole(QPalette::PlaceholderText);
    reach_->setWordWrap(true);
    reach_->setForegroundRole(QPalette::PlaceholderText);
    reach_->hide();
    everywhere_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    everywhere_->hide();
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(markRoom, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    const bool isCheck = qobject_cast<controls::CheckEditor*>(editor_) != nullptr;
    title_->setVisible(!isCheck);
    if (!isCheck) grid->addWidget(title_, 0, 0);
    const auto* number = qobject_cast<controls::NumberEditor*>(editor_);
    const bool isLength = number && !number->field().kind().units.isEmpty();
    pixels_->setVisible(isLength);
    if (isCheck)
        grid->addWidget(editor_, 0, 0, 1, 3);
    else
        grid->addWidget(editor_, 0, 1, 1, isLength ? 1 : 2);
    if (isLength) grid->addWidget(pixels_, 0, 2);
    grid->addWidget(reset_, 0, 3);
    grid->addWidget(reach_, 2, 0, 1, 4);
    grid->addWidget(everywhere_, 3, 0, 1, 4, Qt::AlignLeft);
    if (!isCheck && !isLength && isTooWide(*editor_)) setTall();
    explanation_ = settingHelp((subject.empty() ? std::string("text") : subject) + '/' + setting);
    setHelp(*this, *editor_, title, explanation_);
    nameButtons();
    connect(binding_, &Binding::refreshed, this, &SettingRow::showOrigin);
    connect(reset_, &QToolButton::clicked, binding_, &Binding::reset);
    connect(everywhere_, &QPushButton::clicked, binding_, [this] {
        // The button goes with what it changes.
        editor_->setFocus();
        binding_->useInWholeScope();
    });
}

void SettingRow::setTall() {
    auto* grid = static_cast<QGridLayout*>(layout());
    grid->removeWidget(editor_);
    grid->addWidget(editor_, 1, 0, 1, 4);
    title_->setMinimumHeight(buttonSide);
    // The reset button is beside the title, above the editor.
}

void SettingRow::refreshPixels() {
    const auto px = binding_->pixels();
    pixels_->setText(px ? pixels(*px, 1) : QString());
}

void SettingRow::nameButtons() {
    reset_->setAccessibleName(QObject::tr("Reset %1", "setting").arg(binding_->name()));
    everywhere_->setText(binding_->isForAllVariants() ? QObject::tr("Use in all variants and bands")
                                                      : QObject::tr("Use in all bands"));
    everywhere_->setAccessibleName(everywhere_->text() + ": " + binding_->name());
}

void SettingRow::showOrigin() {
    const SettingValue& held = binding_->held();
    reset_->setVisible(held.setHere);
    editor_->setResettable(held.setHere);
    const bool isPart = held.isNearer || held.differsElsewhere;
    reach_->setVisible(isPart);
    everywhere_->setVisible(isPart);
    if (isPart) {
        const bool all = binding_->isForAllVariants();
        const bool isOwn = held.isNearer && held.from;
        reach_->setText(
            isOwn ? QObject::tr("Applies to %1 only.").arg(scopeTitle(context_.session.layouts, *held.from))
            : all ? QObject::tr("Some variants or bands have another value.")
                  : QObject::tr("Some bands have another value."));
        everywhere_->setToolTip(toolTipText(
            all ? QObject::tr(
                      "Remove the other values of this setting from variants and bands. You can undo it.")
                : QObject::tr("Remove the other values of this setting from the bands of this variant. You "
                              "can undo it.")));
    }
    QString tip = binding_->description();
    if (!explanation_.isEmpty()) tip.prepend(explanation_ + '\n');
    nameButtons();
    (title_->isHidden() ? static_cast<QWidget*>(editor_) : title_)->setToolTip(tip);
    title_->setForegroundRole(held.setHere ? QPalette::WindowText : QPalette::PlaceholderText);
    refreshPixels();
    update();
}

void SettingRow::paintEvent(QPaintEvent*) {
    if (!binding_->held().setHere) return;
    const QWidget* first = title_->isHidden() ? static_cast<const QWidget*>(editor_) : title_;
    paintSetHere(this, first->geometry().center().y());
}

}  // namespace tenter::desktop::panels
