#include "css/breakpoints.h"

#include <algorithm>

#include "css/media.h"

namespace tenter::css {

std::vector<Breakpoint> breakpointsOf(const Sheet& sheet) {
    std::vector<Breakpoint> found;
    for (const Condition& condition : sheet.conditions) {
        if (condition.kind != ConditionKind::Media) continue;
        for (const double width : mediaWidths(condition.text))
            if (std::ranges::find(found, width, &Breakpoint::width) == found.end())
                found.push_back({width, condition.text});
    }
    std::ranges::sort(found, {}, &Breakpoint::width);
    return found;
}

}  // namespace tenter::css
