#include "axis/handle.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int handleSide = 24;     // px of the square that can be pressed. WCAG 2.2 SC 2.5.8
constexpr double ringReach = 9.5;  // px from the centre to the ring that shows the focus

}  // namespace

Handle::Handle(Shape shape, QWidget* parent) : QWidget(parent), shape_(shape) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(shape == Shape::Edge ? Qt::SizeHorCursor : Qt::SizeAllCursor);
    resize(handleSide, handleSide);
}

void Handle::setProminent(bool on) {
    if (on == prominent_) return;
    prominent_ = on;
    update();
}

void Handle::setCentre(const QPointF& centre) {
    move(static_cast<int>(std::lround(centre.x() - width() / 2.0)),
         static_cast<int>(std::lround(centre.y() - height() / 2.0)));
}

void Handle::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    const bool full = prominent_ || hovered_ || dragged_ || hasFocus();
    if (!full) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing, true);
    const QPointF centre(width() / 2.0, height() / 2.0);
    const bool live = hovered_ || dragged_ || hasFocus();
    const QColor colour = live || shape_ == Shape::End ? ink.accent : ink.text;
    if (shape_ == Shape::End) {
        painter.setPen(QPen(colour, 2));
        painter.setBrush(live ? colour : ink.ground);
        painter.drawEllipse(centre, 4.5, 4.5);
    } else {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawRect(QRectF(centre.x() - 1.5, 4, 3, height() - 8.0));
    }
    if (hasFocus()) {
        painter.setPen(QPen(ink.accent, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(
            QRectF(centre.x() - ringReach, centre.y() - ringReach, 2 * ringReach, 2 * ringReach), 3, 3);
    }
}

void Handle::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        event->ignore();
        return;
    }
    dragged_ = true;
    hold_ = event->position() - QPointF(width() / 2.0, height() / 2.0);
    Q_EMIT grabbed();
    update();
}

void Handle::mouseMoveEvent(QMouseEvent* event) {
    if (dragged_) Q_EMIT movedTo(mapToParent(event->position()) - hold_);
}

void Handle::mouseReleaseEvent(QMouseEvent*) {
    if (!dragged_) return;
    dragged_ = false;
    Q_EMIT released();
    update();
}

void Handle::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && dragged_) {
        dragged_ = false;
        Q_EMIT cancelled();
        Q_EMIT released();
        update();
        return;
    }
    const int right = event->key() == Qt::Key_Right ? 1 : event->key() == Qt::Key_Left ? -1 : 0;
    const int up = event->key() == Qt::Key_Up ? 1 : event->key() == Qt::Key_Down ? -1 : 0;
    if ((right == 0 && up == 0) || (up != 0 && shape_ == Shape::Edge)) {
        event->ignore();
        return;
    }
    if (!nudging_) {
        nudging_ = true;
        Q_EMIT grabbed();
    }
    Q_EMIT nudged(right, up, (event->modifiers() & Qt::ShiftModifier) != 0);
}

void Handle::nudge(int steps) {
    Q_EMIT grabbed();
    Q_EMIT nudged(shape_ == Shape::Edge ? steps : 0, shape_ == Shape::Edge ? 0 : steps, false);
    Q_EMIT released();
}

void Handle::keyReleaseEvent(QKeyEvent* event) {
    if (!event->isAutoRepeat() && nudging_) {
        nudging_ = false;
        Q_EMIT released();
    }
    event->ignore();
}

void Handle::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    if (nudging_) {
        nudging_ = false;
        Q_EMIT released();
    }
    update();
}

void Handle::enterEvent(QEnterEvent*) {
    hovered_ = true;
    update();
}

void Handle::leaveEvent(QEvent*) {
    hovered_ = false;
    update();
}

}  // namespace tenter::desktop::axis
