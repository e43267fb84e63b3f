#include "axis/cursor.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "controls/text_scale.h"
#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int flagHeight = 16;  // above the numbers of the ruler
constexpr int labelRoom = 56;   // px right of the hairline, for the font size at the cursor

}  // namespace

Cursor::Cursor(const LayoutCache& layouts, const WidthScale& scale, const SizePlot& sizes, QWidget* parent)
    : QWidget(parent), layouts_(layouts), scale_(scale), sizes_(sizes) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
}

QString Cursor::text() const {
    const double width = layouts_.width();
    const int columns = layouts_.row().settings(layouts_.band()).row.columns.value_or(1);
    return QObject::tr("%1 · %2\u00A0rem · %3")
        .arg(pixels(width), figure(width / layouts_.row().rem(width)), columnsTitle(columns));
}

QRect Cursor::flag() const {
    const int x = static_cast<int>(std::lround(scale_.x(layouts_.width())));
    const int width = fontMetrics().horizontalAdvance(text()) + 18;
    // Near the right end there is no room, so the flag is on the left of the hairline.
    return {x + width > this->width() - 4 ? x - width + 1 : x, 1, width, controls::scaled(flagHeight)};
}

QRect Cursor::strip() const {
    const int x = static_cast<int>(std::lround(scale_.x(layouts_.width())));
    return {x - 6, 0, labelRoom + 6, height()};
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
    const double x = std::round(scale_.x(layouts_.width()));
    if (x < scale_.left() - 1 || x > scale_.right() + 1) return;
    QPainter painter(this);
    painter.fillRect(QRectF(x, controls::scaled(flagHeight), 1, height() - controls::scaled(flagHeight)),
                     ink.accent);

    painter.setRenderHint(QPainter::Antialiasing, true);
    if (sizes_.isVisible()) {
        for (const SizePlot::SizeAtWidth& size : sizes_.sizesAt(layouts_.width())) {
            const QPointF at = size.at + sizes_.pos() + QPointF(0.5, 0);
            painter.setPen(QPen(ink.ground, 1));
            painter.setBrush(size.chosen ? ink.accent : ink.text);
            painter.drawEllipse(QPointF(x + 0.5, at.y()), 3, 3);
            if (!size.chosen) continue;
            const QRectF place(x + 7, at.y() - 17, fontMetrics().horizontalAdvance(size.text) + 4, 14);
            QColor ground = ink.ground;
            ground.setAlpha(220);
            painter.fillRect(place, ground);
            painter.setPen(ink.accentText);
            painter.drawText(place, Qt::AlignCenter, size.text);
        }
    }
    const QRectF flag = this->flag();
    const bool onLeft = flag.left() < x;
    QPainterPath shape;
    const double notch = 5;
    if (onLeft) {
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
    painter.drawText(flag.adjusted(onLeft ? notch + 2 : 5, 0, onLeft ? -5 : -notch - 2, 0), Qt::AlignVCenter,
                     text());
    if (focused_) {
        painter.setPen(QPen(ink.accent, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(flag.adjusted(-2, -0.5, 2, 2));
    }
}

}  // namespace tenter::desktop::axis
