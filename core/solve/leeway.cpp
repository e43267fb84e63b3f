#include "solve/leeway.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "checks/phrases.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "project/wording.h"
#include "solve/verify.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

using project::Length;
using sweep::Interval;
using units::Unit;

/// Values looked at over the range of a setting, before the ends of a run are found by halving.
constexpr int samples = 80;
/// The ends of a run are known to half of this, in the unit of the setting.
constexpr double nearness = 0.01;
/// Of a run's length, how far "well within" is from an end where a wish breaks.
constexpr double within = 0.25;
/// Nearer to such an end than this share of the run, what is there nearly breaks.
constexpr double nearly = 0.02;

/// One band of a variant as a variant of its own.
project::Variant alone(const project::Variant& variant, std::size_t band) {
    project::Variant one = variant;
    one.bands = {variant.bands[band]};
    one.bands[0].upTo.reset();
    return one;
}

/// The widths of the range that band `band` has, CSS px.
Interval widthsOf(const project::Project& project, const project::Variant& variant, std::size_t band) {
    const double from = band == 0 ? 0 : *variant.bands[band - 1].upTo;
    const double to = variant.bands[band].upTo.value_or(project.mostWidth);
    return {std::max(from, project.leastWidth), std::min(to, project.mostWidth)};
}

Length lengthOf(double value, Unit unit) {
    switch (unit) {
        case Unit::Rem:
            return Length::rem(value);
        case Unit::Em:
            return Length::em(value);
        case Unit::Percent:
            return Length::percent(value);
        case Unit::Vw:
            return Length::vw(value);
        case Unit::Cqi:
            return Length::cqi(value);
        case Unit::Px:
        case Unit::Auto:
        case Unit::None:
            break;
    }
    return Length::px(value);
}

void put(project::Settings& set, Varied varied, const Length& length) {
    if (varied == Varied::ColumnGap) set.row.columnGap = length;
    if (varied == Varied::CardPadding) set.card.padding.left = set.card.padding.right = length;
    if (varied == Varied::RowWidth) set.row.width = length;
}

/// What is looked at, in its unit: rows down to a narrow phone's and up to the range's, spacings up to more
/// than anyone wants.
Interval valuesOf(Varied varied, Unit unit, double mostWidth) {
    const bool row = varied == Varied::RowWidth;
    if (unit == Unit::Percent || unit == Unit::Vw) return row ? Interval{30, 100} : Interval{0, 20};
    if (unit == Unit::Px) return row ? Interval{240, mostWidth} : Interval{0, 160};
    return row ? Interval{15, mostWidth / 16} : Interval{0, 10};
}

class LeewayFinder {
public:
    LeewayFinder(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                 const Options& options)
        : project_(project), variant_(project.variants[variant]), store_(store) {
        const project::Wishes wishes = project::wishesOf(project);
        demands_ = demandsOf(project, wishes);
        without_ = withoutOf(project, wishes);
        profiles_ = options.profile != nullptr ? std::vector{options.profile} : text::profiles();
    }

    /// Where the band below is broken bounds its end from above, where the one above is from below.
    std::optional<Leeway> ofBreakpoint(std::size_t band) {
        if (band + 1 >= variant_.bands.size()) return std::nullopt;
        Leeway leeway{*variant_.bands[band].upTo, Unit::Px, {}, std::nullopt};
        const Interval both{widthsOf(project_, variant_, band).from,
                            widthsOf(project_, variant_, band + 1).to};
        if (both.from >= both.to) return std::nullopt;
        noteBroken(band, leeway);
        noteBroken(band + 1, leeway);
        Run run;
        run.from = both.from;
        run.to = both.to;
        const auto under = brokenBy(alone(variant_, band), both);
        for (const std::vector<Interval>& found : under)
            for (const Interval& broken : found)
                if (broken.from < run.to) {
                    run.to = broken.from;
                    run.breaksAbove = true;
                }
        const auto over = brokenBy(alone(variant_, band + 1), both);
        for (const std::vector<Interval>& found : over)
            for (const Interval& broken : found)
                if (broken.to > run.from) {
                    run.from = broken.to;
                    run.breaksBelow = true;
                }
        if (run.from > run.to) return leeway;
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            const auto ends = [](double end, double Interval::*side) {
                return [=](const Interval& broken) { return std::abs(broken.*side - end) < nearness; };
            };
            if (run.breaksAbove && std::ranges::any_of(under[i], ends(run.to, &Interval::from)))
                run.above.push_back(demands_[i]);
            if (run.breaksBelow && std::ranges::any_of(over[i], ends(run.from, &Interval::to)))
                run.below.push_back(demands_[i]);
        }
        leeway.run = run;
        return leeway;
    }

    std::optional<Leeway> ofSetting(std::size_t band, Varied varied) {
        const project::Settings settings = resolvedIn(band);
        const Length now = varied == Varied::ColumnGap     ? *settings.row.columnGap
                           : varied == Varied::CardPadding ? settings.card.padding.left.value_or(Length())
                                                           : *settings.row.width;
        const Interval there = widthsOf(project_, variant_, band);
        if (now.isKeyword() || there.from >= there.to) return std::nullopt;
        if (varied == Varied::ColumnGap && *settings.row.columns < 2) return std::nullopt;
        Leeway leeway{now.value(), now.unit(), {}, std::nullopt};
        noteBroken(band, leeway);
        const Interval values = valuesOf(varied, now.unit(), project_.mostWidth);
        const auto with = [&](double value) {
            project::Variant one = alone(variant_, band);
            put(one.bands[0].set, varied, lengthOf(value, now.unit()));
            return one;
        };
        leeway.run = nearestRun(values, leeway.now, [&](double value) { return holds(with(value), there); });
        if (!leeway.run) return leeway;
        Run& run = *leeway.run;
        if (run.breaksBelow) run.below = brokenDemands(with(run.from - nearness), there);
        if (run.breaksAbove) run.above = brokenDemands(with(run.to + nearness), there);
        return leeway;
    }

