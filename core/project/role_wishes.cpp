#include "project/role_wishes.h"

#include "project/project.h"

namespace tenter::project {

namespace {

constexpr double beyondAll = 10000;  // CSS px, above the range of every project

bool isFor(const RoleWishes& entry, const std::string& role, const WishWidths& widths) {
    return entry.role == role && entry.from == widths.from && entry.upTo == widths.upTo;
}

template <class T>
void replaceMember(std::optional<T>& under, const std::optional<T>& over) {
    if (over) under = over;
}
void replaceMember(const std::string& /*under*/, const std::string& /*over*/) {}

}  // namespace

RoleWishes wishesFor(const Project& project, const std::string& role, const WishWidths& widths) {
    const bool everywhere = !widths.from && !widths.upTo;
    const double middle = (widths.from.value_or(0) + widths.upTo.value_or(beyondAll)) / 2;
    RoleWishes wished;
    for (const RoleWishes& entry : effectiveWishes(project).roles) {
        const bool holds = everywhere
                               ? !entry.from && !entry.upTo
                               : middle > entry.from.value_or(0) && middle <= entry.upTo.value_or(beyondAll);
        if (entry.role != role || !holds) continue;
        RoleWishes::members([&](const char*, auto member) { replaceMember(wished.*member, entry.*member); });
    }
    wished.role = role;
    wished.from = widths.from;
    wished.upTo = widths.upTo;
    return wished;
}

const RoleWishes* ownWishesFor(const Project& project, const std::string& role, const WishWidths& widths) {
    if (!project.row().wishes) return nullptr;
    // The last of several entries wins.
    const RoleWishes* said = nullptr;
    for (const RoleWishes& entry : project.row().wishes->roles)
        if (isFor(entry, role, widths)) said = &entry;
    return said;
}

RoleWishes& ownWishesOrNew(Project& project, const std::string& role, const WishWidths& widths) {
    if (!project.row().wishes) project.row().wishes.emplace();
    std::vector<RoleWishes>& all = project.row().wishes->roles;
    RoleWishes* last = nullptr;
    for (RoleWishes& one : all)
        if (isFor(one, role, widths)) last = &one;
    if (last != nullptr) return *last;
    RoleWishes entry;
    entry.role = role;
    entry.from = widths.from;
    entry.upTo = widths.upTo;
    const bool everywhere = !widths.from && !widths.upTo;
    return *all.insert(everywhere ? all.begin() : all.end(), entry);
}

void dropEmptyWishes(Project& project) {
    if (!project.row().wishes) return;
    std::erase_if(project.row().wishes->roles, [](const RoleWishes& entry) {
        RoleWishes empty;
        empty.role = entry.role;
        empty.from = entry.from;
        empty.upTo = entry.upTo;
        return entry == empty;
    });
    if (*project.row().wishes == Wishes()) project.row().wishes.reset();
}

RoleWishes unlimitedWishes() {
    RoleWishes nothing;
    nothing.lines = 50;
    nothing.leastMeasure = 1;
    nothing.mostMeasure = 1000;
    nothing.leastSize = 1;
    nothing.mostSize = 400;
    nothing.locked = false;
    nothing.leastRatio = 0.1;
    nothing.growth = 100;
    nothing.withColumn = false;
    nothing.zoom = 20;
    nothing.breakpoints = AtBreakpoints::Free;
    nothing.sameInVariants = false;
    return nothing;
}

}  // namespace tenter::project
