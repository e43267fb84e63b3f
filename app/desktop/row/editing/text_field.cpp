#include "row/editing/text_field.h"

#include <QApplication>
#include <QInputMethodEvent>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "row/ink.h"

namespace tenter::desktop::row::editing {

namespace {

constexpr int room = 6;  // px around the text, for the caret and the frame

}  // namespace

TextField::TextField(QWidget* viewport) : CopyEdit(viewport) {
    setFrameShape(QFrame::NoFrame);
    setAcceptDrops(false);
    setAccessibleName(QObject::tr("Text in the row"));
    setTabChangesFocus(false);
    document()->setDocumentMargin(0);
    this->viewport()->setAutoFillBackground(false);
    this->viewport()->setCursor(Qt::IBeamCursor);
    hide();
    connect(this, &QTextEdit::cursorPositionChanged, this, &TextField::onCaret);
    connect(this, &QTextEdit::selectionChanged, this, [this] { this->viewport()->update(); });
}

project::Copy TextField::shownCopy() const {
    return inserted(copyText(), textCursor().position(), composed_);
}

void TextField::showCopy(const project::Copy& copy) {
    if (copy == shownCopy()) return;
    endComposition();
    setCopy(copy);
}

void TextField::endComposition() {
    composedCaret_ = 0;
    if (std::exchange(composed_, {}).isEmpty()) return;
    QInputMethodEvent nothing;
    CopyEdit::inputMethodEvent(&nothing);
}

void TextField::follow(TextMap map, const Projection& at, const QColor& ink, const QFont& font) {
    map_ = std::move(map);
    at_ = at;
    ink_ = ink;
    font_ = font;
    setGeometry(at_.rect(map_->extent()).toAlignedRect().adjusted(-room, -room, room, room));
    viewport()->update();
    updateMicroFocus();
}

// ---- Caret

void TextField::putCaret(const std::optional<QPointF>& view) {
    if (view && map_)
        moveTo(hitAt(*view - QPointF(pos())), false);
    else
        moveCursor(QTextCursor::End);
    blink();
}

TextMap::Caret TextField::caret() const {
    return map_->caret(textCursor().position() + composedCaret_, atLineEnd_);
}

QRectF TextField::inField(const layout::Box& box) const {
    return at_.rect(box).translated(-pos());
}

QRectF TextField::caretInField() const {
    if (!map_) return {};
    const TextMap::Caret at = caret();
    const QRectF box = inField({at.x, at.top, 0, at.bottom - at.top});
    return {std::round(box.x()) - 1, box.y(), 2, box.height()};
}

QRect TextField::caretRect() const {
    return caretInField().translated(pos()).toAlignedRect();
}

void TextField::onCaret() {
    if (isFilling()) return;
    if (!keepsLineEnd_) atLineEnd_ = false;
    blink();
    updateMicroFocus();
    Q_EMIT caretMoved();
}

void TextField::blink() {
    caretVisible_ = true;
    const int period = QApplication::cursorFlashTime();
    if (hasFocus() && period > 0)
        blinking_.start(period / 2, this);
    else
        blinking_.stop();
    viewport()->update();
}

void TextField::timerEvent(QTimerEvent* event) {
    if (event->timerId() != blinking_.timerId()) {
        CopyEdit::timerEvent(event);
        return;
    }
    caretVisible_ = !caretVisible_;
    viewport()->update(caretInField().toAlignedRect());
}

void TextField::paintEvent(QPaintEvent*) {
    if (!map_) return;
    const Ink inks = Ink::of(palette());
    QPainter painter(viewport());
    painter.setPen(QPen(inks.accent, 1));
    painter.drawRect(QRectF(viewport()->rect()).adjusted(2.5, 2.5, -2.5, -2.5));
    const QTextCursor cursor = textCursor();
    QColor wash = inks.accent;
    wash.setAlpha(96);
    for (const layout::Box& box : map_->boxes(cursor.selectionStart(), cursor.selectionEnd()))
        painter.fillRect(inField(box), wash);
    const int start = cursor.position();
    for (const layout::Box& box : map_->boxes(start, start + static_cast<int>(composed_.size()))) {
        const QRectF under = inField(box);
        painter.fillRect(QRectF(under.left(), std::round(under.bottom()) - 2, under.width(), 1), ink_);
    }
    if (hasFocus() && caretVisible_) painter.fillRect(caretInField(), ink_);
}

// ---- Pointer

TextMap::Hit TextField::hitAt(const QPointF& point) const {
    const QPointF view = point + pos();
    return map_->positionAt({(view.x() - at_.left) / at_.zoom, (view.y() - at_.top) / at_.zoom});
}

void TextField::moveTo(const TextMap::Hit& hit, bool selecting) {
    QTextCursor cursor = textCursor();
    const int last = document()->characterCount() - 1;
    cursor.setPosition(std::clamp(hit.position, 0, last),
                       selecting ? QTextCursor::KeepAnchor : QTextCursor::MoveAnchor);
    keepsLineEnd_ = true;
    atLineEnd_ = hit.atLineEnd;
    setTextCursor(cursor);
    keepsLineEnd_ = false;
    blink();
}

void TextField::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !map_) return;
    climbing_.reset();
    if (!composed_.isEmpty()) QGuiApplication::inputMethod()->commit();
    moveTo(hitAt(event->position()), (event->modifiers() & Qt::ShiftModifier) != 0);
}

