// Any bytes as an audience file: widths rise, visits and shares are numbers.
#include <cmath>

#include "checks/audience.h"
#include "fuzz.h"

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    using namespace tenter;
    project::Problems problems;
    const auto audience = checks::readAudience(fuzz::textOf(data, size), "input", problems);
    fuzz::requireReadable(problems);
    if (!audience) {
        fuzz::require(!problems.empty(), "there is an audience, or there are problems");
        return;
    }
    fuzz::require(!audience->empty(), "an audience has a width");
    double last = 0;
    for (const auto& [width, visits] : audience->visits) {
        fuzz::require(std::isfinite(width) && width > last, "widths rise");
        fuzz::require(std::isfinite(visits) && visits >= 0, "visits are a number");
        last = width;
    }
    const double share = audience->share({{320, 700}, {900, 1e9}}, 320);
    fuzz::require(share >= 0 && share <= 1 + 1e-9, "a share is between 0 and 1");
}
