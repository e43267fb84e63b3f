// A text editor laid over a part of the row. The row view paints the text; the editor paints caret, selection
// and the text of an input method, at the places that the layout gives.
#pragma once

#include <QBasicTimer>
#include <optional>

#include "controls/copy_edit.h"
#include "row/editing/text_map.h"
#include "row/overlays.h"

namespace tenter::desktop::row::editing {

class TextField : public controls::CopyEdit {
    Q_OBJECT

public:
    explicit TextField(QWidget* viewport);
    /// The text with what an input method composes at the caret.
    [[nodiscard]] project::Copy shownCopy() const;
    /// Shows `copy`, unless it is shown already.
    void showCopy(const project::Copy& copy);
    /// Keeps nothing of what an input method composes.
    void endComposition();
    /// Follows the layout of the text. `at` converts CSS px to px of the viewport.
    void follow(TextMap map, const Projection& at, const QColor& ink, const QFont& font);
    /// Puts the caret at a point of the viewport, or at the end of the text.
    void putCaret(const std::optional<QPointF>& view);
    /// The caret, px of the viewport.
    [[nodiscard]] QRect caretRect() const;
    [[nodiscard]] QVariant inputMethodQuery(Qt::InputMethodQuery query) const override;

Q_SIGNALS:
    void committed();            ///< the text is to be kept
    void cancelled();            ///< the text from before is to be restored
    void tabbed(int direction);  ///< the text is to be kept and the next (1) or previous (−1) one edited
    void caretMoved();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void inputMethodEvent(QInputMethodEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void timerEvent(QTimerEvent* event) override;
    void fitHeight() override {}

private:
    [[nodiscard]] TextMap::Hit hitAt(const QPointF& point) const;
    void moveTo(const TextMap::Hit& hit, bool selecting);
    bool moveByLine(const QKeyEvent& event);
    [[nodiscard]] TextMap::Caret caret() const;
    [[nodiscard]] QRectF inField(const layout::Box& box) const;
    [[nodiscard]] QRectF caretInField() const;
    void onCaret();
    void blink();

    std::optional<TextMap> map_;
    Projection at_;  // to px of the viewport of the row view
    QColor ink_;
    QFont font_;
    QString composed_;  // by an input method, not part of the text yet
    int composedCaret_ = 0;
    bool atLineEnd_ = false;          // see TextMap
    bool keepsLineEnd_ = false;       // while the caret is moved to such a place
    std::optional<double> climbing_;  // x that Up and Down keep
    bool caretVisible_ = true;
    QBasicTimer blinking_;
};

}  // namespace tenter::desktop::row::editing
