#include "solve/leeway.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "checks/phrases.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "solve/cancellation.h"
#include "solve/verify.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve {

namespace {

using project::Length;
using sweep::Interval;
using units::Unit;

/// Values tested over the range of a setting. Bisection then finds the exact ends.
constexpr int testedValues = 80;
/// Accuracy of the ends is half of this, in the unit of the setting.
constexpr double endAccuracy = 0.01;
/// Distance of a suggested value from an end that violates a wish, as a share of the range.
constexpr double suggestedShare = 0.25;
/// A current value closer to such an end than this share of the range is not suggested.
constexpr double closeShare = 0.02;

/// The variant with band `band` only, at every width.
project::Variant singleBand(const project::Variant& variant, std::size_t band) {
    project::Variant one = variant;
    one.bands = {variant.bands[band]};
    one.bands[0].upTo.reset();
    return one;
}

/// The viewport widths of band `band` inside the project's range, CSS px.
Interval widthsOf(const project::Project& project, const project::Variant& variant, std::size_t band) {
    const double from = band == 0 ? 0 : *variant.bands[band - 1].upTo;
    const double to = variant.bands[band].upTo.value_or(project.mostWidth);
    return {std::max(from, project.leastWidth), std::min(to, project.mostWidth)};
}

void put(project::Settings& set, LeewaySetting setting, const Length& length) {
    if (setting == LeewaySetting::ColumnGap) set.row.columnGap = length;
    if (setting == LeewaySetting::CardPadding) set.card.padding.left = set.card.padding.right = length;
    if (setting == LeewaySetting::RowWidth) set.row.width = length;
}

/// The values to test, in `unit`: row widths from a narrow phone to the project's range, gaps and paddings up
/// to more than anyone uses.
Interval valuesToTest(LeewaySetting setting, Unit unit, double mostWidth) {
    const bool row = setting == LeewaySetting::RowWidth;
    if (unit == Unit::Percent || unit == Unit::Vw) return row ? Interval{30, 100} : Interval{0, 20};
    if (unit == Unit::Px) return row ? Interval{240, mostWidth} : Interval{0, 160};
    return row ? Interval{15, mostWidth / 16} : Interval{0, 10};
}

class LeewayFinder {
public:
    LeewayFinder(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                 const Options& options)
        : project_(project),
          variant_(project.row().variants[variant]),
          store_(store),
          cancellation_(options.cancellation) {
        const project::Wishes projectWishes = project::effectiveWishes(project);
        wishes_ = singleWishes(project, projectWishes);
        ignoredCards_ = ignoredCards(project, projectWishes);
        profiles_ = options.profile != nullptr ? std::vector{options.profile} : text::profiles();
    }

    /// Violations of the band below limit its end from above; those of the band above limit it from below.
    std::optional<Leeway> ofBreakpoint(std::size_t band) {
        if (band + 1 >= variant_.bands.size()) return std::nullopt;
        Leeway leeway{*variant_.bands[band].upTo, Unit::Px, {}, std::nullopt, false};
        const Interval both{widthsOf(project_, variant_, band).from,
                            widthsOf(project_, variant_, band + 1).to};
        if (both.from >= both.to) return std::nullopt;
        addViolated(band, leeway);
        addViolated(band + 1, leeway);
        LeewayRange range;
        range.from = both.from;
        range.to = both.to;
        const auto lowerBand = violations(singleBand(variant_, band), both);
        for (const std::vector<Interval>& found : lowerBand)
            for (const Interval& violation : found)
                if (violation.from < range.to) {
                    range.to = violation.from;
                    range.limitedAbove = true;
                }
        const auto upperBand = violations(singleBand(variant_, band + 1), both);
        for (const std::vector<Interval>& found : upperBand)
            for (const Interval& violation : found)
                if (violation.to > range.from) {
                    range.from = violation.to;
                    range.limitedBelow = true;
                }
        if (range.from > range.to) return leeway;
        for (std::size_t i = 0; i < wishes_.size(); ++i) {
            const auto ends = [](double end, double Interval::*side) {
                return
                    [=](const Interval& violation) { return std::abs(violation.*side - end) < endAccuracy; };
            };
            if (range.limitedAbove && std::ranges::any_of(lowerBand[i], ends(range.to, &Interval::from)))
                range.violatedAbove.push_back(wishes_[i]);
            if (range.limitedBelow && std::ranges::any_of(upperBand[i], ends(range.from, &Interval::to)))
                range.violatedBelow.push_back(wishes_[i]);
        }
        leeway.range = range;
        return leeway;
    }

