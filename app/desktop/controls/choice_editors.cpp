#include "controls/choice_editors.h"

#include <QHBoxLayout>
#include <QWheelEvent>
#include <algorithm>
#include <utility>

namespace tenter::desktop::controls {

namespace {

int indexOf(const std::vector<Choice>& choices, const Json& value) {
    if (!value.is_string()) return -1;
    const auto& word = value.get_ref<const std::string&>();
    const auto at =
        std::find_if(choices.begin(), choices.end(), [&](const Choice& c) { return c.word == word; });
    return at == choices.end() ? -1 : static_cast<int>(at - choices.begin());
}

/// The label of the choice with this value; empty if there is none.
QString titleOf(const std::vector<Choice>& choices, const Json& value) {
    const int index = indexOf(choices, value);
    return index < 0 ? QString() : choices[static_cast<std::size_t>(index)].title;
}

/// `One of: Upright, Italic.`
QString oneOf(const std::vector<Choice>& choices) {
    QStringList titles;
    for (const Choice& choice : choices)
        titles << choice.title;
    return QObject::tr("One of: %1.").arg(titles.join(", "));
}

void fill(Editor* editor, QWidget* field) {
    auto* box = new QHBoxLayout(editor);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(field);
    editor->setFocusProxy(field);
}

}  // namespace

SegmentEditor::SegmentEditor(std::vector<Choice> choices, QWidget* parent)
    : Editor(parent), choices_(std::move(choices)), segments_(new Segments(this)) {
    segments_->setFilling(true);
    QStringList titles;
    for (const Choice& choice : choices_)
        titles << choice.title;
    segments_->setTexts(titles);
    fill(this, segments_);
    setFocusProxy(segments_->button(0));
    connect(segments_, &Segments::chosen, this, [this] {
        Q_EMIT edited();
        Q_EMIT finished();
    });
}

void SegmentEditor::setValue(const Json& value) {
    const int index = indexOf(choices_, value);
    segments_->setCurrent(index);
    if (index >= 0) setFocusProxy(segments_->button(index));
}

Json SegmentEditor::value() const {
    const int index = segments_->current();
    return index < 0 ? Json() : Json(choices_[static_cast<std::size_t>(index)].word);
}

QString SegmentEditor::textOf(const Json& value) const {
    return titleOf(choices_, value);
}

QString SegmentEditor::accepts() const {
    return oneOf(choices_);
}

void SegmentEditor::setName(const QString& name) {
    segments_->setAccessibleName(name);
    for (int i = 0; i < static_cast<int>(choices_.size()); ++i)
        segments_->button(i)->setAccessibleName(name + ": " + choices_[static_cast<std::size_t>(i)].title);
}

ListEditor::ListEditor(std::vector<Choice> choices, QWidget* parent)
    : Editor(parent), list_(new CalmCombo(this)) {
    setChoices(std::move(choices));
    fill(this, list_);
    connect(list_, &QComboBox::activated, this, [this] {
        Q_EMIT edited();
        Q_EMIT finished();
    });
}

void ListEditor::setChoices(std::vector<Choice> choices) {
    choices_ = std::move(choices);
    list_->clear();
    for (const Choice& choice : choices_)
        list_->addItem(choice.title);
}

void ListEditor::setValue(const Json& value) {
    list_->setCurrentIndex(indexOf(choices_, value));
}

Json ListEditor::value() const {
    const int index = list_->currentIndex();
    return index < 0 ? Json() : Json(choices_[static_cast<std::size_t>(index)].word);
}

QString ListEditor::textOf(const Json& value) const {
    return titleOf(choices_, value);
}

QString ListEditor::accepts() const {
    return oneOf(choices_);
}

void ListEditor::setName(const QString& name) {
    list_->setAccessibleName(name);
}

CheckEditor::CheckEditor(const QString& text, QWidget* parent)
    : Editor(parent), box_(new QCheckBox(text, this)) {
    fill(this, box_);
    connect(box_, &QCheckBox::clicked, this, [this] {
        Q_EMIT edited();
        Q_EMIT finished();
    });
}

void CheckEditor::setValue(const Json& value) {
    box_->setChecked(value.is_boolean() && value.get<bool>());
}

Json CheckEditor::value() const {
    return box_->isChecked();
}

void CheckEditor::setName(const QString& name) {
    // WCAG 2.2 SC 2.5.3: the accessible name contains the visible label.
    box_->setAccessibleName(name.contains(box_->text(), Qt::CaseInsensitive) ? name
                                                                             : name + ": " + box_->text());
}

CalmCombo::CalmCombo(QWidget* parent) : QComboBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(4);
}

void CalmCombo::wheelEvent(QWheelEvent* event) {
    if (hasFocus())
        QComboBox::wheelEvent(event);
    else
        event->ignore();
}

}  // namespace tenter::desktop::controls
