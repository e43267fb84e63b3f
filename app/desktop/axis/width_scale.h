// Viewport width to position: the one scale that every lane and plot shares.
#pragma once

#include <vector>

namespace tenter::desktop::axis {

/// Widths in CSS px, positions in px of the pane. Straight over the whole range, or with equal room for each
/// band, so that phones are not squeezed.
class WidthScale {
public:
    void setRange(double least, double most);
    void setBreakpoints(const std::vector<double>& breakpoints);
    void setEqualRoom(bool on);
    /// Where the lanes' drawing area begins and ends.
    void setSpan(double left, double right);

    [[nodiscard]] double x(double width) const;
    /// The width at a position, within the range.
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

    /// Magnifies by `factor` about a position that stays where it is.
    void zoomAbout(double x, double factor);
    void showWhole();
    /// Shifts what is shown by a number of px.
    void pan(double px);
    /// Shifts what is shown, if need be, so that `width` can be seen.
    void reveal(double width);

private:
    [[nodiscard]] double share(double width) const;  // of the whole range, 0 to 1
    [[nodiscard]] double widthOf(double share) const;
    void settle();
    double least_ = 320, most_ = 1920;
    std::vector<double> breakpoints_;  // those inside the range
    std::vector<double> stops_;        // least, breakpoints, most
    bool equalRoom_ = false;
    double left_ = 0, right_ = 1;
    double from_ = 0, to_ = 1;  // what is shown, as shares
};

}  // namespace tenter::desktop::axis
