#include "project/wishes.h"

#include "project/project.h"

namespace tenter::project {

namespace {

template <class T>
void layMember(std::optional<T>& under, const std::optional<T>& over) {
    if (over) under = over;
}
void layMember(const std::string& /*under*/, const std::string& /*over*/) {}

bool isWrittenInIdeographs(const std::string& language) {
    const std::string primary = language.substr(0, language.find('-'));
    return primary == "zh" || primary == "ja" || primary == "ko";
}

}  // namespace

Wishes laidOn(const Wishes& under, const Wishes& wishes) {
    Wishes result = under;
    layMember(result.aim, wishes.aim);
    layMember(result.grid, wishes.grid);
    layMember(result.reserve, wishes.reserve);
    layMember(result.slack, wishes.slack);
    layMember(result.narrowSlack, wishes.narrowSlack);
    if (!wishes.without.empty()) result.without = wishes.without;
    for (const RoleWishes& over : wishes.roles) {
        // What holds at all widths may stand in one entry, unless others for some widths came before.
        const bool everywhere = !over.from && !over.upTo;
        RoleWishes* last = nullptr;
        for (RoleWishes& one : result.roles)
            if (one.role == over.role) last = &one;
        if (!everywhere || last == nullptr || last->from || last->upTo) {
            result.roles.push_back(over);
            continue;
        }
        RoleWishes::members([&](const char*, auto member) { layMember(last->*member, over.*member); });
    }
    result.remembered = wishes.remembered;
    return result;
}

// Common practice, no source, unless said otherwise.
Wishes usualWishes(const Project& project) {
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
        role.zoom = 3;  // what one large desktop browser allows, from memory
        usual.roles.push_back(std::move(role));
    }
    return usual;
}

Wishes wishesOf(const Project& project) {
    const Wishes usual = usualWishes(project);
    return project.wishes ? laidOn(usual, *project.wishes) : usual;
}

}  // namespace tenter::project
