#include "draw/glyph_outline.h"

#include <algorithm>
#include <limits>

#include "draw/outline_reader.h"

namespace tenter::draw {

namespace {

using Verb = GlyphOutline::Verb;

struct Reader {
    GlyphOutline* outline;
    double scale;
    void point(float x, float y) const { outline->points.push_back({x / scale, y / scale}); }
};

const Reader& readerOf(const void* data) {
    return *static_cast<const Reader*>(data);
}

void moveTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float x, float y, void*) {
    readerOf(data).outline->verbs.push_back(Verb::Move);
    readerOf(data).point(x, y);
}

void lineTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float x, float y, void*) {
    readerOf(data).outline->verbs.push_back(Verb::Line);
    readerOf(data).point(x, y);
}

void quadraticTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float cx, float cy, float x, float y,
                 void*) {
    readerOf(data).outline->verbs.push_back(Verb::Quadratic);
    readerOf(data).point(cx, cy);
    readerOf(data).point(x, y);
}

void cubicTo(hb_draw_funcs_t*, void* data, hb_draw_state_t*, float ax, float ay, float bx, float by, float x,
             float y, void*) {
    readerOf(data).outline->verbs.push_back(Verb::Cubic);
    readerOf(data).point(ax, ay);
    readerOf(data).point(bx, by);
    readerOf(data).point(x, y);
}

void closePath(hb_draw_funcs_t*, void* data, hb_draw_state_t*, void*) {
    readerOf(data).outline->verbs.push_back(Verb::Close);
}

OutlinePoint pointBetween(OutlinePoint a, OutlinePoint b, double share) {
    return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
}

/// Adds the part of straight edges that lies in a strip to an extent.
class Strip {
public:
    Strip(double bottom, double top) : bottom_(bottom), top_(top) {}

    void edge(OutlinePoint a, OutlinePoint b) {
        if (a.y > b.y) std::swap(a, b);
        if (b.y < bottom_ || a.y > top_) return;
        const double height = b.y - a.y;
        if (height > 0) {
            const OutlinePoint low = a;
            const OutlinePoint high = b;
            if (low.y < bottom_) a = pointBetween(low, high, (bottom_ - low.y) / height);
            if (high.y > top_) b = pointBetween(low, high, (top_ - low.y) / height);
        }
        from_ = std::min({from_, a.x, b.x});
        to_ = std::max({to_, a.x, b.x});
    }

    [[nodiscard]] std::optional<GlyphOutline::Extent> extent() const {
        if (from_ > to_) return std::nullopt;
        return GlyphOutline::Extent{from_, to_};
    }

private:
    double bottom_, top_;
    double from_ = std::numeric_limits<double>::max();
    double to_ = std::numeric_limits<double>::lowest();
};

// Straight edges per curve: the error is below 1/100 of its size.
constexpr int edgesPerCurve = 8;

}  // namespace

std::optional<GlyphOutline::Extent> GlyphOutline::between(double bottom, double top) const {
    Strip strip(bottom, top);
    OutlinePoint start;
    OutlinePoint at;
    const OutlinePoint* next = points.data();
    const auto curve = [&](auto&& pointAt, OutlinePoint end) {
        OutlinePoint previous = at;
        for (int i = 1; i <= edgesPerCurve; ++i) {
            const OutlinePoint point = pointAt(static_cast<double>(i) / edgesPerCurve);
            strip.edge(previous, point);
            previous = point;
        }
        at = end;
    };
    for (const Verb verb : verbs) {
        switch (verb) {
            case Verb::Move:
                start = at = next[0];
                next += 1;
                break;
            case Verb::Line:
                strip.edge(at, next[0]);
                at = next[0];
                next += 1;
                break;
            case Verb::Quadratic: {
                const OutlinePoint a = at;
                const OutlinePoint b = next[0];
                const OutlinePoint c = next[1];
                curve([&](double t) { return pointBetween(pointBetween(a, b, t), pointBetween(b, c, t), t); },
                      c);
                next += 2;
                break;
            }
            case Verb::Cubic: {
                const OutlinePoint a = at;
                const OutlinePoint b = next[0];
                const OutlinePoint c = next[1];
                const OutlinePoint d = next[2];
                curve(
                    [&](double t) {
                        const OutlinePoint bc = pointBetween(b, c, t);
                        return pointBetween(pointBetween(pointBetween(a, b, t), bc, t),
                                            pointBetween(bc, pointBetween(c, d, t), t), t);
                    },
                    d);
                next += 3;
                break;
            }
            case Verb::Close:
                strip.edge(at, start);
                at = start;
                break;
        }
    }
    return strip.extent();
}

const GlyphOutline& GlyphOutlines::of(const text::Face& face, std::uint32_t glyph) {
    const auto [kept, isNew] = kept_.try_emplace({&face, glyph});
    if (!isNew) return kept->second;
    Reader reader{&kept->second, face.scale()};
    static hb_draw_funcs_t* const functions =
        drawFunctions({moveTo, lineTo, quadraticTo, cubicTo, closePath});
    readOutline(face, glyph, functions, &reader);
    return kept->second;
}

}  // namespace tenter::draw
