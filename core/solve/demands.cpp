#include "solve/demands.h"

#include <algorithm>

#include "checks/phrases.h"
#include "project/wishing.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

using project::RoleWishes;

class DemandList {
public:
    DemandList(const project::Project& project, const project::Wishes& wishes)
        : project_(project), wishes_(wishes) {}

    void addRole(const std::string& role) {
        add(role, Kind::Lines, &RoleWishes::lines);
        add(role, Kind::LeastMeasure, &RoleWishes::leastMeasure);
        add(role, Kind::MostMeasure, &RoleWishes::mostMeasure);
        add(role, Kind::LeastSize, &RoleWishes::leastSize);
        add(role, Kind::MostSize, &RoleWishes::mostSize);
        add(role, Kind::Growth, &RoleWishes::growth);
        add(role, Kind::Zoom, &RoleWishes::zoom);
        addIf(role, Kind::Locked, &RoleWishes::locked, true);
        addIf(role, Kind::WithColumn, &RoleWishes::withColumn, true);
        addIf(role, Kind::SameAtBreakpoints, &RoleWishes::breakpoints, project::AtBreakpoints::Same);
        addIf(role, Kind::ProportionalAtBreakpoints, &RoleWishes::breakpoints,
              project::AtBreakpoints::Proportional);
        if (project_.variants.size() > 1)
            addIf(role, Kind::SameInVariants, &RoleWishes::sameInVariants, true);
        addRatio(role, Kind::Ratio, &RoleWishes::ratio);
        addRatio(role, Kind::LeastRatio, &RoleWishes::leastRatio);
        demands_.push_back({Kind::Words, role, {}, 0, whole()});
    }

    std::vector<Demand> take() { return std::move(demands_); }

private:
    [[nodiscard]] sweep::Interval whole() const { return {project_.leastWidth, project_.mostWidth}; }

    void put(Kind kind, const std::string& role, const std::string& other, double value, double from,
             double to) {
        Demand demand{kind, role, other, value, whole()};
        demand.everywhere = from <= demand.widths.from && to >= demand.widths.to;
        demand.widths = {std::max(from, demand.widths.from), std::min(to, demand.widths.to)};
        if (demand.widths.from < demand.widths.to) demands_.push_back(std::move(demand));
    }

    template <class T>
    void add(const std::string& role, Kind kind, std::optional<T> RoleWishes::*member) {
        for (const auto& wish : project::held(wishes_, role, member))
            put(kind, role, {}, wish.value, wish.from, wish.to);
    }
    template <class T>
    void addIf(const std::string& role, Kind kind, std::optional<T> RoleWishes::*member, T value) {
        for (const auto& wish : project::held(wishes_, role, member))
            if (wish.value == value) put(kind, role, {}, 0, wish.from, wish.to);
    }
    void addRatio(const std::string& role, Kind kind, std::optional<double> RoleWishes::*member) {
        for (const auto& wish : project::held(wishes_, role, member))
            for (const auto& other : project::held(wishes_, role, &RoleWishes::ratioTo))
                put(kind, role, other.value, wish.value, std::max(wish.from, other.from),
                    std::min(wish.to, other.to));
    }

    const project::Project& project_;
    const project::Wishes& wishes_;
    std::vector<Demand> demands_;
};

std::string wished(const Demand& demand) {
    std::string type = checks::typeOf(demand.role);
    const std::string value = units::number(demand.value, 2);
    switch (demand.kind) {
        case Kind::Lines:
            return type + (demand.value == 1 ? " on one line" : " in at most " + value + " lines");
        case Kind::LeastMeasure:
            return type + " of at least " + value + " characters to a line";
        case Kind::MostMeasure:
            return type + " of at most " + value + " characters to a line";
        case Kind::LeastSize:
            return type + " no smaller than " + checks::inPx(value);
        case Kind::MostSize:
            return type + " no larger than " + checks::inPx(value);
        case Kind::Locked:
            return type + " as it is";
        case Kind::Ratio:
            return type + " " + value + " times the size of " + checks::typeOf(demand.other);
        case Kind::LeastRatio:
            return type + " at least " + value + " times the size of " + checks::typeOf(demand.other);
        case Kind::Growth:
            return type + " growing by at most " + checks::inPx(value) + " for " + checks::inPx("100") +
                   " of width";
        case Kind::WithColumn:
            return type + " no larger in a narrower column";
        case Kind::Zoom:
            return type + " doubled by zooming to " + checks::percent(demand.value);
        case Kind::SameAtBreakpoints:
            return type + " of the same size on both sides of a breakpoint";
        case Kind::ProportionalAtBreakpoints:
            return type + " in the same proportion to its column on both sides of a breakpoint";
        case Kind::SameInVariants:
            return type + " of the same size in every variant";
        case Kind::Words:
            return type + " whose words fit their boxes";
    }
    return type;
}

}  // namespace

