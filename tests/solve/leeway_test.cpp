// Leeway and allowed sizes, judged by layouts at many widths.
#include "solve/leeway.h"

#include "solve/allowed.h"
#include "solving.h"
#include "units/number.h"

namespace tenter::test {
namespace {

using solve::LeewaySetting;

/// The first wish that is violated at a width from a grid of 0.5 px; empty if none is.
std::string violatedInSteps(const project::Project& project, std::size_t variant) {
    for (const text::BreakProfile* profile : text::profiles()) {
        Judge judge(project, variant, *profile);
        for (double width = project.leastWidth; width <= project.mostWidth; width += 0.5) {
            const std::string broken = judge.violatedAt(width);
            if (!broken.empty()) return broken;
        }
    }
    return {};
}

/// A sample whose wishes are all satisfied.
project::Project ferries() {
    return samples().at("ferry-words.tenter.json");
}

TEST(Leeway, of_a_breakpoint_is_the_largest_range_that_satisfies_the_wishes) {
    project::Project project = ferries();
    ASSERT_EQ(violatedInSteps(project, 0), "");
    int ends = 0;
    for (const std::size_t band : {0U, 1U}) {
        const auto leeway = solve::leewayOf(project, 0, band, LeewaySetting::Breakpoint, solveStore());
        ASSERT_TRUE(leeway && leeway->range);
        const solve::LeewayRange run = *leeway->range;
        EXPECT_EQ(run.suggested, leeway->current);
        const auto violatedAt = [&](double breakpoint) {
            project::Project moved = project;
            moved.row().variants[0].bands[band].upTo = breakpoint;
            return violatedInSteps(moved, 0);
        };
        EXPECT_EQ(violatedAt(run.from + 0.01), "");
        EXPECT_EQ(violatedAt(run.to - 0.01), "");
        EXPECT_EQ(violatedAt((run.from + run.to) / 2), "");
        if (run.limitedBelow) {
            EXPECT_NE(violatedAt(run.from - 1), "");
        }
        if (run.limitedAbove) {
            EXPECT_NE(violatedAt(run.to + 1), "");
        }
        ends += (run.limitedBelow ? 1 : 0) + (run.limitedAbove ? 1 : 0);
    }
    EXPECT_GE(ends, 2);
    EXPECT_FALSE(solve::leewayOf(project, 0, 2, LeewaySetting::Breakpoint, solveStore()));
}

TEST(Leeway, of_settings_ends_where_a_wish_is_violated) {
    const project::Project project = wishing(ferries(), {"heading.lines=3", "body.measure=24-"});
    const std::string sound = violatedInSteps(project, 0);
    ASSERT_EQ(sound, "");
    int ends = 0;
    for (const LeewaySetting varied :
         {LeewaySetting::ColumnGap, LeewaySetting::CardPadding, LeewaySetting::RowWidth}) {
        for (const std::size_t band : {0U, 1U, 2U}) {
            const auto leeway = solve::leewayOf(project, 0, band, varied, solveStore());
            EXPECT_EQ(leeway.has_value(), varied != LeewaySetting::ColumnGap || band > 0);
            if (!leeway) continue;
            ASSERT_TRUE(leeway->range);
            const solve::LeewayRange run = *leeway->range;
            EXPECT_LE(run.from, leeway->current);
            EXPECT_GE(run.to, leeway->current);
            const auto brokenWith = [&](double value) {
                project::Project changed = project;
                project::Settings& set = changed.row().variants[0].bands[band].set;
                const auto length =
                    units::Length::parse(units::number(value, 3) + std::string(units::suffix(leeway->unit)));
                if (varied == LeewaySetting::ColumnGap) set.row.columnGap = length;
                if (varied == LeewaySetting::CardPadding)
                    set.card.padding.left = set.card.padding.right = length;
                if (varied == LeewaySetting::RowWidth) set.row.width = length;
                return violatedInSteps(changed, 0);
            };
            EXPECT_EQ(run.limitedBelow, !run.violatedBelow.empty());
            EXPECT_EQ(run.limitedAbove, !run.violatedAbove.empty());
            // The sentence mentions an end only if a wish is violated there, and names that wish.
            const std::string told = solve::describe(project, 0, band, varied, *leeway);
            EXPECT_EQ(told.find("smaller value violates “") != std::string::npos, run.limitedBelow) << told;
            EXPECT_EQ(told.find("larger value violates “") != std::string::npos, run.limitedAbove) << told;
            EXPECT_EQ(told.find("every tested value (") != std::string::npos,
                      !run.limitedBelow && !run.limitedAbove)
                << told;
            EXPECT_EQ(brokenWith((run.from + run.to) / 2), "");
            EXPECT_EQ(brokenWith(run.to - 0.01), "");
            const double step = 0.02 * (run.to - run.from);
            if (run.limitedBelow) {
                EXPECT_NE(brokenWith(run.from - step), "");
            }
            if (run.limitedAbove) {
                EXPECT_NE(brokenWith(run.to + step), "");
            }
            ends += (run.limitedBelow ? 1 : 0) + (run.limitedAbove ? 1 : 0);
        }
    }
    EXPECT_GE(ends, 5);
}

TEST(Leeway, names_the_violated_wishes_if_no_value_satisfies_them) {
    const project::Project project = wishing(ferries(), {"body.size=40-"});
    const auto leeway = solve::leewayOf(project, 0, 0, LeewaySetting::CardPadding, solveStore());
    ASSERT_TRUE(leeway && !leeway->range);
    EXPECT_NE(solve::describe(project, 0, 0, LeewaySetting::CardPadding, *leeway)
                  .find("The current value violates “body at least 40\u00A0px”."),
              std::string::npos)
        << solve::describe(project, 0, 0, LeewaySetting::CardPadding, *leeway);
}

/// The value of the curves at `width`; empty between them.
std::optional<double> valueAt(const std::vector<sweep::Curve>& runs, double width) {
    for (const sweep::Curve& run : runs)
        if (width > run.front().width && width < run.back().width) return sweep::valueAt(run, width);
    return std::nullopt;
}

// At random widths a size at the bound satisfies the wishes, and a size beyond it violates one.
TEST(AllowedSizes, are_the_limit_of_what_layouts_satisfy) {
    std::mt19937 random(11);
    int edges = 0;
    for (const auto& [name, sample] : samples()) {
        const project::Project project =
            wishing(sample, {"heading.lines=2", "body.measure=30-70", "slack=0", "narrow-slack=0"});
        for (const char* role : {"heading", "body", "button"}) {
            const solve::Allowed allowed = solve::allowedSizes(project, 0, role, solveStore());
            std::uniform_real_distribution<double> widths(project.leastWidth, project.mostWidth);
            for (int i = 0; i < 40; ++i) {
                const double width = widths(random);
                const auto most = valueAt(allowed.most, width);
                const auto least = valueAt(allowed.least, width);
                ASSERT_TRUE(most && least) << name << " " << role << " " << width;
                const auto brokenWith = [&](double size) {
                    project::Project changed = project;
                    // The other roles are so small that they do not matter.
                    for (const std::string& each : project::roles(project))
                        for (project::Band& band : changed.row().variants[0].bands)
                            band.set.text.of(each).size = units::Ramp::flat(each == role ? size : 1);
                    project::Wishes only = *changed.row().wishes;
                    for (const std::string& each : project::roles(project))
                        if (each != role) {
                            project::RoleWishes& none = only.roles.emplace_back();
                            none.role = each;
                            none.mostMeasure = 1000;
                            none.leastSize = 1;
                        }
                    changed.row().wishes = only;
                    std::string broken;
                    for (const text::BreakProfile* profile : text::profiles())
                        broken += Judge(changed, 0, *profile).violatedAt(width);
                    return broken;
                };
                if (*most < *least) continue;
                EXPECT_EQ(brokenWith(*most * 0.999), "") << name << " " << role << " " << *most;
                EXPECT_NE(brokenWith(*most * 1.01), "")
                    << name << " " << role << " " << *most << " at " << width;
                EXPECT_EQ(brokenWith(*least * 1.001), "") << name << " " << role << " " << *least;
                EXPECT_NE(brokenWith(*least * 0.99), "") << name << " " << role << " " << *least;
                ++edges;
            }
        }
    }
    EXPECT_GT(edges, 400);
}

TEST(Leeway, is_applied_to_the_band_it_is_for) {
    const project::Project project = ferries();
    const project::Project moved =
        solve::withValue(project, 0, 0, LeewaySetting::Breakpoint, 702, units::Unit::Px);
    EXPECT_EQ(moved.row().variants[0].bands[0].upTo, 702);
    const auto now = [](const project::Project& of, LeewaySetting varied) {
        return solve::leewayOf(of, 0, 1, varied, solveStore())->current;
    };
    for (const LeewaySetting varied :
         {LeewaySetting::ColumnGap, LeewaySetting::CardPadding, LeewaySetting::RowWidth}) {
        const auto leeway = solve::leewayOf(project, 0, 1, varied, solveStore());
        ASSERT_TRUE(leeway);
        const double other = leeway->current * 1.25;
        EXPECT_NEAR(now(solve::withValue(project, 0, 1, varied, other, leeway->unit), varied), other, 1e-9);
    }
}

}  // namespace
}  // namespace tenter::test
