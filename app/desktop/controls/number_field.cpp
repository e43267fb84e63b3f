#include "controls/number_field.h"

#include <QAccessible>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <utility>

#include "controls/inks.h"
#include "controls/text_scale.h"
#include "units/number.h"

namespace tenter::desktop::controls {

namespace {

constexpr int pauseAfterTyping = 700;  // ms, after which typing counts as finished

int wholeDigits(double value) {
    return value < 1 && value > -1 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
}

}  // namespace

NumberField::NumberField(AmountKind kind, QWidget* parent) : QLineEdit(parent), kind_(std::move(kind)) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setMaxLength(24);
    pause_.setSingleShot(true);
    pause_.setInterval(pauseAfterTyping);
    connect(&pause_, &QTimer::timeout, this, &NumberField::applyWaiting);
    connect(this, &QLineEdit::textEdited, this, &NumberField::typed);
    setLimits(kind_.least, kind_.most);
    showAmount();
}

void NumberField::setAmount(const Amount& amount) {
    const bool same = amount == amount_;
    amount_ = amount;
    if (hasFocus() && touched_) {
        const Reading reading = read(text(), kind_, amount_);
        const bool stillTyping = reading.state != Reading::State::Acceptable || pause_.isActive();
        if ((stillTyping && same) || reading.amount == amount_) return;
    }
    showAmount();
    if (hasFocus()) selectAll();
}

void NumberField::setLimits(double least, double most) {
    kind_.least = least;
    kind_.most = most;
    QString tip = requirement(kind_);
    tip[0] = tip[0].toUpper();
    setToolTip(tip);
}

void NumberField::setMarked(bool marked) {
    resettable_ = marked;
    if (marked == marked_) return;
    marked_ = marked;
    update();
}

QSize NumberField::sizeHint() const {
    return {scaled(88), scaled(28)};
}
QSize NumberField::minimumSizeHint() const {
    return {scaled(48), scaled(28)};
}

bool NumberField::event(QEvent* event) {
    // Undo acts on the document, also while typing.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return false;
        }
    }
    return QLineEdit::event(event);
}

void NumberField::typed() {
    pause_.stop();
    touched_ = true;
    const Reading reading = read(text(), kind_, amount_);
    const bool wasInvalid = invalid_;
    invalid_ = reading.state == Reading::State::Invalid;
    if (wasInvalid && !invalid_) Q_EMIT rejected({});
    if (invalid_)
        Q_EMIT rejected(reading.why);
    else if (reading.state == Reading::State::Acceptable) {
        if (isIntermediate(reading.amount))
            pause_.start();
        else
            apply(reading.amount);
    }
    update();
}

bool NumberField::isIntermediate(const Amount& amount) const {
    if (kind_.keywords.contains(amount.unit)) return false;
    if (text().trimmed().contains(QRegularExpression("[a-z%]$"))) return false;
    if (std::abs(amount.value) < kind_.usual) return true;
    // The "1" typed on the way from 16 to 18: it has fewer digits than the value before.
    return amount.unit == start_.unit && wholeDigits(amount.value) < wholeDigits(start_.value) &&
           !text().contains('.') && !text().contains(',');
}

void NumberField::apply(const Amount& amount) {
    touched_ = true;
    invalid_ = false;
    if (amount == amount_) return;
    amount_ = amount;
    Q_EMIT amountEdited();
}

void NumberField::applyWaiting() {
    pause_.stop();
    const Reading reading = read(text(), kind_, amount_);
    if (reading.state == Reading::State::Acceptable) apply(reading.amount);
}

void NumberField::commit() {
    if (!touched_) return;
    pause_.stop();
    const Reading reading = read(text(), kind_, amount_);
    if (reading.state == Reading::State::Acceptable)
        apply(reading.amount);
    else if (reading.state == Reading::State::Empty && !alwaysFilled_)
        Q_EMIT cleared();
    else if (!reading.why.isEmpty()) {
        // A part of the number may have been applied on the way to it: 170 on the way to 1700.
        const bool applied = !(amount_ == start_);
        amount_ = start_;
        if (applied) Q_EMIT reverted();
        Q_EMIT rejected(QObject::tr("%1; the value stays %2").arg(reading.why, formatted(amount_, kind_)));
    }
    touched_ = false;
    invalid_ = false;
    showAmount();
    start_ = amount_;
    Q_EMIT typingFinished();
}

