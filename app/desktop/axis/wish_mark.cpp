#include "axis/wish_mark.h"

#include <QPainter>
#include <cmath>

#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

constexpr int side = 24;             // px, of the clickable square. WCAG 2.2 SC 2.5.8
constexpr double cornerReach = 4.5;  // px from the centre to a corner of the lozenge

}  // namespace

WishMark::WishMark(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    resize(side, side);
}

void WishMark::show(const PlotMark& mark, bool chosen, const QPointF& centre) {
    mark_ = mark;
    chosen_ = chosen;
    setAccessibleName(mark.says);
    setToolTip(toolTipText(mark.says));
    move(static_cast<int>(std::lround(centre.x() - side / 2.0)),
         static_cast<int>(std::lround(centre.y() - side / 2.0)));
    setVisible(true);
    update();
}

// A lozenge; crossed out if the wish cannot be satisfied.
void WishMark::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing, true);
    const bool live = underMouse() || hasFocus();
    const QColor colour = chosen_ || live ? ink.accent : ink.quiet;
    const QPointF centre(side / 2.0, side / 2.0);
    const double far = live ? cornerReach + 1 : cornerReach;
    painter.setPen(QPen(ink.ground, 3));
    const QPolygonF lozenge{centre + QPointF(0, -far), centre + QPointF(far, 0), centre + QPointF(0, far),
                            centre + QPointF(-far, 0)};
    painter.setBrush(mark_.conflicts ? ink.ground : colour);
    painter.drawPolygon(lozenge);
    painter.setPen(QPen(colour, 1.5));
    painter.drawPolygon(lozenge);
    if (mark_.conflicts) {
        painter.drawLine(centre + QPointF(-far, -far), centre + QPointF(far, far));
        painter.drawLine(centre + QPointF(-far, far), centre + QPointF(far, -far));
    }
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
}

void WishMark::enterEvent(QEnterEvent*) {
    update();
}
void WishMark::leaveEvent(QEvent*) {
    update();
}

}  // namespace tenter::desktop::axis
