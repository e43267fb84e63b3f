#include "project/titles.h"

#include <algorithm>
#include <set>
#include <string_view>

#include "project/cascade.h"
#include "project/project.h"
#include "units/quantities.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::project {

namespace {

bool isColumnCount(std::string_view name) {
    const std::size_t digits = std::min(name.find_first_not_of("0123456789"), name.size());
    if (digits == 0) return false;
    name.remove_prefix(digits);
    return name.empty() || name == " column" || name == " columns";
}

}  // namespace

std::string roleName(const std::string& role) {
    if (role == "heading") return wording::say("heading");
    if (role == "body") return wording::say("body");
    if (role == "button") return wording::say("button");
    if (role == "picture") return wording::say("picture");
    if (role == "card") return wording::say("card");
    if (role == "row") return wording::say("row");
    return role;
}

std::string columnsLabel(int columns) {
    return wording::sayCount("%n column", "%n columns", static_cast<std::size_t>(columns));
}

std::string bandTitle(const Project& project, const Variant& variant, std::size_t band) {
    // A breakpoint belongs to the band below it.
    const double after = band == 0 ? 0 : *variant.bands[band - 1].upTo;
    const double first = after < project.leastWidth ? project.leastWidth : units::firstWholeWidthAbove(after);
    const double last = std::min(variant.bands[band].upTo.value_or(project.mostWidth), project.mostWidth);
    const std::string columns = columnsLabel(resolve(project, variant, band).row.columns.value_or(1));
    //: The viewport widths of a band, and its columns
    if (last < project.leastWidth) return wording::say("up to %1 (%2)", {units::px(last), columns});
    if (first > last) return wording::say("from %1 (%2)", {units::px(first), columns});
    return wording::say("%1 (%2)", {units::pxRange(first, last), columns});
}

std::string columnsOf(const Project& project, const Variant& variant) {
    std::set<int> counts;
    for (std::size_t band = 0; band < variant.bands.size(); ++band)
        counts.insert(resolve(project, variant, band).row.columns.value_or(1));
    if (counts.empty()) return columnsLabel(1);
    std::string most = columnsLabel(*counts.rbegin());
    if (counts.size() == 1) return most;
    //: Columns: 1 to 3 columns
    return wording::say("%1 to %2", {std::to_string(*counts.begin()), most});
}

std::string titleOf(const Variant& variant) {
    return variant.name.empty() || isColumnCount(variant.name) ? variant.className : variant.name;
}

std::string quotedTitle(const Project& project, std::size_t variant) {
    const Variant& one = project.row().variants[variant];
    const std::string title = titleOf(one);
    const auto alike = std::ranges::count(project.row().variants, title, titleOf);
    return alike > 1 ? wording::say("“%1”, class %2", {title, one.className}) : wording::say("“%1”", {title});
}

}  // namespace tenter::project
