// Continuous piecewise linear functions of a width.
#pragma once

#include <vector>

namespace tenter::css {

/// A straight line: `atZero + perPx · width`.
struct Line {
    double atZero = 0;
    double perPx = 0;
    friend bool operator==(const Line&, const Line&) = default;
};

/// A point at which a function changes its slope.
struct Vertex {
    double width = 0;
    double value = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

/// A function that is linear between its vertices. Three vertices are never on a straight line, to one part
/// in 10¹² of their values.
class PiecewiseLinear {
public:
    /// `line` between the widths `least` ≤ `most`, both finite. One vertex if they are equal.
    PiecewiseLinear(Line line, double least, double most);

    [[nodiscard]] const std::vector<Vertex>& vertices() const { return vertices_; }
    /// The value at `width`. Outside the vertices the function is flat.
    [[nodiscard]] double at(double width) const;
    [[nodiscard]] bool isFinite() const;

    // Operations on functions over the same widths; exact except for rounding of doubles.
    [[nodiscard]] PiecewiseLinear plus(const PiecewiseLinear& other) const;
    [[nodiscard]] PiecewiseLinear times(double factor) const;
    [[nodiscard]] PiecewiseLinear least(const PiecewiseLinear& other) const;
    [[nodiscard]] PiecewiseLinear most(const PiecewiseLinear& other) const;

private:
    PiecewiseLinear() = default;
    template <class Operation>
    [[nodiscard]] PiecewiseLinear combined(const PiecewiseLinear& other, bool crossings,
                                           Operation operation) const;
    void add(Vertex vertex);

    std::vector<Vertex> vertices_;
};

}  // namespace tenter::css
