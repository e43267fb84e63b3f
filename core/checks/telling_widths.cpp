#include "checks/telling_widths.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "project/cascade.h"

namespace tenter::checks {

namespace {

std::string columnsOf(int columns) {
    return columns == 1 ? "1 column" : std::to_string(columns) + " columns";
}

/// `tight-fit`, as people read it.
std::string spaced(std::string name) {
    std::ranges::replace(name, '-', ' ');
    return name;
}

}  // namespace

std::vector<TellingWidth> tellingWidths(const project::Project& project, std::size_t index,
                                        const std::vector<Finding>& findings) {
    std::map<double, std::string> reasons;
    const auto add = [&](double width, const std::string& why) {
        if (width < project.leastWidth || width > project.mostWidth) return;
        std::string& said = reasons[width];
        said += (said.empty() ? "" : ", ") + why;
    };
    add(project.leastWidth, "narrowest page");
    const project::Variant& variant = project.variants.at(index);
    for (std::size_t band = 0; band + 1 < variant.bands.size(); ++band) {
        const auto columns = [&](std::size_t at) {
            return project::resolve(project, variant, at).row.columns.value_or(1);
        };
        const double last = *variant.bands[band].upTo;
        if (last >= project.mostWidth) break;
        const bool differ = columns(band) != columns(band + 1);
        add(last, differ ? "last width of " + columnsOf(columns(band)) : "last width below a breakpoint");
        add(std::floor(last) + 1,
            differ ? "first width of " + columnsOf(columns(band + 1)) : "first width above a breakpoint");
    }
    add(project.mostWidth, "widest page");
    if (!findings.empty()) add(findings.front().at, "worst finding: " + spaced(findings.front().check));
    std::vector<TellingWidth> widths;
    widths.reserve(reasons.size());
    for (auto& [width, why] : reasons)
        widths.push_back({width, std::move(why)});
    return widths;
}

}  // namespace tenter::checks
