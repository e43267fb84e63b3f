#include "units/number.h"

#include <array>
#include <charconv>
#include <cmath>

namespace tenter::units {

namespace {

double powerOfTen(int decimals) {
    double power = 1;
    for (int i = 0; i < decimals; ++i)
        power *= 10;
    return power;
}

// A larger double has no decimals to round.
constexpr double wholeBeyond = 1e15;

}  // namespace

double rounded(double value, int decimals) {
    if (!std::isfinite(value)) return 0;
    const double power = powerOfTen(decimals);
    if (std::abs(value) * power > wholeBeyond) return value;
    return std::round(value * power) / power + 0.0;  // + 0.0 turns −0 into 0
}

std::string number(double value, int decimals) {
    std::array<char, 400> buffer;  // the largest double has 309 digits
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(),
                                            rounded(value, decimals), std::chars_format::fixed, decimals);
    if (error != std::errc()) return "0";
    std::string text(buffer.data(), end);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text;
}

}  // namespace tenter::units