private:
    [[nodiscard]] project::Settings resolvedIn(std::size_t band) const {
        return project::resolve(project_, variant_, band);
    }

    /// By demand, under every profile.
    std::vector<std::vector<Interval>> brokenBy(const project::Variant& variant, const Interval& widths) {
        project::Project changed = project_;
        changed.variants = {variant};
        std::vector<std::vector<Interval>> all(demands_.size());
        for (const text::BreakProfile* profile : profiles_) {
            const layout::PreparedRow row(changed, 0, store_, *profile);
            const auto found = brokenWidths(changed, row, demands_, without_, widths.from, widths.to);
            for (std::size_t i = 0; i < all.size(); ++i)
                all[i].insert(all[i].end(), found[i].begin(), found[i].end());
        }
        return all;
    }
    bool holds(const project::Variant& variant, const Interval& widths) {
        return std::ranges::all_of(brokenBy(variant, widths), &std::vector<Interval>::empty);
    }
    std::vector<Demand> brokenDemands(const project::Variant& variant, const Interval& widths) {
        const auto found = brokenBy(variant, widths);
        std::vector<Demand> broken;
        for (std::size_t i = 0; i < demands_.size(); ++i)
            if (!found[i].empty()) broken.push_back(demands_[i]);
        return broken;
    }
    /// What breaks in a band as it is.
    void noteBroken(std::size_t band, Leeway& leeway) {
        for (Demand& broken : brokenDemands(alone(variant_, band), widthsOf(project_, variant_, band)))
            leeway.broken.push_back(std::move(broken));
    }

    template <class Holds>
    static std::optional<Run> nearestRun(const Interval& values, double now, Holds&& holds) {
        const auto valueAt = [&](int i) { return values.from + (values.to - values.from) * i / samples; };
        // The value now is one of those looked at, so that a narrow run about it is not missed.
        std::vector<double> looked;
        looked.reserve(samples + 2);
        for (int i = 0; i <= samples; ++i)
            looked.push_back(valueAt(i));
        looked.push_back(now);
        std::ranges::sort(looked);
        std::vector<bool> good;
        good.reserve(looked.size());
        for (const double value : looked)
            good.push_back(holds(value));
        const auto edgeOf = [&](double out, double in) {
            while (std::abs(in - out) > nearness / 2) {
                const double middle = (in + out) / 2;
                (holds(middle) ? in : out) = middle;
            }
            return in;
        };
        std::optional<Run> nearest;
        const auto away = [&](const Run& run) { return std::max({run.from - now, now - run.to, 0.0}); };
        for (std::size_t i = 0; i < looked.size();) {
            if (!good[i]) {
                ++i;
                continue;
            }
            std::size_t end = i;
            while (end + 1 < looked.size() && good[end + 1])
                ++end;
            Run run;
            run.from = looked[i];
            run.to = looked[end];
            run.breaksBelow = i > 0;
            run.breaksAbove = end + 1 < looked.size();
            if (run.breaksBelow) run.from = edgeOf(looked[i - 1], looked[i]);
            if (run.breaksAbove) run.to = edgeOf(looked[end + 1], looked[end]);
            if (!nearest || away(run) < away(*nearest)) nearest = run;
            i = end + 1;
        }
        return nearest;
    }

    const project::Project& project_;
    const project::Variant& variant_;
    text::ParagraphStore& store_;
    std::vector<Demand> demands_;
    std::vector<bool> without_;
    std::vector<const text::BreakProfile*> profiles_;
};

