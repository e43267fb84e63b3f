#include "checks/background.h"

#include "units/contrast.h"
#include "wording/say.h"

namespace tenter::checks {

using units::Colour;

namespace {

constexpr Colour clear{0, 0, 0, 0};

}  // namespace

Colour rowBackground(const layout::IntervalPlan& interval) {
    constexpr Colour white{255, 255, 255, 255};
    const Colour container = units::compositeOver(interval.page.background, white);
    return units::compositeOver(interval.band->settings.row.background.value_or(clear), container);
}

Colour cardBackground(const layout::IntervalPlan& interval) {
    return units::compositeOver(interval.band->settings.card.background.value_or(clear),
                                rowBackground(interval));
}

Colour withContrast(const Colour& ink, const Colour& background, double ratio) {
    constexpr Colour black{0, 0, 0, 255};
    constexpr Colour white{255, 255, 255, 255};
    const bool darker = units::contrast(black, background) >= units::contrast(white, background);
    const bool inkIsDarker = units::luminance(ink) < units::luminance(background);
    // First the direction in which the ink already differs from the background.
    for (const bool dark : {inkIsDarker, darker}) {
        Colour end = dark ? black : white;
        if (units::contrast(end, background) < ratio) continue;
        for (int step = 0; step <= 255; ++step) {
            end.alpha = static_cast<std::uint8_t>(step);
            const Colour mixed = units::compositeOver(end, ink);
            if (units::contrast(mixed, background) >= ratio) return mixed;
        }
    }
    return ink;
}

std::string coloursWithContrast(const Colour& ink, const Colour& background, double ratio) {
    const Colour enough = withContrast(ink, background, ratio);
    return units::luminance(enough) < units::luminance(background)
               ? wording::say("%1 or darker", {enough.css()})
               : wording::say("%1 or lighter", {enough.css()});
}

}  // namespace tenter::checks
