#include "axis/width_scale.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::axis {

namespace {

constexpr double leastShare = 0.02;  // share of the range that is visible at the highest zoom

}  // namespace

void WidthScale::setRange(double least, double most) {
    least_ = least;
    most_ = std::max(most, least + 1);
    setBreakpoints(std::vector<double>(breakpoints_));
}

void WidthScale::setBreakpoints(const std::vector<double>& breakpoints) {
    breakpoints_.clear();
    stops_.assign(1, least_);
    for (const double breakpoint : breakpoints) {
        if (breakpoint <= stops_.back() || breakpoint >= most_) continue;
        breakpoints_.push_back(breakpoint);
        stops_.push_back(breakpoint);
    }
    stops_.push_back(most_);
}

void WidthScale::setEqualRoom(bool on) {
    equalRoom_ = on;
}

void WidthScale::setSpan(double left, double right) {
    left_ = left;
    right_ = std::max(right, left + 1);
}

double WidthScale::share(double width) const {
    if (!equalRoom_ || stops_.size() < 3) return (width - least_) / (most_ - least_);
    const auto bands = static_cast<double>(stops_.size() - 1);
    std::size_t band = 0;
    while (band + 2 < stops_.size() && width > stops_[band + 1])
        ++band;
    return (static_cast<double>(band) + (width - stops_[band]) / (stops_[band + 1] - stops_[band])) / bands;
}

double WidthScale::widthOf(double share) const {
    share = std::clamp(share, 0.0, 1.0);
    if (!equalRoom_ || stops_.size() < 3) return least_ + share * (most_ - least_);
    const double along = share * static_cast<double>(stops_.size() - 1);
    const auto band = std::min(static_cast<std::size_t>(along), stops_.size() - 2);
    return stops_[band] + (along - static_cast<double>(band)) * (stops_[band + 1] - stops_[band]);
}

double WidthScale::x(double width) const {
    return left_ + (share(width) - from_) / (to_ - from_) * (right_ - left_);
}

double WidthScale::width(double x) const {
    return widthOf(from_ + (x - left_) / (right_ - left_) * (to_ - from_));
}

void WidthScale::zoomAbout(double x, double factor) {
    const double pivot = (x - left_) / (right_ - left_);
    const double held = from_ + pivot * (to_ - from_);
    const double room = std::clamp((to_ - from_) / factor, leastShare, 1.0);
    from_ = held - pivot * room;
    to_ = from_ + room;
    settle();
}

void WidthScale::showWhole() {
    from_ = 0;
    to_ = 1;
}

void WidthScale::pan(double px) {
    const double by = px / (right_ - left_) * (to_ - from_);
    from_ += by;
    to_ += by;
    settle();
}

void WidthScale::reveal(double width) {
    const double at = share(width);
    const double room = to_ - from_;
    if (at < from_)
        from_ = at;
    else if (at > to_)
        from_ = at - room;
    to_ = from_ + room;
    settle();
}

void WidthScale::settle() {
    const double room = to_ - from_;
    from_ = std::clamp(from_, 0.0, 1 - room);
    to_ = from_ + room;
}

}  // namespace tenter::desktop::axis
