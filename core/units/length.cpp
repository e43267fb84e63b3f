#include "units/length.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "units/ascii.h"
#include "units/number.h"
#include "units/scan.h"

namespace tenter::units {

namespace {

constexpr double parseLimit = 1e6;
// Larger than any real length, and small enough for a double to keep four decimals.
constexpr double valueLimit = 1e11;

constexpr std::array<std::pair<Unit, std::string_view>, 6> units{{{Unit::Px, "px"},
                                                                  {Unit::Rem, "rem"},
                                                                  {Unit::Em, "em"},
                                                                  {Unit::Percent, "%"},
                                                                  {Unit::Vw, "vw"},
                                                                  {Unit::Cqi, "cqi"}}};

}  // namespace

Length Length::of(double value, Unit unit) {
    const double kept = std::isnan(value) ? 0 : rounded(std::clamp(value, -valueLimit, valueLimit));
    return kept == 0 ? Length() : Length(kept, unit);
}

Length Length::px(double value) {
    return of(value, Unit::Px);
}
Length Length::rem(double value) {
    return of(value, Unit::Rem);
}
Length Length::em(double value) {
    return of(value, Unit::Em);
}
Length Length::percent(double value) {
    return of(value, Unit::Percent);
}
Length Length::vw(double value) {
    return of(value, Unit::Vw);
}
Length Length::cqi(double value) {
    return of(value, Unit::Cqi);
}
Length Length::in(double value, Unit unit) {
    return of(value, unit == Unit::Auto || unit == Unit::None ? Unit::Px : unit);
}
Length Length::ofAuto() {
    return {0, Unit::Auto};
}
Length Length::ofNone() {
    return {0, Unit::None};
}

std::optional<Length> Length::parse(std::string_view text) {
    if (text.size() > 64) return std::nullopt;
    // Units and keywords are ASCII case-insensitive. CSS Values 4 § 2.
    const std::string lower = lowered(text);
    if (lower == "auto") return ofAuto();
    if (lower == "none") return ofNone();
    const std::optional<Scanned> scanned = scanNumber(lower);
    if (!scanned || std::abs(scanned->value) > parseLimit) return std::nullopt;
    if (scanned->rest.empty()) return scanned->value == 0 ? std::optional(Length()) : std::nullopt;
    for (const auto& [unit, name] : units) {
        if (scanned->rest == name) return of(scanned->value, unit);
    }
    return std::nullopt;
}

std::string Length::css() const {
    if (isKeyword()) return std::string(suffix(unit_));
    if (value_ == 0) return "0";
    return units::number(value_) + std::string(suffix(unit_));
}

std::string_view suffix(Unit unit) {
    if (unit == Unit::Auto) return "auto";
    if (unit == Unit::None) return "none";
    for (const auto& [each, name] : units) {
        if (each == unit) return name;
    }
    return {};
}

}  // namespace tenter::units
