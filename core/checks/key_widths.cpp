#include "checks/key_widths.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "project/cascade.h"
#include "project/titles.h"

namespace tenter::checks {

std::vector<KeyWidth> keyWidths(const project::Project& project, std::size_t index,
                                const std::vector<Finding>& findings) {
    std::map<double, std::string> reasons;
    const auto add = [&](double width, const std::string& why) {
        if (width < project.leastWidth || width > project.mostWidth) return;
        std::string& all = reasons[width];
        all += (all.empty() ? "" : ", ") + why;
    };
    add(project.leastWidth, "narrowest viewport");
    const project::Variant& variant = project.row().variants.at(index);
    for (std::size_t band = 0; band + 1 < variant.bands.size(); ++band) {
        const auto columns = [&](std::size_t at) {
            return project::resolve(project, variant, at).row.columns.value_or(1);
        };
        const double last = *variant.bands[band].upTo;
        if (last >= project.mostWidth) break;
        const bool differ = columns(band) != columns(band + 1);
        add(last, differ ? "last width of " + project::columnsLabel(columns(band)) : "last width of a band");
        add(std::floor(last) + 1,
            differ ? "first width of " + project::columnsLabel(columns(band + 1)) : "first width of a band");
    }
    for (const project::PageRange& range : project.page.ranges) {
        if (!range.upTo || *range.upTo >= project.mostWidth) break;
        add(*range.upTo, "last width of a page range");
        add(std::floor(*range.upTo) + 1, "first width of a page range");
    }
    add(project.mostWidth, "widest viewport");
    if (!findings.empty())
        add(findings.front().at, "width of the worst finding (" + findings.front().check + ")");
    std::vector<KeyWidth> widths;
    widths.reserve(reasons.size());
    for (auto& [width, why] : reasons)
        widths.push_back({width, std::move(why)});
    return widths;
}

}  // namespace tenter::checks
