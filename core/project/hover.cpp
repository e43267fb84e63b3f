#include "project/hover.h"

namespace tenter::project {

namespace {

Colour darker(const Colour& colour) {
    const auto shade = [](std::uint8_t channel) { return static_cast<std::uint8_t>(channel * 4 / 5); };
    return {shade(colour.red), shade(colour.green), shade(colour.blue), colour.alpha};
}

}  // namespace

void fillHover(TextStyle& style) {
    if (!style.hover.colour) style.hover.colour = style.colour;
    if (!style.hover.background && style.background) style.hover.background = darker(*style.background);
    if (!style.hover.borderColour) style.hover.borderColour = style.border.colour;
}

}  // namespace tenter::project