std::vector<bool> withoutOf(const project::Project& project, const project::Wishes& wishes) {
    std::vector<bool> without(project.cards.size(), false);
    for (const int card : wishes.without)
        if (static_cast<std::size_t>(card) < without.size()) without[static_cast<std::size_t>(card)] = true;
    return without;
}

std::vector<Demand> demandsOf(const project::Project& project, const project::Wishes& wishes) {
    DemandList list(project, wishes);
    const std::vector<bool> without = withoutOf(project, wishes);
    std::vector<std::string> seen;
    for (std::size_t card = 0; card < project.cards.size(); ++card) {
        if (without[card]) continue;
        for (const project::Part& part : project.cards[card].parts) {
            const auto* text = std::get_if<project::TextPart>(&part);
            if (text == nullptr || std::ranges::find(seen, text->role) != seen.end()) continue;
            seen.push_back(text->role);
            list.addRole(text->role);
        }
    }
    // A ratio to a role that no card uses asks nothing.
    std::vector<Demand> demands = list.take();
    std::erase_if(demands, [&](const Demand& demand) {
        return !demand.other.empty() && std::ranges::find(seen, demand.other) == seen.end();
    });
    return demands;
}

project::RoleWishes asWish(const Demand& demand, bool out) {
    project::RoleWishes wish;
    wish.role = demand.role;
    if (!demand.everywhere) {
        wish.from = demand.widths.from;
        wish.upTo = demand.widths.to;
    }
    const double value = demand.value;
    const project::RoleWishes nothing = project::askingNothing();
    const auto put = [&](auto member) { (wish.*member) = out ? nothing.*member : std::optional(value); };
    switch (demand.kind) {
        case Kind::Lines:
            wish.lines = out ? nothing.lines : static_cast<int>(value);
            break;
        case Kind::LeastMeasure:
            put(&RoleWishes::leastMeasure);
            break;
        case Kind::MostMeasure:
            put(&RoleWishes::mostMeasure);
            break;
        case Kind::LeastSize:
            put(&RoleWishes::leastSize);
            break;
        case Kind::MostSize:
            put(&RoleWishes::mostSize);
            break;
        case Kind::Locked:
            wish.locked = !out;
            break;
        case Kind::Ratio:
            wish.ratioTo = demand.other;
            wish.ratio = value;
            break;
        case Kind::LeastRatio:
            wish.ratioTo = demand.other;
            put(&RoleWishes::leastRatio);
            break;
        case Kind::Growth:
            put(&RoleWishes::growth);
            break;
        case Kind::WithColumn:
            wish.withColumn = !out;
            break;
        case Kind::Zoom:
            put(&RoleWishes::zoom);
            break;
        case Kind::SameAtBreakpoints:
            wish.breakpoints = out ? nothing.breakpoints : project::AtBreakpoints::Same;
            break;
        case Kind::ProportionalAtBreakpoints:
            wish.breakpoints = out ? nothing.breakpoints : project::AtBreakpoints::Proportional;
            break;
        case Kind::SameInVariants:
            wish.sameInVariants = !out;
            break;
        case Kind::Words:
            break;
    }
    return wish;
}

std::string said(const Demand& demand) {
    std::string text = wished(demand);
    if (!demand.everywhere)
        text += " from " + checks::spaced(demand.widths.from, 2) + " to " + checks::px(demand.widths.to, 2);
    return text;
}

}  // namespace tenter::solve
