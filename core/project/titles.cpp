#include "project/titles.h"

#include <algorithm>
#include <cmath>

#include "project/cascade.h"
#include "project/project.h"
#include "units/quantities.h"

namespace tenter::project {

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

std::string titleOf(const Variant& variant) {
    if (variant.name.empty()) return variant.className;
    const bool bare =
        variant.name.size() < 3 && variant.name.find_first_not_of("0123456789") == std::string::npos;
    return bare ? columnsLabel(std::stoi(variant.name)) : variant.name;
}

std::string quotedTitle(const Project& project, std::size_t variant) {
    const Variant& one = project.row().variants[variant];
    const std::string title = titleOf(one);
    const auto alike = std::ranges::count(project.row().variants, title, titleOf);
    return "“" + title + "”" + (alike > 1 ? ", class " + one.className : std::string());
}

}  // namespace tenter::project
