#include "row/boxes.h"

namespace tenter::desktop::row {

QPainterPath rounded(const QRectF& rect, const Corners& corners) {
    const Corners fit = corners.fitted(rect.size());
    QPainterPath path;
    const auto corner = [&path](double x, double y, double radius, double from) {
        if (radius > 0) path.arcTo(QRectF(x, y, 2 * radius, 2 * radius), from, -90);
    };
    path.moveTo(rect.left() + fit.topLeft, rect.top());
    path.lineTo(rect.right() - fit.topRight, rect.top());
    corner(rect.right() - 2 * fit.topRight, rect.top(), fit.topRight, 90);
    path.lineTo(rect.right(), rect.bottom() - fit.bottomRight);
    corner(rect.right() - 2 * fit.bottomRight, rect.bottom() - 2 * fit.bottomRight, fit.bottomRight, 0);
    path.lineTo(rect.left() + fit.bottomLeft, rect.bottom());
    corner(rect.left(), rect.bottom() - 2 * fit.bottomLeft, fit.bottomLeft, 270);
    path.lineTo(rect.left(), rect.top() + fit.topLeft);
    corner(rect.left(), rect.top(), fit.topLeft, 180);
    path.closeSubpath();
    return path;
}

void fillBox(QPainter& painter, const QRectF& rect, const Corners& corners, const QColor& colour) {
    if (colour.alpha() == 0 || rect.isEmpty()) return;
    if (corners.square()) {
        painter.fillRect(rect, colour);
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPath(rounded(rect, corners));
}

void strokeBox(QPainter& painter, const QRectF& rect, const Corners& corners, double width,
               const QColor& colour) {
    if (colour.alpha() == 0 || width <= 0 || rect.isEmpty()) return;
    const QRectF inner = rect.adjusted(width, width, -width, -width);
    if (corners.square()) {
        painter.fillRect(QRectF(rect.left(), rect.top(), rect.width(), width), colour);
        painter.fillRect(QRectF(rect.left(), inner.bottom(), rect.width(), width), colour);
        painter.fillRect(QRectF(rect.left(), inner.top(), width, inner.height()), colour);
        painter.fillRect(QRectF(inner.right(), inner.top(), width, inner.height()), colour);
        return;
    }
    QPainterPath ring = rounded(rect, corners);
    if (!inner.isEmpty()) ring.addPath(rounded(inner, corners.fitted(rect.size()).inset(width)));
    ring.setFillRule(Qt::OddEvenFill);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPath(ring);
}

}  // namespace tenter::desktop::row
