// Greedy lines along a stretch of viewport widths: how many there are, how long that stays so, and where they
// are a tight fit.
#pragma once

#include "text/breaker.h"
#include "units/linear.h"

namespace tenter::text {

using LinearLineQuery = LineQueryOf<units::Linear>;

/// The breaker's witness along a stretch: each decision is a linear inequality, and the nearest width at
/// which one turns over ends the stretch.
class LinearLineCounter {
public:
    /// Lines with less slack than `share` are tight.
    LinearLineCounter(const units::Linear& available, double share) : available_(available), share_(share) {}

    bool fits(const units::Linear& width) {
        const double room = available_.value + fitTolerance - width.value;
        const double gain = available_.slope - width.slope;
        if (std::abs(room) <= units::tieTolerance + 1e-15 * std::abs(width.value)) return gain >= 0;
        if ((room > 0) == (gain < 0) && gain != 0) until_ = std::min(until_, -room / gain);
        return room > 0;
    }

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
    [[nodiscard]] bool overflows() const { return overflows_; }
    /// The decisions hold for 0 < t ≤ this.
    [[nodiscard]] double until() const { return until_; }
    /// Some line is tight before the one and past the other.
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
