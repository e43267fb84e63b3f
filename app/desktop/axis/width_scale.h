// The scale of the axis: converts viewport widths to positions. All lanes and plots share one scale.
#pragma once

#include <vector>

namespace tenter::desktop::axis {

/// Widths are in CSS px, positions in px of the pane. The scale is linear over the whole range, or linear
/// within each band with equal room for all bands, so that narrow bands are easier to work in.
class WidthScale {
public:
    void setRange(double least, double most);
    void setBreakpoints(const std::vector<double>& breakpoints);
    void setEqualRoom(bool on);
    /// Sets the left and right end of the drawing area, px.
    void setSpan(double left, double right);

    [[nodiscard]] double x(double width) const;
    /// The width at a position, clamped to the range.
    [[nodiscard]] double width(double x) const;
    [[nodiscard]] double least() const { return least_; }
    [[nodiscard]] double most() const { return most_; }
    [[nodiscard]] double left() const { return left_; }
    [[nodiscard]] double right() const { return right_; }
    [[nodiscard]] double firstShown() const { return width(left_); }
    [[nodiscard]] double lastShown() const { return width(right_); }
    [[nodiscard]] bool equalRoom() const { return equalRoom_; }
    [[nodiscard]] const std::vector<double>& breakpoints() const { return breakpoints_; }
    [[nodiscard]] bool isWhole() const { return from_ <= 0 && to_ >= 1; }

    /// Zooms by `factor`; the width at position `x` keeps its place.
    void zoomAbout(double x, double factor);
    void showWhole();
    /// Moves the visible range by `px`.
    void pan(double px);
    /// Moves the visible range, if necessary, so that `width` is visible.
    void reveal(double width);

private:
    [[nodiscard]] double share(double width) const;  // of the whole range, 0 to 1
    [[nodiscard]] double widthOf(double share) const;
    void settle();
    double least_ = 320, most_ = 1920;
    std::vector<double> breakpoints_;  // inside the range
    std::vector<double> stops_;        // least, breakpoints, most
    bool equalRoom_ = false;
    double left_ = 0, right_ = 1;
    double from_ = 0, to_ = 1;  // visible range as shares of the whole range
};

}  // namespace tenter::desktop::axis
