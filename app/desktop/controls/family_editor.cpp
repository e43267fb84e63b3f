#include "controls/family_editor.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <utility>

namespace tenter::desktop::controls {

namespace {

QString listText(const Json& value) {
    QStringList names;
    if (value.is_array())
        for (const Json& name : value)
            if (name.is_string()) names << QString::fromStdString(name.get<std::string>());
    return names.join(", ");
}

Json listValue(const QString& text) {
    Json value = Json::array();
    for (QString name : text.split(',', Qt::SkipEmptyParts)) {
        name = name.trimmed();
        if (name.size() > 1 && (name.startsWith('"') || name.startsWith('\'')) && name.endsWith(name[0]))
            name = name.mid(1, name.size() - 2).trimmed();
        if (!name.isEmpty()) value.push_back(name.toStdString());
    }
    return value;
}

}  // namespace

FamilyEditor::FamilyEditor(std::function<std::vector<std::string>()> families, QWidget* parent)
    : Editor(parent), families_(std::move(families)), list_(new CalmCombo(this)), value_(Json::array()) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(list_);
    setFocusProxy(list_);
    list_->setEditable(true);
    list_->setInsertPolicy(QComboBox::NoInsert);
    list_->setMaxVisibleItems(16);
    list_->completer()->setCompletionMode(QCompleter::PopupCompletion);
    list_->completer()->setFilterMode(Qt::MatchContains);
    list_->setToolTip(QObject::tr("Separate families by commas. The first one that is available is used."));
    list_->installEventFilter(this);
    list_->lineEdit()->installEventFilter(this);
    connect(list_, &QComboBox::textActivated, this, &FamilyEditor::choose);
    connect(list_->lineEdit(), &QLineEdit::editingFinished, this, &FamilyEditor::commit);
}

void FamilyEditor::setValue(const Json& value) {
    if (value == value_ && list_->lineEdit()->hasFocus()) return;
    value_ = value;
    list_->lineEdit()->setText(listText(value_));
    list_->lineEdit()->setCursorPosition(0);
}

Json FamilyEditor::value() const {
    return value_;
}

void FamilyEditor::setName(const QString& name) {
    list_->setAccessibleName(name);
    list_->lineEdit()->setAccessibleName(name);
}

bool FamilyEditor::eventFilter(QObject* watched, QEvent* event) {
    const bool wanted = event->type() == QEvent::FocusIn || event->type() == QEvent::MouseButtonPress;
    if (wanted && !filled_) fillList();
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape &&
        list_->lineEdit()->text() != listText(value_)) {
        list_->lineEdit()->setText(listText(value_));
        return true;
    }
    return Editor::eventFilter(watched, event);
}

void FamilyEditor::fillList() {
    filled_ = true;
    const QString text = list_->lineEdit()->text();
    list_->clear();
    for (const std::string& family : families_())
        list_->addItem(QString::fromStdString(family));
    list_->setCurrentIndex(-1);
    list_->lineEdit()->setText(text);
}

/// A family chosen from the list replaces the first one; the fallback families stay.
void FamilyEditor::choose(const QString& family) {
    Json chosen = Json::array({family.toStdString()});
    for (std::size_t i = 1; i < value_.size(); ++i)
        if (value_[i] != chosen[0]) chosen.push_back(value_[i]);
    list_->lineEdit()->setText(listText(chosen));
    commit();
}

void FamilyEditor::commit() {
    const Json typed = listValue(list_->lineEdit()->text());
    if (typed == value_) return;
    if (typed.empty()) {
        Q_EMIT cleared();
        list_->lineEdit()->setText(listText(value_));
        return;
    }
    value_ = typed;
    Q_EMIT edited();
    Q_EMIT finished();
}

}  // namespace tenter::desktop::controls
