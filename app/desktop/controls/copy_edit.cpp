#include "controls/copy_edit.h"

#include <QInputDialog>
#include <QKeyEvent>
#include <QMimeData>
#include <QTextBlock>
#include <cmath>

namespace tenter::desktop::controls {

using project::Run;

namespace {

Run::Kind kindOf(const QTextCharFormat& format) {
    if (format.isAnchor()) return Run::Kind::Link;
    if (format.fontWeight() > QFont::Normal) return Run::Kind::Strong;
    if (format.fontItalic()) return Run::Kind::Emphasis;
    return Run::Kind::Plain;
}

/// Appends to the last run if that has the same kind and link.
void appendRun(project::Copy& copy, Run::Kind kind, const QString& text, const QString& to) {
    if (text.isEmpty()) return;
    const std::string utf8 = text.toStdString();
    const std::string address = to.toStdString();
    if (!copy.empty() && copy.back().kind == kind && copy.back().to == address)
        copy.back().text += utf8;
    else
        copy.push_back({kind, utf8, address});
}

void appendBreak(project::Copy& copy) {
    copy.push_back({Run::Kind::Break, {}, {}});
}

}  // namespace

CopyEdit::CopyEdit(QWidget* parent) : QTextEdit(parent) {
    // Undo acts on the document.
    setUndoRedoEnabled(false);
    setTabChangesFocus(true);
    setAcceptRichText(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    document()->setDocumentMargin(6);
    connect(this, &QTextEdit::textChanged, this, [this] {
        fitHeight();
        if (!filling_) Q_EMIT edited();
    });
}

QTextCharFormat CopyEdit::formatOf(const Run& run) const {
    QTextCharFormat format;
    if (run.kind == Run::Kind::Strong) format.setFontWeight(QFont::Bold);
    if (run.kind == Run::Kind::Emphasis) format.setFontItalic(true);
    if (run.kind == Run::Kind::Link) {
        format.setAnchor(true);
        format.setAnchorHref(QString::fromStdString(run.to));
        format.setFontUnderline(true);
        format.setForeground(palette().color(QPalette::Link));
    }
    return format;
}

void CopyEdit::setCopy(const project::Copy& copy) {
    if (copy == copyText()) return;
    filling_ = true;
    const int at = textCursor().position();
    clear();
    QTextCursor cursor(document());
    for (const Run& run : copy) {
        if (run.kind == Run::Kind::Break)
            cursor.insertText(QString(QChar::LineSeparator), {});
        else
            // A line feed in a run is white space, not a line break.
            cursor.insertText(QString::fromStdString(run.text).replace('\n', ' '), formatOf(run));
    }
    cursor.setPosition(std::min(at, document()->characterCount() - 1));
    setTextCursor(cursor);
    filling_ = false;
    fitHeight();
}

project::Copy CopyEdit::copyText() const {
    project::Copy copy;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block != document()->begin()) appendBreak(copy);
        for (auto at = block.begin(); !at.atEnd(); ++at) {
            const QTextCharFormat format = at.fragment().charFormat();
            const auto lines = at.fragment().text().split(QChar::LineSeparator);
            for (int i = 0; i < lines.size(); ++i) {
                if (i > 0) appendBreak(copy);
                appendRun(copy, kindOf(format), lines[i], format.anchorHref());
            }
        }
    }
    return copy;
}

void CopyEdit::toggle(Run::Kind kind) {
    QTextCursor cursor = textCursor();
    const Run::Kind now = kindOf(cursor.charFormat());
    const QTextCharFormat format = formatOf({now == kind ? Run::Kind::Plain : kind, {}, {}});
    if (cursor.hasSelection())
        cursor.setCharFormat(format);
    else
        setCurrentCharFormat(format);
}

void CopyEdit::toggleStrong() {
    toggle(Run::Kind::Strong);
}

void CopyEdit::toggleEmphasis() {
    toggle(Run::Kind::Emphasis);
}

void CopyEdit::editLink() {
    QTextCursor cursor = textCursor();
    if (!cursor.hasSelection()) cursor.select(QTextCursor::WordUnderCursor);
    if (!cursor.hasSelection()) return;
    bool ok = false;
    const QString before = cursor.charFormat().anchorHref();
    const QString to = QInputDialog::getText(this, QObject::tr("Link"),
                                             QObject::tr("Link address (leave empty to remove the link):"),
                                             QLineEdit::Normal, before, &ok);
    if (!ok) return;
    const auto kind = to.isEmpty() ? Run::Kind::Plain : Run::Kind::Link;
    cursor.setCharFormat(formatOf({kind, {}, to.toStdString()}));
}

void CopyEdit::breakLine() {
    textCursor().insertText(QString(QChar::LineSeparator));
}

bool CopyEdit::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return false;
        }
        if (toolFor(*key)) {
            event->accept();
            return true;
        }
    }
    return QTextEdit::event(event);
}

std::function<void()> CopyEdit::toolFor(const QKeyEvent& event) {
    const auto is = [&](Qt::Key key, Qt::KeyboardModifiers modifiers) {
        return event.key() == key && (event.modifiers() & ~Qt::KeypadModifier) == modifiers;
    };
    if (event.matches(QKeySequence::Bold)) return [this] { toggleStrong(); };
    if (event.matches(QKeySequence::Italic)) return [this] { toggleEmphasis(); };
    if (is(Qt::Key_K, Qt::ControlModifier)) return [this] { editLink(); };
    if (is(Qt::Key_Up, Qt::AltModifier)) return [this] { Q_EMIT moveRequested(-1); };
    if (is(Qt::Key_Down, Qt::AltModifier)) return [this] { Q_EMIT moveRequested(1); };
    if (is(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier))
        return [this] { Q_EMIT removeRequested(); };
    return {};
}

void CopyEdit::keyPressEvent(QKeyEvent* event) {
    if (const std::function<void()> tool = toolFor(*event))
        tool();
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        breakLine();
    else
        QTextEdit::keyPressEvent(event);
}

void CopyEdit::focusInEvent(QFocusEvent* event) {
    QTextEdit::focusInEvent(event);
    Q_EMIT focused();
}

void CopyEdit::focusOutEvent(QFocusEvent* event) {
    QTextEdit::focusOutEvent(event);
    Q_EMIT editingFinished();
}

void CopyEdit::insertFromMimeData(const QMimeData* source) {
    QString text = source->text();
    text.replace("\r\n", "\n");
    text.replace('\n', QChar::LineSeparator);
    textCursor().insertText(text);
}

void CopyEdit::resizeEvent(QResizeEvent* event) {
    QTextEdit::resizeEvent(event);
    fitHeight();
}

QSize CopyEdit::sizeHint() const {
    return {200, static_cast<int>(std::ceil(document()->size().height())) + 4};
}

void CopyEdit::fitHeight() {
    const int height = std::max(32, sizeHint().height());
    if (height != maximumHeight() || height != minimumHeight()) setFixedHeight(height);
}

}  // namespace tenter::desktop::controls