/// What is there if it is not nearly broken, else the nearest value well within, to a figure that reads well.
double bestIn(const Run& run, double now, Unit unit) {
    const double length = run.to - run.from;
    const auto inner = [&](double share) {
        return Interval{run.from + (run.breaksBelow ? share * length : 0),
                        run.to - (run.breaksAbove ? share * length : 0)};
    };
    const Interval kept = inner(nearly);
    if (now >= kept.from && now <= kept.to) return now;
    const Interval well = inner(within);
    const double best = std::clamp(now, well.from, well.to);
    const double read = units::rounded(best, unit == Unit::Px ? 0 : 2);
    return read >= run.from && read <= run.to ? read : best;
}

std::string inUnit(double value, Unit unit) {
    if (unit == Unit::Px) return checks::px(value, 2);
    return units::number(value, 2) + "\u00A0" +
           (unit == Unit::Percent ? "%" : std::string(units::suffix(unit)));
}

/// `“…” and “…” break`, each wish once.
std::string wordsOfBroken(const std::vector<Demand>& demands) {
    std::vector<std::string> wishes;
    for (const Demand& demand : demands) {
        std::string wish = "“" + said(demand) + "”";
        if (std::ranges::find(wishes, wish) == wishes.end()) wishes.push_back(std::move(wish));
    }
    return project::listed(wishes) + (wishes.size() > 1 ? " break" : " breaks");
}

/// `from 12 px to 40 px`; an end at which nothing breaks is only how far was looked.
std::string allowedBy(const Run& run, Unit unit) {
    const std::string from = inUnit(run.from, unit);
    const std::string to = inUnit(run.to, unit);
    if (run.breaksBelow && run.breaksAbove) return "may be anywhere from " + from + " to " + to;
    if (run.breaksAbove) return "may be anywhere up to " + to;
    if (run.breaksBelow) return "may be anywhere from " + from + " on";
    return "may be anywhere that was looked at, from " + from + " to " + to;
}

}  // namespace

std::optional<Leeway> leewayOf(const project::Project& project, std::size_t variant, std::size_t band,
                               Varied varied, text::ParagraphStore& store, const Options& options) {
    LeewayFinder finder(project, variant, store, options);
    std::optional<Leeway> leeway =
        varied == Varied::Breakpoint ? finder.ofBreakpoint(band) : finder.ofSetting(band, varied);
    if (leeway && leeway->run) leeway->run->best = bestIn(*leeway->run, leeway->now, leeway->unit);
    return leeway;
}

project::Project withValue(const project::Project& project, std::size_t variant, std::size_t band,
                           Varied varied, double value, Unit unit) {
    project::Project changed = project;
    project::Band& there = changed.variants[variant].bands[band];
    if (varied == Varied::Breakpoint)
        there.upTo = value;
    else
        put(there.set, varied, lengthOf(value, unit));
    return changed;
}

std::string sentenceOf(const project::Project& project, std::size_t variant, std::size_t band, Varied varied,
                       const Leeway& leeway) {
    const int columns = *project::resolve(project, project.variants[variant], band).row.columns;
    const std::string there = "the band of " + project::inColumns(columns);
    const std::string now = inUnit(leeway.now, leeway.unit);
    const std::string what = varied == Varied::Breakpoint    ? "end of " + there
                             : varied == Varied::ColumnGap   ? "column gap in " + there
                             : varied == Varied::CardPadding ? "padding of cards in " + there
                                                             : "row’s width in " + there;
    if (!leeway.run)
        return "No " + what + " keeps the wishes at these sizes; at " + now + ", as it is now, " +
               wordsOfBroken(leeway.broken) + ".";
    const Run& run = *leeway.run;
    std::string text = "The " + what + " " + allowedBy(run, leeway.unit) + "; it is " + now + " now";
    if (run.best != leeway.now) text += ", and would be well at " + inUnit(run.best, leeway.unit);
    text += ".";
    if (!run.below.empty()) text += " Below, " + wordsOfBroken(run.below) + ".";
    if (!run.above.empty()) text += " Above, " + wordsOfBroken(run.above) + ".";
    return text;
}

}  // namespace tenter::solve
