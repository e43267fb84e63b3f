#include "controls/text_editor.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <utility>

namespace tenter::desktop::controls {

TextEditor::TextEditor(Accepts accepts, QWidget* parent)
    : Editor(parent), accepts_(std::move(accepts)), field_(new QLineEdit(this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(field_);
    setFocusProxy(field_);
    field_->installEventFilter(this);
    connect(field_, &QLineEdit::textEdited, this, &TextEditor::typed);
    connect(field_, &QLineEdit::editingFinished, this, &TextEditor::commit);
}

void TextEditor::setValue(const Json& value) {
    const QString text = value.is_string() ? QString::fromStdString(value.get<std::string>()) : QString();
    const bool same = text == value_;
    value_ = text;
    if (same && touched_ && field_->hasFocus()) return;
    if (field_->text() == text) return;
    field_->setText(text);
    if (!field_->hasFocus()) field_->setCursorPosition(0);
}

Json TextEditor::value() const {
    return value_.toStdString();
}

void TextEditor::setName(const QString& name) {
    field_->setAccessibleName(name);
}

bool TextEditor::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) {
        start_ = value_;
        touched_ = false;
        Q_EMIT focused();
    }
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        // Undo acts on the document, also while typing.
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) return true;
    }
    if (event->type() == QEvent::KeyPress && touched_ &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        touched_ = false;
        value_ = start_;
        field_->setText(start_);
        Q_EMIT reverted();
        return true;
    }
    return Editor::eventFilter(watched, event);
}

void TextEditor::typed() {
    touched_ = true;
    const QString text = field_->text();
    if (const QString why = accepts_ ? accepts_(text) : QString(); !why.isEmpty()) {
        Q_EMIT rejected(why);
        return;
    }
    Q_EMIT rejected({});
    value_ = text;
    Q_EMIT edited();
}

void TextEditor::commit() {
    if (!touched_) return;
    touched_ = false;
    if (field_->text() != value_) {
        if (accepts_)
            Q_EMIT rejected(QObject::tr("%1; the value stays “%2”").arg(accepts_(field_->text()), value_));
        field_->setText(value_);
    }
    start_ = value_;
    Q_EMIT finished();
}

}  // namespace tenter::desktop::controls
