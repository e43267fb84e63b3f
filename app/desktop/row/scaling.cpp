#include "row/scaling.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tenter::desktop::row {

namespace {

// Mixes two pixels with a share (0 to 256) of `b`, two channels at a time.
inline QRgb mixed(QRgb a, QRgb b, std::uint32_t share) {
    const std::uint32_t rest = 256 - share;
    const std::uint32_t low = ((a & 0xff00ffU) * rest + (b & 0xff00ffU) * share) >> 8U;
    const std::uint32_t high = ((a >> 8U) & 0xff00ffU) * rest + ((b >> 8U) & 0xff00ffU) * share;
    return (low & 0xff00ffU) | (high & 0xff00ff00U);
}

struct Step {
    int first;
    int second;
    std::uint32_t share;
};

// For each of `count` target px: the two source px next to it, and the share of the second.
std::vector<Step> steps(double from, double length, int count, int limit) {
    std::vector<Step> made(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        const double at = std::clamp(from + (i + 0.5) * length / count - 0.5, 0.0, limit - 1.0);
        const int first = static_cast<int>(at);
        made[static_cast<std::size_t>(i)] = {first, std::min(first + 1, limit - 1),
                                             static_cast<std::uint32_t>((at - first) * 256)};
    }
    return made;
}

}  // namespace

QImage scaledQuickly(const QImage& source, const QRectF& crop, const QSize& size) {
    QImage result(size, source.format());
    if (result.isNull() || source.depth() != 32) return {};
    const std::vector<Step> across = steps(crop.x(), crop.width(), size.width(), source.width());
    const std::vector<Step> down = steps(crop.y(), crop.height(), size.height(), source.height());
    for (int y = 0; y < size.height(); ++y) {
        const Step& row = down[static_cast<std::size_t>(y)];
        const auto* const upper = reinterpret_cast<const QRgb*>(source.constScanLine(row.first));
        const auto* const lower = reinterpret_cast<const QRgb*>(source.constScanLine(row.second));
        auto* const out = reinterpret_cast<QRgb*>(result.scanLine(y));
        for (int x = 0; x < size.width(); ++x) {
            const Step& column = across[static_cast<std::size_t>(x)];
            out[x] = mixed(mixed(upper[column.first], upper[column.second], column.share),
                           mixed(lower[column.first], lower[column.second], column.share), row.share);
        }
    }
    return result;
}

}  // namespace tenter::desktop::row
