#include "units/quantities.h"

#include <cmath>

#include "units/number.h"
#include "wording/language.h"
#include "wording/say.h"

namespace tenter::units {

namespace {

constexpr const char* noBreakSpace = "\u00A0";

}  // namespace

std::string figure(double value, int decimals, Rounding rounding) {
    const double step = std::pow(10.0, decimals);
    // A number that is whole but for the rounding of doubles stays what it is.
    constexpr double almost = 1e-6;
    const double shown =
        rounding == Rounding::Down ? std::floor(value * step + almost) / step : rounded(value, decimals);
    std::string text = number(shown, decimals);
    if (text.front() == '-') text.replace(0, 1, "\u2212");
    if (!wording::isTranslating()) return text;
    //: The sign between the whole number and its decimals
    const std::string point = wording::say(".");
    if (const std::size_t at = text.find('.'); at != std::string::npos) text.replace(at, 1, point);
    return text;
}

std::string px(double value, int decimals, Rounding rounding) {
    return figure(value, decimals, rounding) + noBreakSpace + "px";
}

std::string pxRange(double from, double to, int decimals) {
    const std::string first = figure(from, decimals);
    const std::string last = px(to, decimals);
    return first + noBreakSpace + "px" == last ? last : first + "–" + last;
}

std::string fromPxToPx(double from, double to, int decimals) {
    const std::string last = px(to, decimals);
    //: A width or a size with its unit
    if (px(from, decimals) == last) return wording::say("at %1", {last});
    return wording::say("from %1 to %2", {figure(from, decimals), last});
}

std::string percent(double share, int decimals) {
    const std::string text = figure(share * 100, decimals);
    if (share > 0 && text == "0")
        return wording::say("under %1", {figure(std::pow(10.0, -decimals), decimals) + noBreakSpace + "%"});
    return text + noBreakSpace + "%";
}

}  // namespace tenter::units
