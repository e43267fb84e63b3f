#include "draw/shadow_patch.h"

#include <algorithm>
#include <cmath>

namespace tenter::draw {

namespace {

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

// The share of a px that lies inside a box from `from` to `to` (both ways) with rounded corners, by 4 × 4
// samples.
float coverage(int x, int y, double from, double to, double radius) {
    constexpr int samples = 4;
    int inside = 0;
    for (int j = 0; j < samples; ++j) {
        for (int i = 0; i < samples; ++i) {
            const double px = x + (i + 0.5) / samples;
            const double py = y + (j + 0.5) / samples;
            if (px < from || py < from || px > to || py > to) continue;
            const double dx = std::max({from + radius - px, px - (to - radius), 0.0});
            const double dy = std::max({from + radius - py, py - (to - radius), 0.0});
            if (dx * dx + dy * dy <= radius * radius || radius == 0) ++inside;
        }
    }
    return static_cast<float>(inside) / (samples * samples);
}

}  // namespace

ShadowPatch shadowPatch(double radius, double blur) {
    ShadowPatch made;
    made.margin = static_cast<int>(std::ceil(1.5 * blur));
    made.corner = 2 * made.margin + static_cast<int>(std::ceil(radius));
    made.side = 2 * made.corner + 1;
    const auto count = static_cast<std::size_t>(made.side) * static_cast<std::size_t>(made.side);
    std::vector<float> pixels(count);
    float* next = pixels.data();
    for (int y = 0; y < made.side; ++y)
        for (int x = 0; x < made.side; ++x)
            *next++ = coverage(x, y, made.margin, made.side - made.margin, radius);
    if (blur > 0) {
        const std::vector<float> kernel = gaussian(blur / 2, std::max(1, made.margin));
        blurLines(pixels, made.side, made.side, made.side, 1, kernel);
        blurLines(pixels, made.side, made.side, 1, made.side, kernel);
    }
    made.opacity.reserve(count);
    for (const float value : pixels)
        made.opacity.push_back(
            static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0F, 1.0F) * 255.0F)));
    return made;
}

CastingBox castingBox(const CastShadow& shadow) {
    CastingBox casting{shadow.box, 0};
    casting.box.x += shadow.x - shadow.spread;
    casting.box.y += shadow.y - shadow.spread;
    casting.box.width += 2 * shadow.spread;
    casting.box.height += 2 * shadow.spread;
    // A sharp corner stays sharp, a round one grows with the spread.
    if (shadow.radius > 0)
        casting.radius = std::min(
            {std::max(0.0, shadow.radius + shadow.spread), casting.box.width / 2, casting.box.height / 2});
    return casting;
}

}  // namespace tenter::draw
