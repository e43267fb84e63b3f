// The same row with other column counts.
#include "solve/columns.h"

#include "project/conflicts.h"
#include "solving.h"

namespace tenter::test {
namespace {

using Steps = std::vector<int>;

TEST(ColumnSteps, leave_no_empty_cells_if_another_step_has_none) {
    EXPECT_EQ(solve::columnSteps(4, 4), (Steps{1, 2, 4}));
    EXPECT_EQ(solve::columnSteps(4, 12), (Steps{1, 2, 4}));
    EXPECT_EQ(solve::columnSteps(3, 6), (Steps{1, 2, 3}));
    // Two columns would leave an empty cell next to the last of three or nine cards.
    EXPECT_EQ(solve::columnSteps(3, 3), (Steps{1, 3}));
    EXPECT_EQ(solve::columnSteps(3, 9), (Steps{1, 3}));
    EXPECT_EQ(solve::columnSteps(2, 5), (Steps{1, 2}));
    EXPECT_EQ(solve::columnSteps(6, 12), (Steps{1, 2, 3, 6}));
    // With five cards every step in between has an empty cell; half has as few as any.
    EXPECT_EQ(solve::columnSteps(4, 5).back(), 4);
    EXPECT_EQ(solve::columnSteps(4, 3), (Steps{1, 3, 4}));
    EXPECT_EQ(solve::columnSteps(1, 3), (Steps{1}));
    for (int columns = 1; columns <= 12; ++columns) {
        for (std::size_t cards = 0; cards <= 14; ++cards) {
            const Steps steps = solve::columnSteps(columns, cards);
            EXPECT_EQ(steps.front(), 1);
            EXPECT_EQ(steps.back(), columns);
            EXPECT_TRUE(std::ranges::is_sorted(steps, std::less_equal<>()));
            for (std::size_t i = 0; i + 1 < steps.size(); ++i)
                EXPECT_LE(steps[i + 1], 3 * steps[i]) << columns << " of " << cards;
        }
    }
}

TEST(ColumnClass, is_derived_from_another_class) {
    EXPECT_EQ(solve::classFor("walks-trio", 4), "walks-quartet");
    EXPECT_EQ(solve::classFor("walks", 2), "walks-pair");
    EXPECT_EQ(solve::classFor("trio", 2), "trio-pair");
    EXPECT_EQ(solve::classFor("walks-of-stone", 11), "walks-of-stone-of-11");
}

TEST(WithColumns, makes_a_valid_variant_of_every_sample_that_satisfies_its_wishes) {
    std::mt19937 random(13);
    for (const auto& [name, sample] : samples()) {
        for (const int columns : {1, 2, 3, 4, 6}) {
            project::Project project = sample;
            project.row().variants.push_back(
                solve::withColumns(sample, 0, columns, "made-of-" + std::to_string(columns), solveStore()));
            project.row().variants.erase(project.row().variants.begin(), project.row().variants.end() - 1);
            const std::string told = name + " in " + std::to_string(columns);
            project::Problems problems;
            ASSERT_TRUE(project::parse(project::write(project), told, {}, problems) ||
                        project.fonts.size() > 0)
                << told << ": " << (problems.empty() ? "" : problems[0].line());
            EXPECT_TRUE(project::conflicts(project).empty()) << told;
            const auto& bands = project.row().variants[0].bands;
            EXPECT_EQ(*project::resolve(project, project.row().variants[0], bands.size() - 1).row.columns,
                      columns);
            const solve::Answer answer = solveRelaxing(project);
            ASSERT_TRUE(answer.solved) << told << "\n" << answerText(project, answer);
            EXPECT_EQ(violatedAnywhere(*answer.solved, 1000, random), "") << told;
        }
    }
}

// Derived with the same column count, a variant has the same breakpoints and sizes.
TEST(WithColumns, keeps_bands_and_sizes_for_the_same_column_count) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    const std::size_t trio = *project.row().findVariant("walks-trio");
    project::Project both = project;
    both.row().variants.push_back(solve::withColumns(project, trio, 3, "walks-other", solveStore()));
    const layout::PreparedRow one(both, trio, solveStore(), text::blink());
    const layout::PreparedRow other(both, both.row().variants.size() - 1, solveStore(), text::blink());
    ASSERT_EQ(one.bandCount(), other.bandCount());
    for (double width = 340; width < 1880; width += 20) {
        EXPECT_EQ(one.bandAt(width), other.bandAt(width)) << width;
        for (std::uint32_t role = 0; role < one.roles().size(); ++role)
            EXPECT_EQ(one.fontSize(role, width), other.fontSize(role, width)) << one.roles()[role] << width;
    }
}

}  // namespace
}  // namespace tenter::test
