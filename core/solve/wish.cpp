#include "solve/wish.h"

#include <algorithm>
#include <utility>

#include "checks/phrases.h"
#include "project/role_wishes.h"
#include "units/quantities.h"

namespace tenter::solve {

namespace {

using project::RoleWishes;

class WishList {
public:
    WishList(const project::Project& project, const project::Wishes& projectWishes)
        : project_(project), projectWishes_(projectWishes) {}

    void addRole(const std::string& role) {
        add(role, WishKind::Lines, &RoleWishes::lines);
        add(role, WishKind::LeastMeasure, &RoleWishes::leastMeasure);
        add(role, WishKind::MostMeasure, &RoleWishes::mostMeasure);
        add(role, WishKind::LeastSize, &RoleWishes::leastSize);
        add(role, WishKind::MostSize, &RoleWishes::mostSize);
        add(role, WishKind::Growth, &RoleWishes::growth);
        add(role, WishKind::Zoom, &RoleWishes::zoom);
        addIf(role, WishKind::Locked, &RoleWishes::locked, true);
        addIf(role, WishKind::WithColumn, &RoleWishes::withColumn, true);
        addIf(role, WishKind::SameAtBreakpoints, &RoleWishes::breakpoints, project::AtBreakpoints::Same);
        addIf(role, WishKind::ProportionalAtBreakpoints, &RoleWishes::breakpoints,
              project::AtBreakpoints::Proportional);
        if (project_.variants.size() > 1)
            addIf(role, WishKind::SameInVariants, &RoleWishes::sameInVariants, true);
        addRatio(role, WishKind::Ratio, &RoleWishes::ratio);
        addRatio(role, WishKind::LeastRatio, &RoleWishes::leastRatio);
        wishes_.push_back({WishKind::Words, role, {}, 0, wholeRange()});
    }

    std::vector<Wish> take() { return std::move(wishes_); }

private:
    [[nodiscard]] sweep::Interval wholeRange() const { return {project_.leastWidth, project_.mostWidth}; }

    void put(WishKind kind, const std::string& role, const std::string& other, double value, double from,
             double to) {
        Wish wish{kind, role, other, value, wholeRange()};
        wish.everywhere = from <= wish.widths.from && to >= wish.widths.to;
        wish.widths = {std::max(from, wish.widths.from), std::min(to, wish.widths.to)};
        if (wish.widths.from < wish.widths.to) wishes_.push_back(std::move(wish));
    }

    template <class T>
    void add(const std::string& role, WishKind kind, std::optional<T> RoleWishes::*member) {
        for (const auto& held : project::wishRanges(projectWishes_, role, member))
            put(kind, role, {}, held.value, held.from, held.to);
    }
    template <class T>
    void addIf(const std::string& role, WishKind kind, std::optional<T> RoleWishes::*member, T value) {
        for (const auto& held : project::wishRanges(projectWishes_, role, member))
            if (held.value == value) put(kind, role, {}, 0, held.from, held.to);
    }
    void addRatio(const std::string& role, WishKind kind, std::optional<double> RoleWishes::*member) {
        for (const auto& held : project::wishRanges(projectWishes_, role, member))
            for (const auto& other : project::wishRanges(projectWishes_, role, &RoleWishes::ratioTo))
                put(kind, role, other.value, held.value, std::max(held.from, other.from),
                    std::min(held.to, other.to));
    }

