// A field for a number and its unit.
#pragma once

#include <QLineEdit>
#include <QTimer>

#include "controls/amount.h"

namespace tenter::desktop::controls {

/// Applies a value while it is typed. A value that may be the start of a longer one ("1" of "18") waits for a
/// pause or Enter; an invalid one is never applied. Escape restores the value from before the typing. Up,
/// Down and the wheel step, the wheel only while the field has the focus; Shift steps by ten, Alt by a tenth.
/// An emptied field asks for the inherited value.
class NumberField : public QLineEdit {
    Q_OBJECT

public:
    explicit NumberField(AmountKind kind, QWidget* parent = nullptr);
    [[nodiscard]] const Amount& amount() const { return amount_; }
    [[nodiscard]] const AmountKind& kind() const { return kind_; }
    /// Shows `amount`, unless the text being typed means the same.
    void setAmount(const Amount& amount);
    void setLimits(double least, double most);
    /// Shows a dot in the corner: the value is set in the layer being edited.
    void setMarked(bool marked);
    /// Enables the reset entry of the context menu, whether or not the dot is shown.
    void setResettable(bool resettable) { resettable_ = resettable; }
    /// The field has no inherited value: when emptied it shows the old value again.
    void setAlwaysFilled(bool on) { alwaysFilled_ = on; }
    /// Changes the value by `steps` steps of an arrow key. `finish` ends the edit.
    void stepBy(double steps);
    void finish() { commit(); }
    /// Enters `text` as if it was typed and finished by Enter.
    void enter(const QString& text);
    /// 10 with Shift, 0.1 with Alt, else 1.
    static double stepsFor(Qt::KeyboardModifiers modifiers);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void amountEdited();
    void typingFinished();
    void reverted();                    ///< the value from before the typing must be restored
    void cleared();                     ///< the inherited value is wanted
    void rejected(const QString& why);  ///< the text is invalid; empty: it is no longer

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void typed();
    void apply(const Amount& amount);
    void applyWaiting();
    void commit();
    void showAmount();
    [[nodiscard]] bool isIntermediate(const Amount& amount) const;

    AmountKind kind_;
    Amount amount_;
    Amount start_;
    QTimer pause_;
    bool touched_ = false;
    bool selectOnRelease_ = false;
    bool marked_ = false;
    bool resettable_ = false;
    bool invalid_ = false;
    bool alwaysFilled_ = false;
};

}  // namespace tenter::desktop::controls
