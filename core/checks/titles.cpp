#include "checks/titles.h"

#include <algorithm>
#include <array>
#include <utility>

#include "checks/phrases.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// By the name of the check.
constexpr std::array<std::pair<std::string_view, std::string_view>, 31> titles{
    {{"alternative", wording::noted("Alternative")},
     {"button-lines", wording::noted("Button lines")},
     {"contrast", wording::noted("Contrast")},
     {"engines", wording::noted("Engines")},
     {"focus", wording::noted("Focus")},
     {"font", wording::noted("Font")},
     {"growth", wording::noted("Growth")},
     {"heading-levels", wording::noted("Heading levels")},
     {"heading-lines", wording::noted("Heading lines")},
     {"holes", wording::noted("Holes")},
     {"inset", wording::noted("Inset")},
     {"label-in-name", wording::noted("Label in name")},
     {"last-word", wording::noted("Last word")},
     {"late-font", wording::noted("Late font")},
     {"link-name", wording::noted("Link name")},
     {"link-purpose", wording::noted("Link purpose")},
     {"measure", wording::noted("Measure")},
     {"out-of-line", wording::noted("Out of line")},
     {"picture", wording::noted("Picture")},
     {"reflow", wording::noted("Reflow")},
     {"small-type", wording::noted("Small type")},
     {"spare-room", wording::noted("Spare room")},
     {"stops", wording::noted("Stops")},
     {"target", wording::noted("Target")},
     {"text-spacing", wording::noted("Text spacing")},
     {"theme-gap", wording::noted("Theme gap")},
     {"theme-obstacle", wording::noted("Theme obstacle")},
     {"tight-fit", wording::noted("Tight fit")},
     {"unit", wording::noted("Unit")},
     {"word", wording::noted("Word")},
     {"zoom", wording::noted("Zoom")}}};

}  // namespace

std::string titleOfCheck(std::string_view name) {
    const auto known = std::ranges::find(titles, name, &std::pair<std::string_view, std::string_view>::first);
    if (known != titles.end()) return wording::say(known->second);
    std::string title(name);
    std::ranges::replace(title, '-', ' ');
    return capitalised(std::move(title));
}

}  // namespace tenter::checks
