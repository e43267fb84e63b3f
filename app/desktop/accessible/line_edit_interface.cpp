#include "accessible/line_edit_interface.h"

#include <algorithm>

namespace tenter::desktop::accessible {

LineEditInterface::LineEditInterface(QLineEdit* field, QAccessible::Role role)
    : QAccessibleWidget(field, role) {}

void* LineEditInterface::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
    if (type == QAccessible::EditableTextInterface)
        return static_cast<QAccessibleEditableTextInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

QAccessible::State LineEditInterface::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.selectableText = true;
    state.editable = !field().isReadOnly();
    state.readOnly = field().isReadOnly();
    return state;
}

QString LineEditInterface::text(QAccessible::Text kind) const {
    if (kind == QAccessible::Value) return field().text();
    // An empty field says what belongs into it.
    const QString text = QAccessibleWidget::text(kind);
    return kind == QAccessible::Description && text.isEmpty() ? field().placeholderText() : text;
}

void LineEditInterface::setText(QAccessible::Text kind, const QString& text) {
    if (kind != QAccessible::Value) return QAccessibleWidget::setText(kind, text);
    if (field().isEnabled() && !field().isReadOnly()) enter(text);
}

void LineEditInterface::enter(const QString& text) {
    field().setText(text);
    Q_EMIT field().textEdited(field().text());
    Q_EMIT field().editingFinished();
}

void LineEditInterface::selection(int index, int* start, int* end) const {
    const bool has = index == 0 && field().hasSelectedText();
    *start = has ? field().selectionStart() : 0;
    *end = has ? field().selectionEnd() : 0;
}

int LineEditInterface::selectionCount() const {
    return field().hasSelectedText() ? 1 : 0;
}

void LineEditInterface::addSelection(int start, int end) {
    setSelection(0, start, end);
}

void LineEditInterface::removeSelection(int index) {
    if (index == 0) field().deselect();
}

void LineEditInterface::setSelection(int index, int start, int end) {
    if (index == 0) field().setSelection(start, end - start);
}

int LineEditInterface::cursorPosition() const {
    return field().cursorPosition();
}

void LineEditInterface::setCursorPosition(int position) {
    field().setCursorPosition(position);
}

QString LineEditInterface::text(int start, int end) const {
    return field().text().mid(start, end - start);
}

int LineEditInterface::characterCount() const {
    return static_cast<int>(field().text().size());
}

// Qt knows the place of the cursor only; the others are measured from it.
QRect LineEditInterface::characterRect(int offset) const {
    if (offset < 0 || offset >= characterCount()) return {};
    const QFontMetrics metrics = field().fontMetrics();
    const QString all = field().text();
    const QRect cursor = field().inputMethodQuery(Qt::ImCursorRectangle).toRect();
    const int from = metrics.horizontalAdvance(all.left(offset));
    const int at = metrics.horizontalAdvance(all.left(field().cursorPosition()));
    const QRect place(cursor.x() + from - at, cursor.y(), metrics.horizontalAdvance(all.mid(offset, 1)),
                      cursor.height());
    return {field().mapToGlobal(place.topLeft()), place.size()};
}

int LineEditInterface::offsetAtPoint(const QPoint& point) const {
    return field().cursorPositionAt(field().mapFromGlobal(point));
}

void LineEditInterface::scrollToSubstring(int start, int) {
    field().setCursorPosition(start);
}

QString LineEditInterface::attributes(int offset, int* start, int* end) const {
    *start = *end = offset;
    return {};
}

void LineEditInterface::deleteText(int start, int end) {
    replaceText(start, end, {});
}

void LineEditInterface::insertText(int offset, const QString& text) {
    replaceText(offset, offset, text);
}

void LineEditInterface::replaceText(int start, int end, const QString& text) {
    QString all = field().text();
    setText(QAccessible::Value, all.replace(start, std::max(0, end - start), text));
}

}  // namespace tenter::desktop::accessible
