#include "checks/ground.h"

#include "units/contrast.h"

namespace tenter::checks {

using units::Colour;

namespace {

constexpr Colour clear{0, 0, 0, 0};

}  // namespace

Colour rowGround(const Subject& subject, std::size_t band) {
    constexpr Colour white{255, 255, 255, 255};
    const Colour container = units::laidOn(subject.project.page.container.background, white);
    return units::laidOn(subject.row.settings(band).row.background.value_or(clear), container);
}

Colour cardGround(const Subject& subject, std::size_t band) {
    return units::laidOn(subject.row.settings(band).card.background.value_or(clear),
                         rowGround(subject, band));
}

Colour withContrast(const Colour& ink, const Colour& ground, double ratio) {
    constexpr Colour black{0, 0, 0, 255};
    constexpr Colour white{255, 255, 255, 255};
    const bool darker = units::contrast(black, ground) >= units::contrast(white, ground);
    const bool inkIsDarker = units::luminance(ink) < units::luminance(ground);
    // Towards where it already leans, if that gets far enough.
    for (const bool dark : {inkIsDarker, darker}) {
        Colour end = dark ? black : white;
        if (units::contrast(end, ground) < ratio) continue;
        for (int step = 0; step <= 255; ++step) {
            end.alpha = static_cast<std::uint8_t>(step);
            const Colour mixed = units::laidOn(end, ink);
            if (units::contrast(mixed, ground) >= ratio) return mixed;
        }
    }
    return ink;
}

}  // namespace tenter::checks
