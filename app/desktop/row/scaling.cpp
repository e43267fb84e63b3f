#include "row/scaling.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
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

// The same for two lines, channel by channel: the compiler makes one instruction of many channels.
void mixLines(const uchar* upper, const uchar* lower, std::uint32_t share, std::vector<QRgb>& mixture) {
    const auto second = static_cast<std::uint16_t>(share);
    const auto first = static_cast<std::uint16_t>(256 - share);
    auto* const out = reinterpret_cast<uchar*>(mixture.data());
    for (std::size_t i = 0; i < 4 * mixture.size(); ++i) {
        out[i] = static_cast<uchar>(static_cast<std::uint16_t>(upper[i] * first + lower[i] * second) >> 8U);
    }
}

}  // namespace

QImage scaledQuickly(const QImage& source, const QRectF& crop, const QSize& size) {
    QImage result(size, source.format());
    if (result.isNull() || source.depth() != 32) return {};
    const std::vector<Step> across = steps(crop.x(), crop.width(), size.width(), source.width());
    const std::vector<Step> down = steps(crop.y(), crop.height(), size.height(), source.height());
    const int from = across.front().first;
    std::vector<QRgb> line(static_cast<std::size_t>(across.back().second - from + 1));
    for (int y = 0; y < size.height(); ++y) {
        const Step& row = down[static_cast<std::size_t>(y)];
        mixLines(source.constScanLine(row.first) + 4 * static_cast<std::ptrdiff_t>(from),
                 source.constScanLine(row.second) + 4 * static_cast<std::ptrdiff_t>(from), row.share, line);
        auto* const out = reinterpret_cast<QRgb*>(result.scanLine(y));
        for (std::size_t x = 0; x < across.size(); ++x) {
            const Step& column = across[x];
            out[x] = mixed(line[static_cast<std::size_t>(column.first - from)],
                           line[static_cast<std::size_t>(column.second - from)], column.share);
        }
    }
    return result;
}

}  // namespace tenter::desktop::row
