#include "units/root_size.h"

#include <cmath>
#include <utility>
#include <vector>

#include "units/length.h"
#include "units/number.h"

namespace tenter::units {

namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    while (true) {
        const std::size_t at = text.find(separator);
        parts.push_back(text.substr(0, at));
        if (at == std::string_view::npos) return parts;
        text.remove_prefix(at + 1);
    }
}

bool isPx(const Length& length) {
    return length.unit() == Unit::Px;
}

/// Adds `sign` times the term written in `text` to `sum`; false if it is no length in px or vw.
bool addTerm(std::string_view text, double sign, RootSize::Calculation& sum) {
    const std::optional<Length> length = Length::parse(trimmed(text));
    if (!length || (!isPx(*length) && length->unit() != Unit::Vw)) return false;
    (isPx(*length) ? sum.px : sum.vw) += sign * length->value();
    return true;
}

/// Reads `14px + 0.3vw`, with spaces around the sign (CSS Values 4 § 10.1), or one of its terms alone.
bool readSum(std::string_view text, RootSize::Calculation& sum) {
    text = trimmed(text);
    for (const auto& [sign, factor] : {std::pair(" + ", 1.0), std::pair(" - ", -1.0)}) {
        const std::size_t at = text.find(sign);
        if (at == std::string_view::npos) continue;
        return addTerm(text.substr(0, at), 1, sum) && addTerm(text.substr(at + 3), factor, sum);
    }
    return addTerm(text, 1, sum);
}

}  // namespace

RootSize RootSize::percent(double value) {
    RootSize size;
    size.kind_ = Kind::Percent;
    size.value_ = Length::percent(value).value();
    return size;
}

RootSize RootSize::of(const Calculation& calculation) {
    const auto rounded = [](const std::optional<double>& px) {
        return px ? std::optional(Length::px(*px).value()) : std::nullopt;
    };
    RootSize size;
    size.kind_ = Kind::Calculation;
    size.calculation_ = {Length::px(calculation.px).value(), Length::vw(calculation.vw).value(),
                         rounded(calculation.least), rounded(calculation.most)};
    size.value_ = size.calculation_.px;
    return size;
}

std::optional<RootSize> RootSize::parse(std::string_view text) {
    text = trimmed(text);
    Calculation made;
    const auto limitIn = [](std::string_view part, std::optional<double>& limit) {
        const std::optional<Length> length = Length::parse(trimmed(part));
        if (length && isPx(*length)) limit = length->value();
        return limit.has_value();
    };
    const auto within = [&](std::string_view name) -> std::optional<std::vector<std::string_view>> {
        if (!text.starts_with(name) || !text.ends_with(')')) return std::nullopt;
        return split(text.substr(name.size(), text.size() - name.size() - 1), ',');
    };
    if (const auto parts = within("clamp(")) {
        if (parts->size() != 3 || !limitIn(parts->front(), made.least) ||
            !limitIn(parts->back(), made.most) || !readSum((*parts)[1], made))
            return std::nullopt;
    } else if (const auto most = within("min(")) {
        if (most->size() != 2 || !readSum(most->front(), made) || !limitIn(most->back(), made.most))
            return std::nullopt;
    } else if (const auto least = within("max(")) {
        if (least->size() != 2 || !limitIn(least->front(), made.least) || !readSum(least->back(), made))
            return std::nullopt;
    } else if (const auto sum = within("calc(")) {
        if (sum->size() != 1 || !readSum(sum->front(), made)) return std::nullopt;
    } else {
        const std::optional<Length> length = Length::parse(text);
        if (length && length->unit() == Unit::Percent) return percent(length->value());
        if (!readSum(text, made)) return std::nullopt;
    }
    return of(made);
}

double RootSize::truncation(double vw, double step) const {
    if (!isFluid() || step == 0) return 0;
    // The number before `vw` is a float, the viewport a whole number of steps.
    const double steps = static_cast<float>(calculation_.vw) * std::round(vw / step) / 100;
    return std::abs(calculation_.vw / 100 * vw - std::trunc(steps) * step);
}

std::string RootSize::cssFor(double readerSize) const {
    return kind_ == Kind::Calculation ? css() : units::number(resolve(readerSize, 0.0)) + "px";
}

std::string RootSize::css() const {
    if (kind_ == Kind::Number) return units::number(value_) + "px";
    if (kind_ == Kind::Percent) return units::number(value_) + "%";
    const auto px = [](double value) { return units::number(value) + "px"; };
    const double vw = calculation_.vw;
    const std::string sum =
        vw == 0 ? px(calculation_.px)
                : px(calculation_.px) + (vw < 0 ? " - " : " + ") + units::number(vw < 0 ? -vw : vw) + "vw";
    const std::optional<double>& least = calculation_.least;
    const std::optional<double>& most = calculation_.most;
    if (least && most) return "clamp(" + px(*least) + ", " + sum + ", " + px(*most) + ")";
    if (least) return "max(" + px(*least) + ", " + sum + ")";
    if (most) return "min(" + sum + ", " + px(*most) + ")";
    return vw == 0 ? sum : "calc(" + sum + ")";
}

}  // namespace tenter::units
