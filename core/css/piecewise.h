// Continuous functions of a width that are straight between their vertices.
#pragma once

#include <vector>

namespace tenter::css {

/// A straight line: `atZero + perPx · width`.
struct Line {
    double atZero = 0;
    double perPx = 0;
    friend bool operator==(const Line&, const Line&) = default;
};

struct Vertex {
    double width = 0;
    double value = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

/// Over the widths from its first vertex to its last. Where it is straight it has no vertex between, to one
/// part in 10¹² of its values.
class PiecewiseLinear {
public:
    /// `least` ≤ `most`, both finite. One vertex if they are equal.
    PiecewiseLinear(Line line, double least, double most);

    [[nodiscard]] const std::vector<Vertex>& vertices() const { return vertices_; }
    /// Beyond its ends it is flat.
    [[nodiscard]] double at(double width) const;
    [[nodiscard]] bool isFinite() const;

    // Of two functions over the same widths; exact but for rounding of doubles.
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
