#include "pictures/colour_profile.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <optional>

namespace tenter::pictures {

namespace {

/// Reads big-endian numbers of a profile; 0 beyond its end.
class ProfileReader {
public:
    explicit ProfileReader(std::string_view bytes) : bytes_(bytes) {}

    [[nodiscard]] std::uint32_t number(std::size_t at, std::size_t size) const {
        if (at > bytes_.size() || bytes_.size() - at < size) return 0;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < size; ++i)
            value = value << 8 | static_cast<unsigned char>(bytes_[at + i]);
        return value;
    }
    [[nodiscard]] double fixed(std::size_t at) const {
        return static_cast<std::int32_t>(number(at, 4)) / 65536.0;
    }
    [[nodiscard]] bool says(std::size_t at, std::string_view word) const {
        return at <= bytes_.size() && bytes_.substr(at, word.size()) == word;
    }
    /// The offset of the data of a tag.
    [[nodiscard]] std::optional<std::size_t> tag(std::string_view name) const {
        const std::uint32_t count = std::min<std::uint32_t>(number(128, 4), 100);
        for (std::size_t i = 0; i < count; ++i)
            if (says(132 + 12 * i, name)) return number(136 + 12 * i, 4);
        return std::nullopt;
    }

private:
    std::string_view bytes_;
};

/// A wider tolerance would take other colour spaces for sRGB; profiles of sRGB differ by less.
constexpr double samePrimary = 0.002;
constexpr double sameLight = 0.004;

bool hasPrimary(const ProfileReader& profile, std::string_view name, const std::array<double, 3>& wanted) {
    const auto at = profile.tag(name);
    if (!at || !profile.says(*at, "XYZ ")) return false;
    for (std::size_t i = 0; i < 3; ++i)
        if (std::abs(profile.fixed(*at + 8 + 4 * i) - wanted[i]) > samePrimary) return false;
    return true;
}

/// The light of a component by a parametric curve of type 3 (ICC.1 § 10.18) or by a table (§ 10.6).
std::optional<double> lightOf(const ProfileReader& profile, std::size_t at, double component) {
    if (profile.says(at, "para") && profile.number(at + 8, 2) == 3) {
        const double d = profile.fixed(at + 28);
        if (component < d) return profile.fixed(at + 24) * component;
        return std::pow(profile.fixed(at + 16) * component + profile.fixed(at + 20), profile.fixed(at + 12));
    }
    const std::uint32_t count = profile.number(at + 8, 4);
    if (!profile.says(at, "curv") || count < 2) return std::nullopt;
    const double place = component * (count - 1);
    const auto below = static_cast<std::size_t>(place);
    const auto entry = [&](std::size_t i) { return profile.number(at + 12 + 2 * i, 2) / 65535.0; };
    const double share = place - static_cast<double>(below);
    return entry(below) + (share > 0 ? share * (entry(below + 1) - entry(below)) : 0);
}

bool hasSrgbCurve(const ProfileReader& profile, std::string_view name) {
    const auto at = profile.tag(name);
    if (!at) return false;
    for (const int step : {0, 1, 2, 4, 8, 12, 16, 20, 24, 28, 31, 32}) {
        const double component = step / 32.0;
        const auto light = lightOf(profile, *at, component);
        if (!light || std::abs(*light - linearOfSrgb(component)) > sameLight) return false;
    }
    return true;
}

}  // namespace

bool isSrgbProfile(std::string_view bytes) {
    const ProfileReader profile(bytes);
    // A profile with tables of its own may do anything. ICC.1 § 8.10.
    if (!profile.says(16, "RGB ") || profile.tag("A2B0") || profile.tag("A2B1")) return false;
    // The primaries of sRGB adapted to D50.
    return hasPrimary(profile, "rXYZ", {0.4361, 0.2225, 0.0139}) &&
           hasPrimary(profile, "gXYZ", {0.3851, 0.7169, 0.0971}) &&
           hasPrimary(profile, "bXYZ", {0.1431, 0.0606, 0.7141}) && hasSrgbCurve(profile, "rTRC") &&
           hasSrgbCurve(profile, "gTRC") && hasSrgbCurve(profile, "bTRC");
}

double linearOfSrgb(double component) {
    return component <= 0.04045 ? component / 12.92 : std::pow((component + 0.055) / 1.055, 2.4);
}

double srgbOfLinear(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

}  // namespace tenter::pictures