void TextField::mouseMoveEvent(QMouseEvent* event) {
    if ((event->buttons() & Qt::LeftButton) != 0 && map_) moveTo(hitAt(event->position()), true);
}

void TextField::mouseReleaseEvent(QMouseEvent*) {}

void TextField::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !map_) return;
    moveTo(hitAt(event->position()), false);
    QTextCursor cursor = textCursor();
    cursor.select(QTextCursor::WordUnderCursor);
    setTextCursor(cursor);
}

// The row view scrolls.
void TextField::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

// ---- Keyboard

bool TextField::moveByLine(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    if (!map_ || (modifiers & ~Qt::ShiftModifier) != 0) return false;
    const bool selecting = modifiers == Qt::ShiftModifier;
    const TextMap::Caret at = caret();
    switch (event.key()) {
        case Qt::Key_Home:
            moveTo(map_->startOf(at.line), selecting);
            break;
        case Qt::Key_End:
            moveTo(map_->endOf(at.line), selecting);
            break;
        case Qt::Key_Up:
        case Qt::Key_Down: {
            const double x = climbing_.value_or(at.x);
            const bool up = event.key() == Qt::Key_Up;
            if (up && at.line == 0)
                moveTo({0, false}, selecting);
            else if (!up && at.line + 1 == map_->lineCount())
                moveTo(map_->endOf(at.line), selecting);
            else
                moveTo(map_->positionOn(up ? at.line - 1 : at.line + 1, x), selecting);
            climbing_ = x;
            return true;
        }
        default:
            return false;
    }
    climbing_.reset();
    return true;
}

void TextField::keyPressEvent(QKeyEvent* event) {
    const auto modifiers = event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier);
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape)
        Q_EMIT cancelled();
    else if (enter && modifiers == Qt::ControlModifier)
        Q_EMIT committed();
    else if ((event->key() == Qt::Key_Tab || event->key() == Qt::Key_Backtab) && modifiers == Qt::NoModifier)
        Q_EMIT tabbed(event->key() == Qt::Key_Tab ? 1 : -1);
    else if (!moveByLine(*event)) {
        climbing_.reset();
        CopyEdit::keyPressEvent(event);
    }
}

// ---- Input methods

void TextField::inputMethodEvent(QInputMethodEvent* event) {
    composed_ = event->preeditString();
    composedCaret_ = static_cast<int>(composed_.size());
    for (const QInputMethodEvent::Attribute& attribute : event->attributes())
        if (attribute.type == QInputMethodEvent::Cursor) composedCaret_ = attribute.start;
    climbing_.reset();
    CopyEdit::inputMethodEvent(event);
    // The text that is composed is laid out with the rest.
    Q_EMIT edited();
    updateMicroFocus();
}

QVariant TextField::inputMethodQuery(Qt::InputMethodQuery query) const {
    switch (query) {
        case Qt::ImCursorRectangle:
            return caretInField();
        case Qt::ImAnchorRectangle: {
            if (!map_) break;
            const TextMap::Caret anchor = map_->caret(textCursor().anchor());
            return inField({anchor.x, anchor.top, 1, anchor.bottom - anchor.top});
        }
        case Qt::ImFont:
            return font_;
        default:
            break;
    }
    return CopyEdit::inputMethodQuery(query);
}

void TextField::focusInEvent(QFocusEvent* event) {
    CopyEdit::focusInEvent(event);
    blink();
}

// A menu, or a dialog that asks for a link, does not end the edit.
void TextField::focusOutEvent(QFocusEvent* event) {
    CopyEdit::focusOutEvent(event);
    blink();
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason)
        Q_EMIT committed();
}

}  // namespace tenter::desktop::row::editing