    const project::Project& project_;
    const project::Wishes& projectWishes_;
    std::vector<Wish> wishes_;
};

/// The word between role and condition in `describe`, with a space on both sides.
std::string joint(const Wish& wish) {
    switch (wish.kind) {
        case WishKind::Lines:
            return wish.value == 1 ? " on " : " in ";
        case WishKind::LeastMeasure:
        case WishKind::MostMeasure:
        case WishKind::Growth:
        case WishKind::WithColumn:
        case WishKind::SameAtBreakpoints:
        case WishKind::ProportionalAtBreakpoints:
        case WishKind::SameInVariants:
        case WishKind::Words:
            return " with ";
        default:
            return " ";
    }
}

}  // namespace

std::vector<bool> ignoredCards(const project::Project& project, const project::Wishes& projectWishes) {
    std::vector<bool> ignored(project.cards.size(), false);
    for (const int card : projectWishes.without)
        if (static_cast<std::size_t>(card) < ignored.size()) ignored[static_cast<std::size_t>(card)] = true;
    return ignored;
}

std::vector<Wish> singleWishes(const project::Project& project, const project::Wishes& projectWishes) {
    WishList list(project, projectWishes);
    const std::vector<bool> ignored = ignoredCards(project, projectWishes);
    std::vector<std::string> used;
    for (std::size_t card = 0; card < project.cards.size(); ++card) {
        if (ignored[card]) continue;
        for (const project::Part& part : project.cards[card].parts) {
            const auto* text = std::get_if<project::TextPart>(&part);
            if (text == nullptr || std::ranges::find(used, text->role) != used.end()) continue;
            used.push_back(text->role);
            list.addRole(text->role);
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
    const double value = wish.value;
    const project::RoleWishes nothing = project::unlimitedWishes();
    const auto put = [&](auto member) { (entry.*member) = removed ? nothing.*member : std::optional(value); };
    switch (wish.kind) {
        case WishKind::Lines:
            entry.lines = removed ? nothing.lines : static_cast<int>(value);
            break;
        case WishKind::LeastMeasure:
            put(&RoleWishes::leastMeasure);
            break;
        case WishKind::MostMeasure:
            put(&RoleWishes::mostMeasure);
            break;
        case WishKind::LeastSize:
            put(&RoleWishes::leastSize);
            break;
        case WishKind::MostSize:
            put(&RoleWishes::mostSize);
            break;
        case WishKind::Locked:
            entry.locked = !removed;
            break;
        case WishKind::Ratio:
            entry.ratioTo = wish.other;
            entry.ratio = value;
            break;
        case WishKind::LeastRatio:
            entry.ratioTo = wish.other;
            put(&RoleWishes::leastRatio);
            break;
        case WishKind::Growth:
            put(&RoleWishes::growth);
            break;
        case WishKind::WithColumn:
            entry.withColumn = !removed;
            break;
        case WishKind::Zoom:
            put(&RoleWishes::zoom);
            break;
        case WishKind::SameAtBreakpoints:
            entry.breakpoints = removed ? nothing.breakpoints : project::AtBreakpoints::Same;
            break;
        case WishKind::ProportionalAtBreakpoints:
            entry.breakpoints = removed ? nothing.breakpoints : project::AtBreakpoints::Proportional;
            break;
        case WishKind::SameInVariants:
            entry.sameInVariants = !removed;
            break;
        case WishKind::Words:
            break;
    }
    return entry;
}

std::string condition(const Wish& wish) {
    const std::string value = units::figure(wish.value);
    switch (wish.kind) {
        case WishKind::Lines:
            return wish.value == 1 ? "one line" : "at most " + value + " lines";
        case WishKind::LeastMeasure:
            return "at least " + value + " characters per line";
        case WishKind::MostMeasure:
            return "at most " + value + " characters per line";
        case WishKind::LeastSize:
            return "at least " + units::px(wish.value);
        case WishKind::MostSize:
            return "at most " + units::px(wish.value);
        case WishKind::Locked:
            return "locked at its sizes";
        case WishKind::Ratio:
            return value + " times the size of " + wish.other;
        case WishKind::LeastRatio:
            return "at least " + value + " times the size of " + wish.other;
        case WishKind::Growth:
            return "growth of at most " + units::px(wish.value) + " per " + units::px(100) + " of width";
        case WishKind::WithColumn:
            return "no growth where its column narrows";
        case WishKind::Zoom:
            return "twice as large at " + units::percent(wish.value) + " browser zoom";
        case WishKind::SameAtBreakpoints:
            return "the same size on both sides of a breakpoint";
        case WishKind::ProportionalAtBreakpoints:
            return "the same share of its column on both sides of a breakpoint";
        case WishKind::SameInVariants:
            return "the same size in every variant";
        case WishKind::Words:
            return "no word wider than its box";
    }
    return {};
}

std::string describe(const Wish& wish) {
    std::string text = wish.role + joint(wish) + condition(wish);
    if (!wish.everywhere) text += " " + units::fromPxToPx(wish.widths.from, wish.widths.to);
    return text;
}

std::string roleLabel(const std::string& role) {
    return checks::capitalised(role);
}

}  // namespace tenter::solve
