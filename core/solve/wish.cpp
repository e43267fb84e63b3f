#include "solve/wish.h"

#include <algorithm>
#include <utility>

#include "checks/phrases.h"
#include "project/titles.h"
#include "solve/constraint.h"
#include "solve/registry.h"
#include "solve/wish_list.h"
#include "units/quantities.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::solve {

void WishList::add(const Constraint& kind, const std::string& role, const std::string& other, double value,
                   double from, double to) {
    const sweep::Interval whole{project.leastWidth, project.mostWidth};
    Wish wish{&kind, role, other, value, whole};
    wish.everywhere = from <= whole.from && to >= whole.to;
    wish.firstWidth = from <= whole.from ? whole.from : units::firstWholeWidthAbove(from);
    wish.widths = {std::max(from, whole.from), std::min(to, whole.to)};
    if (wish.widths.from < wish.widths.to) wishes_.push_back(std::move(wish));
}

void WishList::add(const Constraint& kind, const std::string& role) {
    wishes_.push_back({&kind, role, {}, 0, {project.leastWidth, project.mostWidth}});
}

std::vector<bool> ignoredCards(const project::Project& project, const project::Wishes& projectWishes) {
    std::vector<bool> ignored(project.row().cards.size(), false);
    for (const int card : projectWishes.without)
        if (static_cast<std::size_t>(card) < ignored.size()) ignored[static_cast<std::size_t>(card)] = true;
    return ignored;
}

std::vector<Wish> singleWishes(const project::Project& project, const project::Wishes& projectWishes) {
    WishList list(project, projectWishes);
    const std::vector<bool> ignored = ignoredCards(project, projectWishes);
    std::vector<std::string> used;
    for (std::size_t card = 0; card < project.row().cards.size(); ++card) {
        if (ignored[card]) continue;
        for (const project::Part& part : project.row().cards[card].parts) {
            const auto* text = std::get_if<project::TextPart>(&part);
            if (text == nullptr || std::ranges::find(used, text->role) != used.end()) continue;
            used.push_back(text->role);
            for (const Constraint* kind : registry())
                kind->addWishes(list, text->role);
        }
    }
    // A ratio to a role that no card uses has no effect.
    std::vector<Wish> wishes = list.take();
    std::erase_if(wishes, [&](const Wish& wish) {
        return !wish.other.empty() && std::ranges::find(used, wish.other) == used.end();
    });
    return wishes;
}

project::RoleWishes toRoleWishes(const Wish& wish, bool removed) {
    project::RoleWishes entry;
    entry.role = wish.role;
    if (!wish.everywhere) {
        entry.from = wish.widths.from;
        entry.upTo = wish.widths.to;
    }
    wish.kind->write(entry, wish, removed);
    return entry;
}

std::string condition(const Wish& wish) {
    return wish.kind->condition(wish);
}

std::string describe(const Wish& wish) {
    return atItsWidths(wish.kind->ofRole(wish, project::roleName(wish.role)), wish);
}

std::string atItsWidths(const std::string& phrase, const Wish& wish) {
    if (wish.everywhere) return phrase;
    //: A wish, and a range of widths
    return wording::say("%1 at %2", {phrase, units::pxRange(wish.firstWidth, wish.widths.to)});
}

std::string roleLabel(const std::string& role) {
    return checks::capitalised(project::roleName(role));
}

}  // namespace tenter::solve