    std::optional<Leeway> ofLength(std::size_t band, LeewaySetting setting) {
        const project::Settings settings = project::resolve(project_, variant_, band);
        const Length current = setting == LeewaySetting::ColumnGap ? *settings.row.columnGap
                               : setting == LeewaySetting::CardPadding
                                   ? settings.card.padding.left.value_or(Length())
                                   : *settings.row.width;
        const Interval widths = widthsOf(project_, variant_, band);
        if (current.isKeyword() || widths.from >= widths.to) return std::nullopt;
        if (setting == LeewaySetting::ColumnGap && *settings.row.columns < 2) return std::nullopt;
        Leeway leeway{current.value(), current.unit(), {}, std::nullopt, false};
        addViolated(band, leeway);
        const Interval values = valuesToTest(setting, current.unit(), project_.mostWidth);
        const auto with = [&](double value) {
            project::Variant one = singleBand(variant_, band);
            put(one.bands[0].set, setting, Length::in(value, current.unit()));
            return one;
        };
        leeway.range = nearestRange(values, leeway.current,
                                    [&](double value) { return satisfies(with(value), widths); });
        if (!leeway.range) return leeway;
        LeewayRange& range = *leeway.range;
        if (range.limitedBelow) range.violatedBelow = violatedWishes(with(range.from - endAccuracy), widths);
        if (range.limitedAbove) range.violatedAbove = violatedWishes(with(range.to + endAccuracy), widths);
        return leeway;
    }

private:
    /// By wish, the widths at which the variant violates it under any of the profiles.
    std::vector<std::vector<Interval>> violations(const project::Variant& variant, const Interval& widths) {
        project::Project changed = project_;
        changed.row().variants = {variant};
        std::vector<std::vector<Interval>> all(wishes_.size());
        for (const text::BreakProfile* profile : profiles_) {
            throwIfStopped(cancellation_);
            const layout::PreparedRow row(changed, 0, store_, *profile);
            const auto found =
                violatedWidths(changed, row, wishes_, ignoredCards_, widths.from, widths.to, cancellation_);
            for (std::size_t i = 0; i < all.size(); ++i)
                all[i].insert(all[i].end(), found[i].begin(), found[i].end());
        }
        return all;
    }
    bool satisfies(const project::Variant& variant, const Interval& widths) {
        return std::ranges::all_of(violations(variant, widths), &std::vector<Interval>::empty);
    }
    std::vector<Wish> violatedWishes(const project::Variant& variant, const Interval& widths) {
        const auto found = violations(variant, widths);
        std::vector<Wish> violated;
        for (std::size_t i = 0; i < wishes_.size(); ++i)
            if (!found[i].empty()) violated.push_back(wishes_[i]);
        return violated;
    }
    void addViolated(std::size_t band, Leeway& leeway) {
        for (Wish& wish : violatedWishes(singleBand(variant_, band), widthsOf(project_, variant_, band)))
            leeway.violated.push_back(std::move(wish));
    }

