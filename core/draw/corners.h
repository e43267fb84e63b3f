// Corner radii of boxes.
#pragma once

namespace tenter::draw {

/// Corner radii of a box, in the unit of the box.
struct Corners {
    double topLeft = 0;
    double topRight = 0;
    double bottomRight = 0;
    double bottomLeft = 0;
    [[nodiscard]] bool square() const { return topLeft + topRight + bottomRight + bottomLeft == 0; }
    static Corners all(double radius) { return {radius, radius, radius, radius}; }
    /// Reduced by one common factor so that neighbouring corners of a box of that size do not overlap. CSS
    /// Backgrounds 3 § 4.5.
    [[nodiscard]] Corners fitted(double width, double height) const;
    /// Each radius reduced by `inset`, but not below 0. CSS Backgrounds 3 § 4.2.
    [[nodiscard]] Corners inset(double inset) const;
    /// Each radius multiplied by `scale`.
    [[nodiscard]] Corners scaled(double scale) const {
        return {topLeft * scale, topRight * scale, bottomRight * scale, bottomLeft * scale};
    }
    friend bool operator==(const Corners&, const Corners&) = default;
};

}  // namespace tenter::draw
