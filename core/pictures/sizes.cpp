#include "pictures/sizes.h"

#include <algorithm>
#include <cmath>

#include "layout/prepared.h"
#include "units/number.h"

namespace tenter::pictures {

namespace {

/// Decimals of the numbers in `sizes`. At 4000 px the error is at most 0.007 px.
constexpr int pxDecimals = 2;
constexpr int vwDecimals = 4;

double rounded(double value, int decimals) {
    const double step = std::pow(10, decimals);
    return std::round(value * step) / step;
}

/// The width of a scrollbar that `vw` leaves out but media conditions do not, CSS px.
double scrollbarOutsideVw(const layout::IntervalPlan& interval) {
    const project::Scrollbar& scrollbar = interval.page.scrollbar;
    return scrollbar.always && interval.band->profile->vwExcludesSteadyScrollbar() ? scrollbar.width : 0;
}

/// Two ranges with a difference of less than this at both ends are one, CSS px.
constexpr double sameLine = 0.02;

bool continues(const SourceSize& before, const SourceSize& after, double from, double to) {
    const auto at = [](const SourceSize& size, double width) { return size.px + size.vw / 100 * width; };
    return std::abs(at(before, from) - at(after, from)) < sameLine &&
           std::abs(at(before, to) - at(after, to)) < sameLine;
}

}  // namespace

std::string SourceSize::css() const {
    const std::string ofPx = units::number(std::abs(px), pxDecimals) + "px";
    std::string ofVw = units::number(vw, vwDecimals) + "vw";
    if (vw == 0) return px < 0 ? "0px" : ofPx;
    if (px == 0) return ofVw;
    std::string out = "calc(" + ofVw;
    out += px < 0 ? " - " : " + ";
    return out + ofPx + ")";
}

std::vector<SourceSize> sourceSizes(const Slot& slot, const layout::PreparedRow& row) {
    std::vector<SourceSize> sizes;
    const sweep::Curve& drawn = slot.drawn;
    for (std::size_t i = 0; i + 1 < drawn.size(); ++i) {
        const double from = drawn[i].width;
        const double to = drawn[i + 1].width;
        if (!(from < to)) continue;
        const double slope = (drawn[i + 1].value - drawn[i].value) / (to - from);
        const double scrollbar = scrollbarOutsideVw(row.at((from + to) / 2));
        SourceSize size;
        size.upTo = to;
        size.vw = rounded(100 * slope, vwDecimals);
        // The rounded slope must not change the value in the middle.
        const double middle = (drawn[i].value + drawn[i + 1].value) / 2;
        size.px = rounded(middle - size.vw / 100 * ((from + to) / 2 - scrollbar), pxDecimals);
        if (!sizes.empty() && continues(sizes.back(), size, from, to)) {
            sizes.back().upTo = to;
            continue;
        }
        sizes.push_back(size);
    }
    if (!sizes.empty()) sizes.back().upTo.reset();
    return sizes;
}

std::string sizesAttribute(const std::vector<SourceSize>& sizes) {
    std::string out;
    for (const SourceSize& size : sizes) {
        if (!out.empty()) out += ", ";
        if (size.upTo) out += "(max-width: " + units::number(*size.upTo, pxDecimals) + "px) ";
        out += size.css();
    }
    return out;
}

double sourceSizeAt(const std::vector<SourceSize>& sizes, double width, double outside) {
    for (const SourceSize& size : sizes)
        if (!size.upTo || width <= *size.upTo)
            return std::max(0.0, size.px + size.vw / 100 * (width - outside));
    return 0;
}

}  // namespace tenter::pictures
