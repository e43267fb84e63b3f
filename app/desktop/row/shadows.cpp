#include "row/shadows.h"

#include <cmath>
#include <vector>

#include "row/boxes.h"

namespace tenter::desktop::row {

namespace {

constexpr std::size_t mostPatches = 64;
constexpr double mostBlur = 400;  // device px

// Blurs in one direction. Called twice with different strides, it blurs rows and columns.
void blurLines(std::vector<float>& pixels, int lines, int length, int lineStride, int stride,
               const std::vector<float>& kernel) {
    const int half = static_cast<int>(kernel.size() / 2);
    std::vector<float> source(static_cast<std::size_t>(length));
    const float* const weights = &kernel[static_cast<std::size_t>(half)];
    float* const copy = source.data();
    for (int line = 0; line < lines; ++line) {
        float* const start = pixels.data() + static_cast<std::ptrdiff_t>(line) * lineStride;
        for (int i = 0; i < length; ++i)
            copy[i] = start[static_cast<std::ptrdiff_t>(i) * stride];
        for (int i = 0; i < length; ++i) {
            float sum = 0;
            for (int k = std::max(-half, -i); k <= std::min(half, length - 1 - i); ++k)
                sum += weights[k] * copy[i + k];
            start[static_cast<std::ptrdiff_t>(i) * stride] = sum;
        }
    }
}

std::vector<float> gaussian(double deviation, int half) {
    std::vector<float> kernel(2 * static_cast<std::size_t>(half) + 1);
    float* const middle = &kernel[static_cast<std::size_t>(half)];
    double sum = 0;
    for (int i = -half; i <= half; ++i)
        sum += middle[i] = static_cast<float>(std::exp(-i * i / (2 * deviation * deviation)));
    for (float& value : kernel)
        value = static_cast<float>(value / sum);
    return kernel;
}

}  // namespace

double Shadows::reach(const ShadowLook& look) {
    return std::max(0.0, look.spread) + 1.5 * look.blur + std::max(std::abs(look.x), std::abs(look.y)) + 1;
}

const Shadows::Patch& Shadows::patch(double radius, double blur, const QColor& colour) {
    const Key key{std::lround(radius * 4), std::lround(blur * 4), colour.rgba()};
    if (const auto found = kept_.find(key); found != kept_.end()) return found->second;
    if (kept_.size() >= mostPatches) kept_.clear();

    Patch made;
    made.margin = static_cast<int>(std::ceil(1.5 * blur));
    made.corner = 2 * made.margin + static_cast<int>(std::ceil(radius));
    const int side = 2 * made.corner + 1;
    QImage cast(side, side, QImage::Format_Alpha8);
    cast.fill(0);
    {
        QPainter painter(&cast);
        fillBox(painter, cast.rect().adjusted(made.margin, made.margin, -made.margin, -made.margin),
                Corners::all(radius), Qt::black);
    }
    std::vector<float> pixels(static_cast<std::size_t>(side) * static_cast<std::size_t>(side));
    float* next = pixels.data();
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            *next++ = static_cast<float>(cast.constScanLine(y)[x]) / 255.0F;
    if (blur > 0) {
        const std::vector<float> kernel = gaussian(blur / 2, std::max(1, made.margin));
        blurLines(pixels, side, side, side, 1, kernel);
        blurLines(pixels, side, side, 1, side, kernel);
    }
    next = pixels.data();
    made.image = QImage(side, side, QImage::Format_ARGB32_Premultiplied);
    for (int y = 0; y < side; ++y) {
        auto* const row = reinterpret_cast<QRgb*>(made.image.scanLine(y));
        for (int x = 0; x < side; ++x) {
            const float alpha = *next++ * static_cast<float>(colour.alphaF());
            row[x] = qPremultiply(qRgba(colour.red(), colour.green(), colour.blue(),
                                        static_cast<int>(std::lround(alpha * 255.0F))));
        }
    }
    return kept_.emplace(key, std::move(made)).first->second;
}

void Shadows::paint(QPainter& painter, const QRectF& box, double radius, const ShadowLook& look,
                    bool opaque) {
    if (look.colour.alpha() == 0) return;
    const QRectF casting =
        box.translated(look.x, look.y).adjusted(-look.spread, -look.spread, look.spread, look.spread);
    if (casting.isEmpty()) return;
    // CSS Backgrounds 3 § 6.1.1: a sharp corner stays sharp, a round one grows with the spread.
    const double castRadius = radius > 0 ? std::max(0.0, radius + look.spread) : 0;
    const Patch& piece = patch(std::min({castRadius, casting.width() / 2, casting.height() / 2}),
                               std::min(look.blur, mostBlur), look.colour);
    const QRect outer = casting.toRect().adjusted(-piece.margin, -piece.margin, piece.margin, piece.margin);

    painter.save();
    if (!opaque) {
        QPainterPath outside;
        outside.addRect(outer.adjusted(-1, -1, 1, 1));
        outside.addPath(rounded(box, Corners::all(radius)));
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
