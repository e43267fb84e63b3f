#include "start/colour_spaces.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "css/longhands.h"
#include "units/scan.h"

namespace tenter::start {

namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

// CSS Color 4 § 18: sample code for colour conversions. D65 throughout.
constexpr Matrix linearToXyz{{{506752.0 / 1228815, 87881.0 / 245763, 12673.0 / 70218},
                              {87098.0 / 409605, 175762.0 / 245763, 12673.0 / 175545},
                              {7918.0 / 409605, 87881.0 / 737289, 1001167.0 / 1053270}}};
constexpr Matrix xyzToLinear{{{12831.0 / 3959, -329.0 / 214, -1974.0 / 3959},
                              {-851781.0 / 878810, 1648619.0 / 878810, 36519.0 / 878810},
                              {705.0 / 12673, -2585.0 / 12673, 705.0 / 667}}};
constexpr Matrix displayP3ToXyz{{{608311.0 / 1250200, 189793.0 / 714400, 198249.0 / 1000160},
                                 {35783.0 / 156275, 247089.0 / 357200, 198249.0 / 2500400},
                                 {0, 32229.0 / 714400, 5220557.0 / 5000800}}};
constexpr Matrix oklabToRoots{{{1, 0.3963377773761749, 0.2158037573099136},
                               {1, -0.1055613458156586, -0.0638541728258133},
                               {1, -0.0894841775298119, -1.2914855480194092}}};
constexpr Matrix conesToXyz{{{1.2268798758459243, -0.5578149944602171, 0.2813910456659647},
                             {-0.0405757452148008, 1.1122868032803170, -0.0717110580655164},
                             {-0.0763729366746601, -0.4214933324022432, 1.5869240198367816}}};
constexpr Matrix xyzToCones{{{0.8190224379967030, 0.3619062600528904, -0.1288737815209879},
                             {0.0329836539323885, 0.9292868615863434, 0.0361446663506424},
                             {0.0481771893596242, 0.2642395317527308, 0.6335478284694309}}};
constexpr Matrix rootsToOklab{{{0.2104542683093140, 0.7936177747023054, -0.0040720430116193},
                               {1.9779985324311684, -2.4285922420485799, 0.4505937096174110},
                               {0.0259040424655478, 0.7827717124575296, -0.8086757549230774}}};
// From D50, the white of lab() and lch(), to D65.
constexpr Matrix d50ToD65{{{0.9554734527042182, -0.0230985368742614, 0.0632593086610217},
                           {-0.0283697069632081, 1.0099954580058226, 0.0210413989669430},
                           {0.0123140016883199, -0.0205076964334779, 1.3303659366080753}}};
constexpr Triple whiteD50{0.3457 / 0.3585, 1.0, (1.0 - 0.3457 - 0.3585) / 0.3585};

Triple times(const Matrix& matrix, const Triple& vector) {
    Triple out{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            out.at(i) += matrix.at(i).at(j) * vector.at(j);
    return out;
}

double encoded(double linear) {
    const double size = std::abs(linear);
    return size > 0.0031308 ? std::copysign(1.055 * std::pow(size, 1 / 2.4) - 0.055, linear) : 12.92 * linear;
}

double decoded(double channel) {
    const double size = std::abs(channel);
    return size <= 0.04045 ? channel / 12.92 : std::copysign(std::pow((size + 0.055) / 1.055, 2.4), channel);
}

Triple eachOf(Triple channels, double (*change)(double)) {
    for (double& channel : channels)
        channel = change(channel);
    return channels;
}

Triple fromXyz(const Triple& xyz) {
    return eachOf(times(xyzToLinear, xyz), encoded);
}

Triple fromOklab(const Triple& lab) {
    return fromXyz(
        times(conesToXyz, eachOf(times(oklabToRoots, lab), [](double root) { return root * root * root; })));
}

Triple toOklab(const Triple& srgb) {
    const Triple xyz = times(linearToXyz, eachOf(srgb, decoded));
    return times(rootsToOklab, eachOf(times(xyzToCones, xyz), [](double cone) { return std::cbrt(cone); }));
}

Triple fromLab(const Triple& lab) {
    constexpr double kappa = 24389.0 / 27;
    constexpr double epsilon = 216.0 / 24389;
    const double f1 = (lab[0] + 16) / 116;
    const double f0 = lab[1] / 500 + f1;
    const double f2 = f1 - lab[2] / 200;
    const auto cube = [&](double f) {
        const double whole = f * f * f;
        return whole > epsilon ? whole : (116 * f - 16) / kappa;
    };
    const double y = lab[0] > kappa * epsilon ? f1 * f1 * f1 : lab[0] / kappa;
    return fromXyz(times(d50ToD65, {cube(f0) * whiteD50[0], y * whiteD50[1], cube(f2) * whiteD50[2]}));
}

/// Lightness, chroma and hue in degrees as lightness and two axes.
Triple fromPolar(const Triple& polar) {
    const double hue = polar[2] * std::numbers::pi / 180;
    return {polar[0], polar[1] * std::cos(hue), polar[1] * std::sin(hue)};
}

Triple fromHwb(const Triple& hwb) {
    const double white = hwb[1];
    const double black = hwb[2];
    if (white + black >= 1) {
        const double grey = white / (white + black);
        return {grey, grey, grey};
    }
    Triple out{};
    const Triple offsets{0, 8, 4};
    for (std::size_t i = 0; i < 3; ++i) {
        const double turned = std::fmod(offsets.at(i) + hwb[0] / 30, 12);
        const double at = turned < 0 ? turned + 12 : turned;
        const double pure = 0.5 - 0.5 * std::max(-1.0, std::min({at - 3, 9 - at, 1.0}));
        out.at(i) = pure * (1 - white - black) + white;
    }
    return out;
}

/// A number, percentage or angle of a colour function.
struct Term {
    double value = 0;
    std::string unit;
    /// The value, of which 100 % are `whole`.
    [[nodiscard]] double of(double whole) const { return unit == "%" ? value / 100 * whole : value; }
    [[nodiscard]] double degrees() const {
        if (unit == "turn") return value * 360;
        if (unit == "rad") return value * 180 / std::numbers::pi;
        return unit == "grad" ? value * 0.9 : value;
    }
};

std::optional<std::vector<Term>> termsOf(const std::vector<std::string>& words, std::size_t from) {
    std::vector<Term> components;
    components.reserve(words.size());
    for (std::size_t i = from; i < words.size(); ++i) {
        if (words[i] == "/") continue;
        const auto number =
            words[i] == "none" ? std::optional(units::Scanned{0, {}}) : units::scanNumber(words[i]);
        if (!number) return std::nullopt;
        components.push_back({number->value, std::string(number->rest)});
    }
    if (components.size() != 3 && components.size() != 4) return std::nullopt;
    return components;
}

std::optional<Triple> ofSpace(const std::string& space, const Triple& channels) {
    if (space == "srgb") return channels;
    if (space == "srgb-linear") return eachOf(channels, encoded);
    if (space == "display-p3") return fromXyz(times(displayP3ToXyz, eachOf(channels, decoded)));
    if (space == "xyz" || space == "xyz-d65") return fromXyz(channels);
    return std::nullopt;
}

}  // namespace

std::optional<Srgb> colourOfFunction(const std::string& function, const std::string& arguments) {
    std::string spaced = arguments;
    // A `/` without spaces around it is a part of its own, too.
    for (std::size_t at = spaced.find('/'); at != std::string::npos; at = spaced.find('/', at + 3))
        spaced.replace(at, 1, " / ");
    const std::vector<std::string> words = css::valueParts(spaced);
    const bool isColor = function == "color";
    const auto found = termsOf(words, isColor ? 1 : 0);
    if (!found) return std::nullopt;
    const std::vector<Term>& part = *found;
    Srgb colour;
    if (part.size() == 4) colour.alpha = std::clamp(part[3].of(1), 0.0, 1.0);
    if (function == "oklab") {
        colour.channels = fromOklab({part[0].of(1), part[1].of(0.4), part[2].of(0.4)});
    } else if (function == "oklch") {
        colour.channels = fromOklab(fromPolar({part[0].of(1), part[1].of(0.4), part[2].degrees()}));
    } else if (function == "lab") {
        colour.channels = fromLab({part[0].of(100), part[1].of(125), part[2].of(125)});
    } else if (function == "lch") {
        colour.channels = fromLab(fromPolar({part[0].of(100), part[1].of(150), part[2].degrees()}));
    } else if (function == "hwb") {
        colour.channels = fromHwb({part[0].degrees(), part[1].value / 100, part[2].value / 100});
    } else if (isColor) {
        const auto channels = ofSpace(words.front(), {part[0].of(1), part[1].of(1), part[2].of(1)});
        if (!channels) return std::nullopt;
        colour.channels = *channels;
    } else {
        return std::nullopt;
    }
    return colour;
}

std::optional<Srgb> mixed(const std::string& space, const Srgb& one, const Srgb& other, double share) {
    const bool isPolar = space == "oklch" || space == "lch";
    const bool isOklab = isPolar || space == "oklab" || space == "lab";
    const bool isLinear = space == "srgb-linear" || space.starts_with("xyz");
    if (!isOklab && !isLinear && space != "srgb" && space != "hsl" && space != "hwb") return std::nullopt;
    const auto into = [&](const Triple& srgb) {
        return isOklab ? toOklab(srgb) : isLinear ? eachOf(srgb, decoded) : srgb;
    };
    Triple from = into(one.channels);
    Triple to = into(other.channels);
    Srgb out;
    out.alpha = one.alpha * (1 - share) + other.alpha * share;
    if (out.alpha <= 0) return Srgb{{}, 0};
    const double weight = other.alpha * share / out.alpha;
    Triple mix{};
    for (std::size_t i = 0; i < 3; ++i)
        mix.at(i) = from.at(i) * (1 - weight) + to.at(i) * weight;
    if (isPolar) {
        const auto chroma = [](const Triple& lab) { return std::hypot(lab[1], lab[2]); };
        const auto hue = [](const Triple& lab) {
            return std::atan2(lab[2], lab[1]) * 180 / std::numbers::pi;
        };
        constexpr double grey = 1e-4;
        // A grey has no hue: the mix has that of the other colour. CSS Color 4 § 12.2.
        const double start = chroma(from) < grey || one.alpha <= 0 ? hue(to) : hue(from);
        const double end = chroma(to) < grey || other.alpha <= 0 ? start : hue(to);
        double arc = std::fmod(end - start, 360);
        if (arc > 180) arc -= 360;
        if (arc < -180) arc += 360;
        // Hues are not premultiplied.
        mix = fromPolar({mix[0], chroma(from) * (1 - weight) + chroma(to) * weight, start + arc * share});
    }
    out.channels = isOklab ? fromOklab(mix) : isLinear ? eachOf(mix, encoded) : mix;
    return out;
}

}  // namespace tenter::start
