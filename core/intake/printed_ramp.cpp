#include "intake/printed_ramp.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string>
#include <vector>

#include "units/number.h"

namespace tenter::intake {
namespace {

using units::Ramp;
using units::Unit;

/// Without the spaces and zeros that a minified stylesheet leaves out.
std::string shortest(std::string_view css) {
    std::string out;
    for (std::size_t i = 0; i < css.size(); ++i) {
        const bool inNumber = !out.empty() && std::isdigit(static_cast<unsigned char>(out.back())) != 0;
        const bool needless =
            css[i] == ' ' || (css[i] == '0' && !inNumber && i + 1 < css.size() && css[i + 1] == '.');
        if (!needless) out += css[i];
    }
    return out;
}

/// Round numbers near `size`, those with the fewest decimals first.
std::vector<double> sizesNear(double size) {
    std::vector<double> all;
    for (const int decimals : {2, 3, 4}) {
        const double rounded = units::rounded(size, decimals);
        if (std::ranges::find(all, rounded) == all.end()) all.push_back(rounded);
    }
    return all;
}

/// Round numbers near `width`, the roundest first; whole ones, or all.
std::vector<double> widthsNear(double width, bool whole) {
    std::vector<double> all;
    const auto add = [&](double value) {
        if (std::ranges::find(all, value) == all.end()) all.push_back(value);
    };
    for (const double step : {100.0, 50.0, 20.0, 10.0, 5.0, 1.0})
        add(std::round(width / step) * step);
    for (const double off : {-1.0, 1.0, -2.0, 2.0})
        add(std::round(width) + off);
    if (whole) return all;
    add(units::rounded(width, 1));
    add(units::rounded(width, 2));
    add(width);
    return all;
}

}  // namespace

std::optional<Ramp> rampPrintedAs(std::string_view css, const Ramp& near, double root,
                                  project::Follow follow) {
    const std::string wanted = shortest(css);
    const Unit unit = css.find("rem") != std::string_view::npos ? Unit::Rem : Unit::Px;
    const Unit slope = follow == project::Follow::Card ? Unit::Cqi : Unit::Vw;
    const auto isPrintedSo = [&](const Ramp& ramp) {
        return shortest(units::FluidSize::from(ramp, root, unit, slope).css()) == wanted;
    };
    for (const double size : sizesNear(near.from().size))
        if (near.isFlat() && isPrintedSo(Ramp::flat(size))) return Ramp::flat(size);
    if (near.isFlat()) return std::nullopt;
    for (const bool whole : {true, false}) {
        const std::vector<double> fromWidths = widthsNear(near.from().width, whole);
        const std::vector<double> toWidths = widthsNear(near.to().width, whole);
        for (const double fromSize : sizesNear(near.from().size))
            for (const double toSize : sizesNear(near.to().size))
                // The sum of two places in the lists of widths: the less, the rounder.
                for (std::size_t both = 0; both + 1 < fromWidths.size() + toWidths.size(); ++both)
                    for (std::size_t i = 0; i <= both && i < fromWidths.size(); ++i) {
                        if (both - i >= toWidths.size()) continue;
                        const auto ramp =
                            Ramp::between({fromWidths[i], fromSize}, {toWidths[both - i], toSize});
                        if (ramp && isPrintedSo(*ramp)) return ramp;
                    }
    }
    return std::nullopt;
}

}  // namespace tenter::intake
