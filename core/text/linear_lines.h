// Greedy line breaking over a range of viewport widths: the number of lines, the range in which it is valid,
// and the widths at which a line is a tight fit.
#pragma once

#include "text/breaker.h"
#include "units/linear.h"

namespace tenter::text {

/// A line query in which sizes and widths are linear in the viewport width.
using LinearLineQuery = LineQueryOf<units::Linear>;

/// A policy for `Breaker` that counts lines over a range of widths. Each decision is a linear inequality; the
/// range ends at the nearest width at which one of them changes its outcome.
class LinearLineCounter {
public:
    /// `available`: the width lines are broken at. `share`: the slack below which a line is a tight fit.
    LinearLineCounter(const units::Linear& available, double share) : available_(available), share_(share) {}

    /// True if a line of `width` fits just past the start.
    bool fits(const units::Linear& width) {
        const double room = available_.value + fitTolerance - width.value;
        const double gain = available_.slope - width.slope;
        if (std::abs(room) <= units::tieTolerance + 1e-15 * std::abs(width.value)) return gain >= 0;
        if ((room > 0) == (gain < 0) && gain != 0) until_ = std::min(until_, -room / gain);
        return room > 0;
    }

    /// Counts a line of `width`; `over` is the width that did not fit and so ended it, or 0.
    void line(const LineStart& /*start*/, const Opportunity& /*end*/, const units::Linear& width,
              const units::Linear& over) {
        ++lines_;
        LinearLineCounter judge(available_, share_);
        if (judge.fits(width))
            tightWhereNegative(available_ - (1 + share_) * width);
        else
            overflows_ = true;
        if (!units::isZero(over)) tightWhereNegative((1 - share_) * over - available_);
    }

    [[nodiscard]] std::uint32_t lines() const { return lines_; }
    /// True if a line is wider than the available width.
    [[nodiscard]] bool overflows() const { return overflows_; }
    /// The end of the range in CSS px past its start: every decision is valid for 0 < t ≤ `until()`.
    [[nodiscard]] double until() const { return until_; }
    /// Some line is a tight fit for t < `tightBefore()`, and some line for t > `tightPast()`. CSS px past the
    /// start.
    [[nodiscard]] double tightBefore() const { return tightBefore_; }
    [[nodiscard]] double tightPast() const { return tightPast_; }

private:
    void tightWhereNegative(const units::Linear& spare) {
        constexpr double always = std::numeric_limits<double>::infinity();
        if (spare.slope == 0) {
            if (spare.value < 0) tightBefore_ = always;
            return;
        }
        const double crossing = -spare.value / spare.slope;
        if (spare.slope > 0)
            tightBefore_ = std::max(tightBefore_, crossing);
        else
            tightPast_ = std::min(tightPast_, std::max(0.0, crossing));
    }

    units::Linear available_;
    double share_;
    std::uint32_t lines_ = 0;
    bool overflows_ = false;
    double until_ = std::numeric_limits<double>::infinity();
    double tightBefore_ = 0;
    double tightPast_ = std::numeric_limits<double>::infinity();
};

}  // namespace tenter::text
