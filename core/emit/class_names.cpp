#include "emit/class_names.h"

#include "emit/usage.h"

namespace tenter::emit {

std::string partClass(const project::Project& project, const std::string& part) {
    return project.row().name + "-" + part;
}

std::vector<ClassName> classNames(const project::Project& project, std::size_t variant) {
    std::vector<ClassName> names{{"row", project.row().variants.at(variant).className},
                                 {"card", partClass(project, "card")}};
    const std::vector<PicturePosition> positions = picturePositions(project);
    if (!positions.empty()) names.push_back({"picture", partClass(project, "picture")});
    if (positionsNeedClasses(project))
        for (const PicturePosition& position : positions)
            names.push_back(
                {"picture (" + position.word() + ")", partClass(project, "picture-" + position.word())});
    for (const RoleUse& use : roleUses(project))
        names.push_back({use.role, partClass(project, use.role)});
    return names;
}

std::string classLine(const project::Project& project, std::size_t variant) {
    std::string line;
    for (const ClassName& one : classNames(project, variant))
        line += (line.empty() ? "" : ", ") + one.element + " ." + one.name;
    return line;
}

}  // namespace tenter::emit
