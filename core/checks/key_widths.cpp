#include "checks/key_widths.h"

#include <algorithm>
#include <map>

#include "checks/titles.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::checks {

std::vector<KeyWidth> keyWidths(const project::Project& project, std::size_t index,
                                const std::vector<Finding>& findings) {
    std::map<double, std::string> reasons;
    const auto add = [&](double width, const std::string& why) {
        if (width < project.leastWidth || width > project.mostWidth) return;
        std::string& all = reasons[width];
        all = all.empty() ? why : wording::say("%1, %2", {all, why});
    };
    add(project.leastWidth, wording::say("narrowest viewport"));
    const project::Variant& variant = project.row().variants.at(index);
    for (std::size_t band = 0; band + 1 < variant.bands.size(); ++band) {
        const auto columns = [&](std::size_t at) {
            return project::resolve(project, variant, at).row.columns.value_or(1);
        };
        const double last = *variant.bands[band].upTo;
        if (last >= project.mostWidth) break;
        const bool differ = columns(band) != columns(band + 1);
        add(last, differ ? wording::say("last width of %1", {project::columnsLabel(columns(band))})
                         : wording::say("last width of a band"));
        add(units::firstWholeWidthAbove(last),
            differ ? wording::say("first width of %1", {project::columnsLabel(columns(band + 1))})
                   : wording::say("first width of a band"));
    }
    for (const project::PageRange& range : project.page.ranges) {
        if (!range.upTo || *range.upTo >= project.mostWidth) break;
        add(*range.upTo, wording::say("last width of a page range"));
        add(units::firstWholeWidthAbove(*range.upTo), wording::say("first width of a page range"));
    }
    add(project.mostWidth, wording::say("widest viewport"));
    if (!findings.empty())
        add(findings.front().at,
            wording::say("width of the worst finding (%1)", {titleOfCheck(findings.front().check)}));
    std::vector<KeyWidth> widths;
    widths.reserve(reasons.size());
    for (auto& [width, why] : reasons)
        widths.push_back({width, std::move(why)});
    return widths;
}

}  // namespace tenter::checks
