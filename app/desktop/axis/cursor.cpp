#include "axis/cursor.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "row/ink.h"
#include "row/numbers.h"

namespace tenter::desktop::axis {

namespace {

constexpr int flagHeight = 18;
constexpr int readingRoom = 56;  // right of the hairline, for the size it crosses

}  // namespace

Cursor::Cursor(Viewing& viewing, const WidthScale& scale, const SizePlot& sizes, QWidget* parent)
    : QWidget(parent), viewing_(viewing), scale_(scale), sizes_(sizes) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
}

QString Cursor::says() const {
    const double width = viewing_.width();
    const int columns = viewing_.row().settings(viewing_.band()).row.columns.value_or(1);
    const QString count = columns == 1 ? tr("1 column") : tr("%1 columns").arg(columns);
    return tr("%1 px · %2 rem · %3")
        .arg(row::decimal(width, 2), row::decimal(width / viewing_.shown().page.rem(), 2), count);
}

QRect Cursor::flag() const {
    const int x = static_cast<int>(std::lround(scale_.x(viewing_.width())));
    const int width = fontMetrics().horizontalAdvance(says()) + 18;
    // Near the end the flag flies to the other side.
    return {x + width > this->width() - 4 ? x - width + 1 : x, 1, width, flagHeight};
}

QRect Cursor::strip() const {
    const int x = static_cast<int>(std::lround(scale_.x(viewing_.width())));
    return {x - 6, 0, readingRoom + 6, height()};
}

void Cursor::follow() {
    update(flagDrawn_.adjusted(-3, -3, 3, 3));
    update(stripDrawn_);
    flagDrawn_ = flag();
    stripDrawn_ = strip();
    update(flagDrawn_.adjusted(-3, -3, 3, 3));
    update(stripDrawn_);
}

void Cursor::setFocused(bool on) {
    focused_ = on;
    follow();
}

void Cursor::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    const double x = std::round(scale_.x(viewing_.width()));
    if (x < scale_.left() - 1 || x > scale_.right() + 1) return;
    QPainter painter(this);
    painter.fillRect(QRectF(x, flagHeight, 1, height() - flagHeight), ink.accent);

    painter.setRenderHint(QPainter::Antialiasing, true);
    if (sizes_.isVisible()) {
        for (const SizePlot::Reading& reading : sizes_.readings(viewing_.width())) {
            const QPointF at = reading.at + sizes_.pos() + QPointF(0.5, 0);
            painter.setPen(QPen(ink.ground, 1));
            painter.setBrush(reading.chosen ? ink.accent : ink.text);
            painter.drawEllipse(QPointF(x + 0.5, at.y()), 3, 3);
            if (!reading.chosen) continue;
            const QRectF place(x + 7, at.y() - 17, fontMetrics().horizontalAdvance(reading.text) + 4, 14);
            QColor ground = ink.ground;
            ground.setAlpha(220);
            painter.fillRect(place, ground);
            painter.setPen(ink.accentText);
            painter.drawText(place, Qt::AlignCenter, reading.text);
        }
    }
    const QRectF flag = this->flag();
    const bool flown = flag.left() < x;
    QPainterPath shape;
    const double notch = 5;
    if (flown) {
        shape.moveTo(flag.right(), flag.top());
        shape.lineTo(flag.left(), flag.top());
        shape.lineTo(flag.left() + notch, flag.center().y());
        shape.lineTo(flag.left(), flag.bottom());
        shape.lineTo(flag.right(), flag.bottom());
    } else {
        shape.moveTo(flag.left(), flag.top());
        shape.lineTo(flag.right(), flag.top());
        shape.lineTo(flag.right() - notch, flag.center().y());
        shape.lineTo(flag.right(), flag.bottom());
        shape.lineTo(flag.left(), flag.bottom());
    }
    shape.closeSubpath();
    painter.fillPath(shape, ink.accent);
    painter.setPen(ink.onAccent);
    painter.drawText(flag.adjusted(flown ? notch + 2 : 5, 0, flown ? -5 : -notch - 2, 0), Qt::AlignVCenter,
                     says());
    if (focused_) {
        painter.setPen(QPen(ink.accent, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(flag.adjusted(-2, -0.5, 2, 2));
    }
}

}  // namespace tenter::desktop::axis
