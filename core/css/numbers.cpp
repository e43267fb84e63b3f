#include "css/numbers.h"

#include <algorithm>
#include <charconv>
#include <limits>

#include "css/ascii.h"

namespace tenter::css {

namespace {

// The exponent of `text` ("e-12"). It can have more digits than any integer type.
long writtenExponent(std::string_view text) {
    constexpr long beyondAny = 1'000'000'000;
    if (text.empty()) return 0;
    text.remove_prefix(1);
    const bool negative = text.starts_with('-');
    long value = 0;
    for (const char c : text) {
        if (isDigit(c)) value = std::min(value * 10 + (c - '0'), beyondAny);
    }
    return negative ? -value : value;
}

// True if an unsigned number that does not fit a double is too large, not too small: decided by the position
// of its first digit other than 0.
bool isTooLarge(std::string_view text) {
    const std::size_t exponentAt = std::min(text.find_first_of("eE"), text.size());
    const std::string_view digits = text.substr(0, exponentAt);
    const std::size_t first = digits.find_first_of("123456789");
    if (first == std::string_view::npos) return false;
    const auto point = static_cast<long>(std::min(digits.find('.'), digits.size()));
    return point - static_cast<long>(first) + writtenExponent(text.substr(exponentAt)) > 0;
}

}  // namespace

double valueOf(std::string_view number) {
    const bool negative = number.starts_with('-');
    if (negative || number.starts_with('+')) number.remove_prefix(1);
    double value = 0;
    const auto read = std::from_chars(number.data(), number.data() + number.size(), value);
    if (read.ec == std::errc::result_out_of_range) {
        value = isTooLarge(number) ? std::numeric_limits<double>::max() : 0;
    }
    return negative ? -value : value;
}

}  // namespace tenter::css
