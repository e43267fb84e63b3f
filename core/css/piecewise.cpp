#include "css/piecewise.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace tenter::css {

namespace {

double between(const Vertex& from, const Vertex& to, double width) {
    if (to.width <= from.width) return to.value;
    return from.value + (to.value - from.value) * ((width - from.width) / (to.width - from.width));
}

// Reads the values of a function at ascending widths.
class Walk {
public:
    explicit Walk(const std::vector<Vertex>& vertices) : vertices_(vertices) {}

    double at(double width) {
        while (next_ < vertices_.size() && vertices_[next_].width < width)
            ++next_;
        if (next_ == vertices_.size()) return vertices_.back().value;
        const Vertex& next = vertices_[next_];
        return next_ == 0 || next.width == width ? next.value : between(vertices_[next_ - 1], next, width);
    }

private:
    const std::vector<Vertex>& vertices_;
    std::size_t next_ = 0;
};

std::vector<double> widthsOf(const std::vector<Vertex>& one, const std::vector<Vertex>& other) {
    std::vector<double> widths;
    widths.reserve(one.size() + other.size());
    for (const Vertex& vertex : one)
        widths.push_back(vertex.width);
    for (const Vertex& vertex : other)
        widths.push_back(vertex.width);
    std::ranges::sort(widths);
    widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
    return widths;
}

// The values of two functions at a width.
struct Pair {
    double width = 0;
    double one = 0;
    double other = 0;
};

// The width at which two straight pieces cross; empty if they do not cross between their ends.
std::optional<Pair> crossing(const Pair& from, const Pair& to) {
    const double before = from.one - from.other;
    const double after = to.one - to.other;
    if (!((before < 0 && after > 0) || (before > 0 && after < 0))) return std::nullopt;
    const double share = before / (before - after);
    const double width = from.width + share * (to.width - from.width);
    if (!(width > from.width && width < to.width)) return std::nullopt;
    const double value = from.one + share * (to.one - from.one);
    return Pair{width, value, value};
}

}  // namespace

PiecewiseLinear::PiecewiseLinear(Line line, double least, double most) {
    vertices_.push_back({least, line.atZero + line.perPx * least});
    if (most > least) vertices_.push_back({most, line.atZero + line.perPx * most});
}

double PiecewiseLinear::at(double width) const {
    return Walk(vertices_).at(width);
}

bool PiecewiseLinear::isFinite() const {
    return std::ranges::all_of(vertices_, [](const Vertex& each) { return std::isfinite(each.value); });
}

// Drops a vertex that is on the straight line between its neighbours.
void PiecewiseLinear::add(Vertex vertex) {
    constexpr double tolerance = 1e-12;
    if (vertices_.size() >= 2) {
        const Vertex& last = vertices_.back();
        const double straight = between(vertices_[vertices_.size() - 2], vertex, last.width);
        const double scale = std::max({1.0, std::abs(vertex.value), std::abs(last.value)});
        if (std::abs(straight - last.value) <= tolerance * scale) vertices_.pop_back();
    }
    vertices_.push_back(vertex);
}

template <class Operation>
PiecewiseLinear PiecewiseLinear::combined(const PiecewiseLinear& other, bool crossings,
                                          Operation operation) const {
    PiecewiseLinear result;
    Walk one(vertices_);
    Walk two(other.vertices_);
    std::optional<Pair> last;
    for (const double width : widthsOf(vertices_, other.vertices_)) {
        const Pair here{width, one.at(width), two.at(width)};
        if (crossings && last) {
            if (const auto cross = crossing(*last, here)) result.add({cross->width, cross->one});
        }
        result.add({width, operation(here.one, here.other)});
        last = here;
    }
    return result;
}

PiecewiseLinear PiecewiseLinear::plus(const PiecewiseLinear& other) const {
    return combined(other, false, [](double a, double b) { return a + b; });
}

PiecewiseLinear PiecewiseLinear::times(double factor) const {
    PiecewiseLinear result = *this;
    for (Vertex& vertex : result.vertices_)
        vertex.value *= factor;
    return result;
}

PiecewiseLinear PiecewiseLinear::least(const PiecewiseLinear& other) const {
    return combined(other, true, [](double a, double b) { return std::min(a, b); });
}

PiecewiseLinear PiecewiseLinear::most(const PiecewiseLinear& other) const {
    return combined(other, true, [](double a, double b) { return std::max(a, b); });
}

}  // namespace tenter::css
