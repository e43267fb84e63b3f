#include "compare/width_order.h"

#include "units/whole_width.h"

#include <cmath>
#include <set>

namespace tenter::desktop::compare {

std::vector<double> widthOrder(double least, double most, const std::vector<double>& breakpoints) {
    const double first = std::ceil(least);
    const double last = std::floor(most);
    std::vector<double> order;
    std::set<double> added;
    const auto add = [&](double width) {
        if (width >= first && width <= last && added.insert(width).second) order.push_back(width);
    };
    add(first);
    add(last);
    for (const double breakpoint : breakpoints) {
        add(std::floor(breakpoint));
        add(units::firstWholeWidthAbove(breakpoint));
    }
    for (double step = 64; step >= 1; step /= 2)
        for (double width = first; width <= last; width += step)
            add(width);
    return order;
}

}  // namespace tenter::desktop::compare
