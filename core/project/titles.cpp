#include "project/titles.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string_view>

#include "project/cascade.h"
#include "project/project.h"
#include "units/quantities.h"

namespace tenter::project {

namespace {

bool isColumnCount(std::string_view name) {
    const std::size_t digits = std::min(name.find_first_not_of("0123456789"), name.size());
    if (digits == 0) return false;
    name.remove_prefix(digits);
    return name.empty() || name == " column" || name == " columns";
}

}  // namespace

std::string columnsLabel(int columns) {
    return std::to_string(columns) + (columns == 1 ? " column" : " columns");
}

std::string bandTitle(const Project& project, const Variant& variant, std::size_t band) {
    // A breakpoint belongs to the band below it.
    const double after = band == 0 ? 0 : *variant.bands[band - 1].upTo;
    const double first = after < project.leastWidth ? project.leastWidth : std::floor(after) + 1;
    const double last = std::min(variant.bands[band].upTo.value_or(project.mostWidth), project.mostWidth);
    const std::string widths = last < project.leastWidth ? "up to " + units::px(last)
                               : first > last            ? "from " + units::px(first)
                                                         : units::pxRange(first, last);
    return widths + " (" + columnsLabel(resolve(project, variant, band).row.columns.value_or(1)) + ")";
}

std::string columnsOf(const Project& project, const Variant& variant) {
    std::set<int> counts;
    for (std::size_t band = 0; band < variant.bands.size(); ++band)
        counts.insert(resolve(project, variant, band).row.columns.value_or(1));
    if (counts.empty()) return columnsLabel(1);
    const std::string most = columnsLabel(*counts.rbegin());
    return counts.size() == 1 ? most : std::to_string(*counts.begin()) + " to " + most;
}

std::string titleOf(const Variant& variant) {
    return variant.name.empty() || isColumnCount(variant.name) ? variant.className : variant.name;
}

std::string quotedTitle(const Project& project, std::size_t variant) {
    const Variant& one = project.row().variants[variant];
    const std::string title = titleOf(one);
    const auto alike = std::ranges::count(project.row().variants, title, titleOf);
    return "“" + title + "”" + (alike > 1 ? ", class " + one.className : std::string());
}

}  // namespace tenter::project