    /// The range of satisfying values that contains `current`, or else the nearest one.
    template <class Satisfies>
    static std::optional<LeewayRange> nearestRange(const Interval& values, double current,
                                                   Satisfies&& satisfiesAt) {
        // The current value is tested too, so that a narrow range around it is found.
        std::vector<double> tested;
        tested.reserve(testedValues + 2);
        for (int i = 0; i <= testedValues; ++i)
            tested.push_back(values.from + (values.to - values.from) * i / testedValues);
        tested.push_back(current);
        std::ranges::sort(tested);
        std::vector<bool> satisfied;
        satisfied.reserve(tested.size());
        for (const double value : tested)
            satisfied.push_back(satisfiesAt(value));
        const auto edgeBetween = [&](double outside, double inside) {
            while (std::abs(inside - outside) > endAccuracy / 2) {
                const double middle = (inside + outside) / 2;
                (satisfiesAt(middle) ? inside : outside) = middle;
            }
            return inside;
        };
        std::optional<LeewayRange> nearest;
        const auto distance = [&](const LeewayRange& range) {
            return std::max({range.from - current, current - range.to, 0.0});
        };
        for (std::size_t i = 0; i < tested.size();) {
            if (!satisfied[i]) {
                ++i;
                continue;
            }
            std::size_t last = i;
            while (last + 1 < tested.size() && satisfied[last + 1])
                ++last;
            LeewayRange range;
            range.from = tested[i];
            range.to = tested[last];
            range.limitedBelow = i > 0;
            range.limitedAbove = last + 1 < tested.size();
            if (range.limitedBelow) range.from = edgeBetween(tested[i - 1], tested[i]);
            if (range.limitedAbove) range.to = edgeBetween(tested[last + 1], tested[last]);
            if (!nearest || distance(range) < distance(*nearest)) nearest = range;
            i = last + 1;
        }
        return nearest;
    }

    const project::Project& project_;
    const project::Variant& variant_;
    text::ParagraphStore& store_;
    std::stop_token cancellation_;
    std::vector<Wish> wishes_;
    std::vector<bool> ignoredCards_;
    std::vector<const text::BreakProfile*> profiles_;
};

/// The current value if it is not close to a violation, else the nearest value well inside, rounded.
double suggestedIn(const LeewayRange& range, double current, Unit unit) {
    const double length = range.to - range.from;
    const auto inner = [&](double share) {
        return Interval{range.from + (range.limitedBelow ? share * length : 0),
                        range.to - (range.limitedAbove ? share * length : 0)};
    };
    const Interval safe = inner(closeShare);
    if (current >= safe.from && current <= safe.to) return current;
    const Interval wellInside = inner(suggestedShare);
    const double suggested = std::clamp(current, wellInside.from, wellInside.to);
    const double rounded = units::rounded(suggested, unit == Unit::Px ? 0 : 2);
    return rounded >= range.from && rounded <= range.to ? rounded : suggested;
}

std::string inUnit(double value, Unit unit) {
    if (unit == Unit::Px) return units::px(value);
    return units::figure(value) + "\u00A0" + (unit == Unit::Percent ? "%" : std::string(units::suffix(unit)));
}

/// `“…” and “…”`, each wish once.
std::string quoted(const std::vector<Wish>& wishes) {
    std::vector<std::string> all;
    for (const Wish& wish : wishes) {
        std::string one = wording::say("“%1”", {describe(wish)});
        if (std::ranges::find(all, one) == all.end()) all.push_back(std::move(one));
    }
    return project::listed(all);
}

/// `from 12 to 40 px (now 22 px)`. An end that violates no wish is only the end of the values tested.
std::string allowedValues(const LeewayRange& range, const Leeway& leeway) {
    const std::string now = inUnit(leeway.current, leeway.unit);
    const std::string from = units::figure(range.from);
    const std::string to = inUnit(range.to, leeway.unit);
    if (!range.limitedBelow && !range.limitedAbove)
        return wording::say("every tested value (%1 to %2) satisfies the wishes (now %3)", {from, to, now});
    const bool outside = (range.limitedBelow && leeway.current < range.from) ||
                         (range.limitedAbove && leeway.current > range.to);
    const std::string values = !range.limitedBelow ? wording::say("at most %1", {to})
                               : !range.limitedAbove
                                   ? wording::say("at least %1", {inUnit(range.from, leeway.unit)})
                                   : wording::say("from %1 to %2", {from, to});
    //: The values of a setting that satisfy the wishes, and its value now
    return outside ? wording::say("must be %1 (now %2)", {values, now})
                   : wording::say("%1 (now %2)", {values, now});
}

/// Names a setting of a band: `Column gap, 701–1230 px (2 columns)`, `Breakpoint at 530 px (1 to 2 columns)`.
std::string titleOf(const project::Project& project, const project::Variant& variant, std::size_t band,
                    LeewaySetting setting, const std::string& current) {
    if (setting != LeewaySetting::Breakpoint) {
        const std::string title = project::bandTitle(project, variant, band);
        return setting == LeewaySetting::ColumnGap     ? wording::say("Column gap, %1", {title})
               : setting == LeewaySetting::CardPadding ? wording::say("Card padding, %1", {title})
                                                       : wording::say("Row width, %1", {title});
    }
    const int below = *project::resolve(project, variant, band).row.columns;
    const int above = *project::resolve(project, variant, band + 1).row.columns;
    const std::string columns = project::columnsLabel(above);
    return below == above
               ? wording::say("Breakpoint at %1 (%2)", {current, columns})
               : wording::say("Breakpoint at %1 (%2 to %3)", {current, std::to_string(below), columns});
}

/// `A smaller value violates “…”; a larger value violates “…”.`
std::string violations(const LeewayRange& range) {
    const bool below = !range.violatedBelow.empty();
    const bool above = !range.violatedAbove.empty();
    if (below && above)
        return wording::say("A smaller value violates %1; a larger value violates %2.",
                            {quoted(range.violatedBelow), quoted(range.violatedAbove)});
    if (below) return wording::say("A smaller value violates %1.", {quoted(range.violatedBelow)});
    if (above) return wording::say("A larger value violates %1.", {quoted(range.violatedAbove)});
    return {};
}

}  // namespace