void NumberField::enter(const QString& text) {
    start_ = amount_;
    setText(text);
    typed();
    commit();
}

void NumberField::stepBy(double steps) {
    applyWaiting();
    if (kind_.keywords.contains(amount_.unit)) return;
    const double step = stepOf(amount_, kind_);
    // Steps go to multiples of the step: from 17.3 to 18, not to 18.3.
    const double at = amount_.value / step;
    const double target = std::abs(steps) < 1 ? at + steps
                          : steps > 0         ? std::floor(at + 1e-9) + steps
                                              : std::ceil(at - 1e-9) + steps;
    const double value = std::clamp(units::rounded(target * step, kind_.decimals), kind_.least, kind_.most);
    apply({value, amount_.unit});
    showAmount();
    selectAll();
}

double NumberField::stepsFor(Qt::KeyboardModifiers modifiers) {
    return modifiers.testFlag(Qt::ShiftModifier) ? 10 : modifiers.testFlag(Qt::AltModifier) ? 0.1 : 1;
}

void NumberField::keyPressEvent(QKeyEvent* event) {
    const double size = stepsFor(event->modifiers());
    switch (event->key()) {
        case Qt::Key_Up:
            stepBy(size);
            return;
        case Qt::Key_Down:
            stepBy(-size);
            return;
        case Qt::Key_PageUp:
            stepBy(10);
            return;
        case Qt::Key_PageDown:
            stepBy(-10);
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            commit();
            selectAll();
            return;
        case Qt::Key_Escape:
            if (!touched_) break;
            pause_.stop();
            touched_ = false;
            invalid_ = false;
            amount_ = start_;
            showAmount();
            selectAll();
            Q_EMIT reverted();
            return;
        default:
            break;
    }
    QLineEdit::keyPressEvent(event);
}

void NumberField::wheelEvent(QWheelEvent* event) {
    if (!hasFocus() || isReadOnly()) {
        event->ignore();
        return;
    }
    const int turn = event->angleDelta().y() != 0 ? event->angleDelta().y() : event->angleDelta().x();
    if (turn == 0) return;
    stepBy((turn > 0 ? 1 : -1) * (event->modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1));
    event->accept();
}

void NumberField::focusInEvent(QFocusEvent* event) {
    start_ = amount_;
    touched_ = false;
    QLineEdit::focusInEvent(event);
    selectOnRelease_ = event->reason() == Qt::MouseFocusReason;
    if (!selectOnRelease_) selectAll();
}

void NumberField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason) return;
    commit();
    deselect();
}

void NumberField::mouseReleaseEvent(QMouseEvent* event) {
    QLineEdit::mouseReleaseEvent(event);
    if (selectOnRelease_ && !hasSelectedText()) selectAll();
    selectOnRelease_ = false;
}

void NumberField::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    menu.addAction(QObject::tr("&Copy"), this, &QLineEdit::copy);
    menu.addAction(QObject::tr("&Paste"), this, &QLineEdit::paste);
    if (!alwaysFilled_) {
        menu.addSeparator();
        QAction* inherit =
            menu.addAction(QObject::tr("&Reset to inherited value"), this, [this] { Q_EMIT cleared(); });
        inherit->setEnabled(resettable_);
    }
    menu.exec(event->globalPos());
}

void NumberField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (marked_) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette().color(QPalette::Highlight));
        painter.drawEllipse(QPointF(layoutDirection() == Qt::RightToLeft ? width() - 6 : 6, 6), 2.5, 2.5);
    }
    if (invalid_) {
        painter.setPen(QPen(caution(palette()), 2));
        painter.drawLine(QPointF(6, height() - 4.0), QPointF(width() - 6.0, height() - 4.0));
    }
}

void NumberField::showAmount() {
    setText(formatted(amount_, kind_));
    if (!QAccessible::isActive()) return;
    QAccessibleValueChangeEvent event(this, amount_.value);
    QAccessible::updateAccessibility(&event);
}

}  // namespace tenter::desktop::controls
