#include "row/shadows.h"

#include <cmath>

#include "draw/shadow_patch.h"
#include "row/boxes.h"

namespace tenter::desktop::row {

namespace {

constexpr std::size_t mostPatches = 64;

}  // namespace

const Shadows::Patch& Shadows::patch(double radius, double blur, const QColor& colour) {
    const Key key{std::lround(radius * 4), std::lround(blur * 4), colour.rgba()};
    if (const auto found = kept_.find(key); found != kept_.end()) return found->second;
    if (kept_.size() >= mostPatches) kept_.clear();

    const draw::ShadowPatch made = draw::shadowPatch(radius, blur);
    Patch patch{QImage(made.side, made.side, QImage::Format_ARGB32_Premultiplied), made.corner, made.margin};
    const std::uint8_t* next = made.opacity.data();
    for (int y = 0; y < made.side; ++y) {
        auto* const row = reinterpret_cast<QRgb*>(patch.image.scanLine(y));
        for (int x = 0; x < made.side; ++x)
            row[x] = qPremultiply(qRgba(colour.red(), colour.green(), colour.blue(),
                                        static_cast<int>(std::lround(*next++ * colour.alphaF()))));
    }
    return kept_.emplace(key, std::move(patch)).first->second;
}

void Shadows::paint(QPainter& painter, const Canvas& canvas, const draw::CastShadow& shadow) {
    const draw::CastingBox casting = draw::castingBox(shadow);
    const QRect from = canvas.snapped(casting.box);
    if (from.isEmpty()) return;
    const Patch& piece = patch(casting.radius * canvas.scale,
                               std::min(shadow.blur * canvas.scale, draw::mostBlur), colourOf(shadow.colour));
    const QRect outer = from.adjusted(-piece.margin, -piece.margin, piece.margin, piece.margin);
    const bool opaque = shadow.covered;

    painter.save();
    if (!opaque) {
        QPainterPath outside;
        outside.addRect(outer.adjusted(-1, -1, 1, 1));
        outside.addPath(
            rounded(QRectF(canvas.snapped(shadow.box)), Corners::all(shadow.radius * canvas.scale)));
        outside.setFillRule(Qt::OddEvenFill);
        painter.setClipPath(outside, Qt::IntersectClip);
    }
    // A box too small for whole corner pieces shows the outer part of them.
    const int across = std::min(piece.corner, outer.width() / 2);
    const int down = std::min(piece.corner, outer.height() / 2);
    const int side = piece.image.width();
    const int fromX[] = {0, piece.corner, side - across};
    const int fromY[] = {0, piece.corner, side - down};
    const int fromWidth[] = {across, 1, across};
    const int fromHeight[] = {down, 1, down};
    const int toX[] = {outer.left(), outer.left() + across, outer.left() + outer.width() - across};
    const int toY[] = {outer.top(), outer.top() + down, outer.top() + outer.height() - down};
    const int toWidth[] = {across, outer.width() - 2 * across, across};
    const int toHeight[] = {down, outer.height() - 2 * down, down};
    for (int j = 0; j < 3; ++j) {
        for (int i = 0; i < 3; ++i) {
            if (toWidth[i] <= 0 || toHeight[j] <= 0 || (opaque && i == 1 && j == 1)) continue;
            painter.drawImage(QRect(toX[i], toY[j], toWidth[i], toHeight[j]), piece.image,
                              QRect(fromX[i], fromY[j], fromWidth[i], fromHeight[j]));
        }
    }
    painter.restore();
}

}  // namespace tenter::desktop::row