std::optional<Leeway> leewayOf(const project::Project& project, std::size_t variant, std::size_t band,
                               LeewaySetting setting, text::ParagraphStore& store, const Options& options) {
    try {
        LeewayFinder finder(project, variant, store, options);
        std::optional<Leeway> leeway =
            setting == LeewaySetting::Breakpoint ? finder.ofBreakpoint(band) : finder.ofLength(band, setting);
        if (leeway && leeway->range)
            leeway->range->suggested = suggestedIn(*leeway->range, leeway->current, leeway->unit);
        return leeway;
    } catch (const Cancelled&) {
        Leeway leeway;
        leeway.isCancelled = true;
        return leeway;
    }
}

project::Project withValue(const project::Project& project, std::size_t variant, std::size_t band,
                           LeewaySetting setting, double value, Unit unit) {
    project::Project changed = project;
    project::Band& there = changed.row().variants[variant].bands[band];
    if (setting == LeewaySetting::Breakpoint)
        there.upTo = value;
    else
        put(there.set, setting, Length::in(value, unit));
    return changed;
}

std::string describe(const project::Project& project, std::size_t variant, std::size_t band,
                     LeewaySetting setting, const Leeway& leeway) {
    const std::string current = inUnit(leeway.current, leeway.unit);
    const std::string title = titleOf(project, project.row().variants[variant], band, setting, current);
    if (!leeway.range) {
        const std::string violated = quoted(leeway.violated);
        return setting == LeewaySetting::Breakpoint
                   ? wording::say(
                         "%1: no value satisfies the wishes at the current sizes. The current value "
                         "violates %2.",
                         {title, violated})
                   : wording::say(
                         "%1: no value satisfies the wishes at the current sizes (now %2). The current "
                         "value violates %3.",
                         {title, current, violated});
    }
    const LeewayRange& range = *leeway.range;
    //: A setting, and its values that satisfy the wishes
    std::string text = wording::say("%1: %2.", {title, allowedValues(range, leeway)});
    const std::string beyond = violations(range);
    if (!beyond.empty()) text.append(" ").append(beyond);
    if (range.suggested != leeway.current)
        text.append(" ").append(wording::say("Suggested: %1.", {inUnit(range.suggested, leeway.unit)}));
    return text;
}

}  // namespace tenter::solve
