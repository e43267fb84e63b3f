#include <algorithm>
#include <cmath>

#include "units/length.h"
#include "units/number.h"
#include "units/scan.h"

namespace tenter::units {

namespace {
constexpr double limit = 1e6;
}

LineHeight LineHeight::times(double number) {
    LineHeight result;
    result.number_ = std::isnan(number) ? 0 : rounded(std::clamp(number, 0.0, limit));
    return result;
}

LineHeight LineHeight::of(Length length) {
    LineHeight result;
    result.isNumber_ = false;
    result.number_ = 0;
    result.length_ = length;
    return result;
}

std::optional<LineHeight> LineHeight::parse(std::string_view text) {
    if (const std::optional<Scanned> scanned = scanNumber(text); scanned && scanned->rest.empty()) {
        if (scanned->value < 0 || scanned->value > limit) return std::nullopt;
        return times(scanned->value);
    }
    const std::optional<Length> length = Length::parse(text);
    // A percentage refers to the font size, as em does.
    if (!length || length->isKeyword() || length->value() < 0 || length->unit() == Unit::Percent) {
        return std::nullopt;
    }
    return of(*length);
}

double LineHeight::resolve(const LengthBasis& basis) const {
    return isNumber_ ? number_ * basis.em : length_.resolve(basis);
}

std::string LineHeight::css() const {
    if (isNumber_) return units::number(number_);
    // In `line-height` a bare `0` is a number, not a length.
    return length_.isZero() ? "0px" : length_.css();
}

}  // namespace tenter::units
