// The accessible interface of a field for one line of text.
#pragma once

#include <QAccessibleWidget>
#include <QLineEdit>

namespace tenter::desktop::accessible {

/// Unlike Qt’s own interface, a text that assistive technology enters counts as typed, so that it is applied.
class LineEditInterface : public QAccessibleWidget,
                          public QAccessibleTextInterface,
                          public QAccessibleEditableTextInterface {
public:
    explicit LineEditInterface(QLineEdit* field, QAccessible::Role role = QAccessible::EditableText);

    void* interface_cast(QAccessible::InterfaceType type) override;
    [[nodiscard]] QAccessible::State state() const override;
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text kind, const QString& text) override;

    void selection(int index, int* start, int* end) const override;
    [[nodiscard]] int selectionCount() const override;
    void addSelection(int start, int end) override;
    void removeSelection(int index) override;
    void setSelection(int index, int start, int end) override;
    [[nodiscard]] int cursorPosition() const override;
    void setCursorPosition(int position) override;
    [[nodiscard]] QString text(int start, int end) const override;
    [[nodiscard]] int characterCount() const override;
    [[nodiscard]] QRect characterRect(int offset) const override;
    [[nodiscard]] int offsetAtPoint(const QPoint& point) const override;
    void scrollToSubstring(int start, int end) override;
    QString attributes(int offset, int* start, int* end) const override;

    void deleteText(int start, int end) override;
    void insertText(int offset, const QString& text) override;
    void replaceText(int start, int end, const QString& text) override;

protected:
    [[nodiscard]] QLineEdit& field() const { return *static_cast<QLineEdit*>(widget()); }
    /// Makes `text` the text of the field, as if it was typed and finished by Enter.
    virtual void enter(const QString& text);
};

}  // namespace tenter::desktop::accessible
