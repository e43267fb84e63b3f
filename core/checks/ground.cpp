#include "checks/ground.h"

#include "units/contrast.h"

namespace tenter::checks {

using units::Colour;

Colour cardGround(const Subject& subject, std::size_t band) {
    const project::Settings& settings = subject.row.settings(band);
    constexpr Colour clear{0, 0, 0, 0};
    Colour ground{255, 255, 255, 255};
    ground = units::laidOn(subject.project.page.container.background, ground);
    ground = units::laidOn(settings.row.background.value_or(clear), ground);
    return units::laidOn(settings.card.background.value_or(clear), ground);
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
