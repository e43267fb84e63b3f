#include "axis/disclosure.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "controls/expander.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int leastNameHeight = 24;  // px. WCAG 2.2 SC 2.5.8

}  // namespace

Disclosure::Disclosure(const QString& name, const QString& subtitle, QWidget* parent)
    : QAbstractButton(parent), subtitle_(subtitle) {
    controls::markAsExpander(*this);
    setText(name);
    setChecked(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(subtitle.isEmpty() ? name : name + ", " + subtitle);
}

QSize Disclosure::sizeHint() const {
    const int lines = isChecked() && !subtitle_.isEmpty() ? 2 : 1;
    const int widest = std::max(fontMetrics().horizontalAdvance(text()),
                                lines == 2 ? fontMetrics().horizontalAdvance(subtitle_) : 0);
    return {18 + widest + 6, std::max(leastNameHeight, lines * fontMetrics().height() + 4)};
}

void Disclosure::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing, true);
    const int lines = isChecked() && !subtitle_.isEmpty() ? 2 : 1;
    const int top = (height() - lines * fontMetrics().height()) / 2;
    const double middle = top + fontMetrics().height() / 2.0;
    QPainterPath mark;
    if (isChecked()) {
        mark.moveTo(3, middle - 2);
        mark.lineTo(11, middle - 2);
        mark.lineTo(7, middle + 3);
    } else {
        mark.moveTo(5, middle - 4);
        mark.lineTo(10, middle);
        mark.lineTo(5, middle + 4);
    }
    mark.closeSubpath();
    painter.fillPath(mark, underMouse() ? ink.text : ink.quiet);
    painter.setPen(ink.text);
    painter.drawText(QPointF(16, top + fontMetrics().ascent()), text());
    if (isChecked() && !subtitle_.isEmpty()) {
        painter.setPen(ink.quiet);
        painter.drawText(QPointF(16, top + fontMetrics().height() + fontMetrics().ascent()), subtitle_);
    }
    if (hasFocus()) {
        painter.setPen(QPen(ink.accent, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    }
}

void Disclosure::enterEvent(QEnterEvent*) {
    update();
}
void Disclosure::leaveEvent(QEvent*) {
    update();
}

}  // namespace tenter::desktop::axis
