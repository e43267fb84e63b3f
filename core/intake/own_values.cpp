#include "intake/own_values.h"

#include <charconv>
#include <cmath>

#include "css/longhands.h"
#include "units/number.h"

namespace tenter::intake {

using units::Length;
using units::Unit;

std::string valueOf(const Values& values, const std::string& property, const std::string& usual) {
    const auto found = values.find(property);
    return found == values.end() ? usual : found->second;
}

std::optional<double> numberIn(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::array<std::string, 4> sidesIn(const std::string& value) {
    const std::vector<std::string> parts = css::valueParts(value);
    if (parts.empty()) return {"0", "0", "0", "0"};
    const std::string& top = parts[0];
    const std::string& right = parts.size() > 1 ? parts[1] : top;
    return {top, right, parts.size() > 2 ? parts[2] : top, parts.size() > 3 ? parts[3] : right};
}

std::optional<Sum> sumIn(std::string_view text) {
    Sum sum{};
    if (text.starts_with("calc(") && text.ends_with(")")) text = text.substr(5, text.size() - 6);
    double sign = 1;
    for (const std::string& part : css::valueParts(text)) {
        if (part == "+" || part == "-") {
            sign = part == "+" ? 1 : -1;
            continue;
        }
        const std::optional<Length> length = Length::parse(part);
        if (!length || length->isKeyword()) return std::nullopt;
        sum[static_cast<std::size_t>(length->unit())] += sign * length->value();
    }
    return sum;
}

std::optional<Length> single(const Sum& sum) {
    std::optional<Length> found = Length();
    for (std::size_t i = 0; i < sum.size(); ++i) {
        // The sheet has rounded numbers, so their differences are not exact.
        const double value = units::rounded(sum[i], 3);
        if (value == 0) continue;
        if (!found->isZero()) return std::nullopt;
        found = Length::parse(units::number(value) + std::string(units::suffix(static_cast<Unit>(i))));
    }
    return found;
}

std::string sumCss(const Sum& sum) {
    if (const auto one = single(sum)) return one->css();
    std::string text = "calc(";
    for (std::size_t i = 0; i < sum.size(); ++i) {
        if (sum[i] == 0) continue;
        if (text.size() > 5) text += " + ";
        text += units::number(sum[i], 6) + std::string(units::suffix(static_cast<Unit>(i)));
    }
    return text + ")";
}

bool areSameSum(const std::string& one, const std::string& other) {
    constexpr double rounding = 0.002;  // of numbers that were rounded before they were calculated with
    const std::optional<Sum> left = sumIn(one);
    const std::optional<Sum> right = sumIn(other);
    if (!left || !right) return one == other;
    for (std::size_t i = 0; i < left->size(); ++i)
        if (std::abs((*left)[i] - (*right)[i]) > rounding) return false;
    return true;
}

}  // namespace tenter::intake
