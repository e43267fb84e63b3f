#include "project/wishes.h"

#include "project/project.h"

namespace tenter::project {

namespace {

template <class T>
void overlayMember(std::optional<T>& under, const std::optional<T>& over) {
    if (over) under = over;
}
void overlayMember(const std::string& /*under*/, const std::string& /*over*/) {}

bool isWrittenInIdeographs(const std::string& language) {
    const std::string primary = language.substr(0, language.find('-'));
    return primary == "zh" || primary == "ja" || primary == "ko";
}

}  // namespace

Wishes overlaid(const Wishes& under, const Wishes& wishes) {
    Wishes result = under;
    overlayMember(result.aim, wishes.aim);
    overlayMember(result.grid, wishes.grid);
    overlayMember(result.reserve, wishes.reserve);
    overlayMember(result.slack, wishes.slack);
    overlayMember(result.narrowSlack, wishes.narrowSlack);
    if (!wishes.without.empty()) result.without = wishes.without;
    for (const RoleWishes& over : wishes.roles) {
        // A wish for all widths is merged into such an entry, unless an entry for a range comes after it.
        const bool everywhere = !over.from && !over.upTo;
        RoleWishes* last = nullptr;
        for (RoleWishes& one : result.roles)
            if (one.role == over.role) last = &one;
        if (!everywhere || last == nullptr || last->from || last->upTo) {
            result.roles.push_back(over);
            continue;
        }
        RoleWishes::members([&](const char*, auto member) { overlayMember(last->*member, over.*member); });
    }
    result.fileKeys = wishes.fileKeys;
    return result;
}

// Common practice, no source, except where one is given.
Wishes defaultWishes(const Project& project) {
    Wishes usual;
    usual.aim = Aim::Nearest;
    usual.grid = units::Length();
    usual.reserve = 0;
    usual.slack = 0.01;
    usual.narrowSlack = 0.02;
    const double share = isWrittenInIdeographs(project.language) ? 0.5 : 1;
    for (const std::string& name : roles(project)) {
        RoleWishes role;
        role.role = name;
        role.leastSize = name == "body" ? 12 : 11;
        if (name == "heading") {
            role.lines = 3;
        } else if (name == "button") {
            role.lines = 1;
        } else {
            role.leastMeasure = 28 * share;
            role.mostMeasure = 80 * share;  // WCAG 2.2 SC 1.4.8: 80 characters, 40 of them ideographs
        }
        role.withColumn = true;
        role.zoom = 3;  // zoom factor that the strictest desktop browser allows, from memory
        usual.roles.push_back(std::move(role));
    }
    return usual;
}

Wishes effectiveWishes(const Project& project) {
    const Wishes usual = defaultWishes(project);
    return project.row().wishes ? overlaid(usual, *project.row().wishes) : usual;
}

}  // namespace tenter::project
