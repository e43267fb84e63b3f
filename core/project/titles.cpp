#include "project/titles.h"

#include <algorithm>

#include "project/project.h"

namespace tenter::project {

std::string columnsLabel(int columns) {
    return std::to_string(columns) + (columns == 1 ? " column" : " columns");
}

std::string titleOf(const Variant& variant) {
    if (variant.name.empty()) return variant.className;
    const bool bare =
        variant.name.size() < 3 && variant.name.find_first_not_of("0123456789") == std::string::npos;
    return bare ? columnsLabel(std::stoi(variant.name)) : variant.name;
}

std::string quotedTitle(const Project& project, std::size_t variant) {
    const Variant& one = project.variants[variant];
    const std::string title = titleOf(one);
    const auto alike = std::ranges::count(project.variants, title, titleOf);
    return "“" + title + "”" + (alike > 1 ? ", class " + one.className : std::string());
}

}  // namespace tenter::project
