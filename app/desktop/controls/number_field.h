// A field for a number and its unit.
#pragma once

#include <QLineEdit>
#include <QTimer>

#include "controls/amount.h"

namespace tenter::desktop::controls {

/// Applies as it is typed; a value that may be the start of another ("1" of "18") waits for a pause or Enter,
/// one out of range waits to be mended. Escape takes back what was typed. Up, Down and the wheel step, the
/// wheel only with the focus; Shift steps by ten, Alt by a tenth. Emptied, it asks to inherit.
class NumberField : public QLineEdit {
    Q_OBJECT

public:
    explicit NumberField(AmountKind kind, QWidget* parent = nullptr);
    [[nodiscard]] const Amount& amount() const { return amount_; }
    [[nodiscard]] const AmountKind& kind() const { return kind_; }
    /// Shows `amount`, unless what is being typed means the same.
    void setAmount(const Amount& amount);
    void setLimits(double least, double most);
    /// A dot in the corner: this layer sets the value.
    void setMarked(bool marked);
    /// Its menu can reset it, whether or not the dot is shown.
    void setResettable(bool resettable) { resettable_ = resettable; }
    /// Emptying the field means nothing; the old value comes back.
    void setAlwaysFilled(bool on) { alwaysFilled_ = on; }
    /// As arrow keys do: by so many steps, until `finish`.
    void stepBy(double steps);
    void finish() { commit(); }
    /// What Shift and Alt make of a step.
    static double stepsFor(Qt::KeyboardModifiers modifiers);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void amountEdited();
    void typingFinished();
    void takenBack();
    void cleared();
    void refused(const QString& why);  ///< empty: what is typed is no longer amiss

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
    [[nodiscard]] bool isOnItsWay(const Amount& amount) const;

    AmountKind kind_;
    Amount amount_;
    Amount start_;
    QTimer pause_;
    bool touched_ = false;
    bool selectOnRelease_ = false;
    bool marked_ = false;
    bool resettable_ = false;
    bool amiss_ = false;
    bool alwaysFilled_ = false;
};

}  // namespace tenter::desktop::controls
