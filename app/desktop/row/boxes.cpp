#include "row/boxes.h"

#include <cmath>

namespace tenter::desktop::row {

QPainterPath rounded(const QRectF& rect, const Corners& corners) {
    const Corners fit = corners.fitted(rect.width(), rect.height());
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

namespace {

/// A box divided into plain rectangles that form a cross, and the four squares that contain its corners.
struct Cut {
    QList<QRect> plain;
    QList<QRect> corners;
};

Cut cutBox(const QRect& rect, const Corners& fit) {
    const auto whole = [](double radius) { return static_cast<int>(std::ceil(radius)); };
    const int left = rect.left();
    const int right = rect.left() + rect.width();
    const int top = rect.top();
    const int bottom = rect.top() + rect.height();
    const int head = std::max(whole(fit.topLeft), whole(fit.topRight));
    const int foot = std::max(whole(fit.bottomLeft), whole(fit.bottomRight));
    const auto between = [](int x0, int y0, int x1, int y1) { return QRect(x0, y0, x1 - x0, y1 - y0); };
    Cut cut;
    if (head + foot > rect.height() || whole(fit.topLeft) + whole(fit.topRight) > rect.width() ||
        whole(fit.bottomLeft) + whole(fit.bottomRight) > rect.width()) {
        cut.corners = {rect};
        return cut;
    }
    cut.plain = {
        between(left + whole(fit.topLeft), top, right - whole(fit.topRight), top + head),
        between(left, top + head, right, bottom - foot),
        between(left + whole(fit.bottomLeft), bottom - foot, right - whole(fit.bottomRight), bottom)};
    cut.corners = {between(left, top, left + whole(fit.topLeft), top + head),
                   between(right - whole(fit.topRight), top, right, top + head),
                   between(left, bottom - foot, left + whole(fit.bottomLeft), bottom),
                   between(right - whole(fit.bottomRight), bottom - foot, right, bottom)};
    return cut;
}

// Filling rectangles is much faster than filling antialiased paths, so only the corners are painted as a
// path.
template <class Plain>
void fillCut(QPainter& painter, const QRect& rect, const Corners& corners, const QBrush& brush,
             Plain&& plain) {
    const Corners fit = corners.fitted(rect.width(), rect.height());
    const Cut cut = cutBox(rect, fit);
    for (const QRect& piece : cut.plain)
        if (!piece.isEmpty()) plain(piece);
    const QPainterPath shape = rounded(rect, fit);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(brush);
    for (const QRect& corner : cut.corners) {
        if (corner.isEmpty()) continue;
        painter.save();
        painter.setClipRect(corner, Qt::IntersectClip);
        painter.drawPath(shape);
        painter.restore();
    }
}

}  // namespace

void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QColor& colour) {
    if (colour.alpha() == 0 || rect.isEmpty()) return;
    if (corners.square())
        painter.fillRect(rect, colour);
    else
        fillCut(painter, rect, corners, colour, [&](const QRect& piece) { painter.fillRect(piece, colour); });
}

void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QImage& picture) {
    if (corners.square()) {
        painter.drawImage(rect.topLeft(), picture);
        return;
    }
    QBrush texture(picture);
    texture.setTransform(QTransform::fromTranslate(rect.x(), rect.y()));
    fillCut(painter, rect, corners, texture, [&](const QRect& piece) {
        painter.drawImage(piece.topLeft(), picture, piece.translated(-rect.topLeft()));
    });
}

void strokeBox(QPainter& painter, const QRect& rect, const Corners& corners, int width,
               const QColor& colour) {
    if (colour.alpha() == 0 || width <= 0 || rect.isEmpty()) return;
    const QRect inner = rect.adjusted(width, width, -width, -width);
    if (inner.isEmpty()) {
        fillBox(painter, rect, corners, colour);
        return;
    }
    const Corners fit = corners.fitted(rect.width(), rect.height());
    const auto side = [&](int x, int y, int w, int h) {
        if (w > 0 && h > 0) painter.fillRect(QRect(x, y, w, h), colour);
    };
    const auto reach = [width](double radius) {
        return std::max(width, static_cast<int>(std::ceil(radius)));
    };
    const int right = inner.left() + inner.width();
    const int bottom = inner.top() + inner.height();
    const int across = rect.left() + rect.width();
    const int down = rect.top() + rect.height();
    side(rect.left() + reach(fit.topLeft), rect.top(),
         rect.width() - reach(fit.topLeft) - reach(fit.topRight), width);
    side(rect.left() + reach(fit.bottomLeft), bottom,
         rect.width() - reach(fit.bottomLeft) - reach(fit.bottomRight), width);
    side(rect.left(), rect.top() + reach(fit.topLeft), width,
         rect.height() - reach(fit.topLeft) - reach(fit.bottomLeft));
    side(right, rect.top() + reach(fit.topRight), width,
         rect.height() - reach(fit.topRight) - reach(fit.bottomRight));

    QPainterPath ring = rounded(rect, fit);
    ring.addPath(rounded(inner, fit.inset(width)));
    ring.setFillRule(Qt::OddEvenFill);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const auto corner = [&](int x, int y, int size) {
        painter.save();
        painter.setClipRect(QRect(x, y, size, size), Qt::IntersectClip);
        painter.drawPath(ring);
        painter.restore();
    };
    corner(rect.left(), rect.top(), reach(fit.topLeft));
    corner(across - reach(fit.topRight), rect.top(), reach(fit.topRight));
    corner(rect.left(), down - reach(fit.bottomLeft), reach(fit.bottomLeft));
    corner(across - reach(fit.bottomRight), down - reach(fit.bottomRight), reach(fit.bottomRight));
}

}  // namespace tenter::desktop::row
