// The solver's answer as a table: sizes before and after, limits with their places, conflicts with what
// resolves them; and the same as text.
#include "solve/answer_table.h"

#include <regex>
#include <sstream>

#include "project/titles.h"
#include "solve/allowed.h"
#include "solving.h"

namespace tenter::test {
namespace {

using solve::AnswerTable;
using solve::SizeRow;

/// Largest difference of a size that rounding to the emitted numbers makes, CSS px.
constexpr double emitted = 0.0101;

struct Solved {
    std::string name;
    project::Project project;
    solve::Answer answer;
    AnswerTable table;
};

/// Every sample, too large, solved for its largest sizes in all variants.
const std::vector<Solved>& solvedSamples() {
    static const std::vector<Solved> all = [] {
        std::vector<Solved> made;
        for (const auto& [name, sample] : samples()) {
            // The headings of this sample are in two columns on a phone, where two lines are too few.
            std::vector<std::string> wishes{"aim=largest"};
            if (!name.starts_with("season")) wishes.emplace_back("heading.lines=2");
            project::Project project = wishing(sample, wishes);
            spoil(project, 1.3, 1.4);
            solve::Answer answer = solveRelaxing(project);
            EXPECT_TRUE(answer.solved) << name;
            AnswerTable table = solve::answerTable(project, answer, solveStore());
            made.push_back({name, std::move(project), std::move(answer), std::move(table)});
        }
        return made;
    }();
    return all;
}

/// The role's font size in the ordinary layout, CSS px.
double laidOutSize(const project::Project& project, std::size_t variant, const std::string& role,
                   double width) {
    const layout::PreparedRow row(project, variant, solveStore(), text::blink());
    const auto index = std::ranges::find(row.roles(), role) - row.roles().begin();
    return row.fontSize(static_cast<std::uint32_t>(index), width);
}

/// A width just inside the band that starts at `width`.
double inside(const project::Project& project, double width) {
    return width > project.leastWidth ? std::nextafter(width, 1e9) : width;
}

TEST(AnswerTable, has_a_row_for_each_role_and_band_of_each_variant) {
    for (const Solved& solved : solvedSamples()) {
        std::size_t expected = 0;
        for (const project::Variant& variant : solved.project.row().variants) {
            const layout::PreparedRow row(solved.project,
                                          *solved.project.row().findVariant(variant.className), solveStore(),
                                          text::blink());
            expected += variant.bands.size() * row.roles().size();
        }
        EXPECT_EQ(solved.table.rows.size(), expected) << solved.name;
        for (std::size_t i = 0; i < solved.table.rows.size(); ++i) {
            const SizeRow& row = solved.table.rows[i];
            EXPECT_LT(row.narrow.width, row.wide.width);
            EXPECT_EQ(row.columns,
                      *project::resolve(solved.project, solved.project.row().variants[row.variant], row.band)
                           .row.columns);
            const double start =
                row.band == 0 ? solved.project.leastWidth : solved.table.rows[i - 1].wide.width;
            EXPECT_EQ(row.narrow.width, start) << solved.name;
            const auto& upTo = solved.project.row().variants[row.variant].bands[row.band].upTo;
            EXPECT_EQ(row.wide.width, upTo.value_or(solved.project.mostWidth)) << solved.name;
        }
    }
}

TEST(AnswerTable, has_the_sizes_of_both_projects_at_both_ends_of_each_band) {
    int changed = 0;
    for (const Solved& solved : solvedSamples()) {
        for (const SizeRow& row : solved.table.rows) {
            const auto sizeAt = [&](const project::Project& project, double width) {
                return laidOutSize(project, row.variant, row.role, width);
            };
            const double narrow = inside(solved.project, row.narrow.width);
            const std::string where = solved.name + " " + row.role + " " + solve::bandLabel(row);
            EXPECT_NEAR(row.narrow.before, sizeAt(solved.project, narrow), emitted) << where;
            EXPECT_NEAR(row.narrow.after, sizeAt(*solved.answer.solved, narrow), emitted) << where;
            EXPECT_NEAR(row.wide.before, sizeAt(solved.project, row.wide.width), emitted) << where;
            EXPECT_NEAR(row.wide.after, sizeAt(*solved.answer.solved, row.wide.width), emitted) << where;
            const bool differs = std::abs(row.narrow.before - row.narrow.after) > 0.006 ||
                                 std::abs(row.wide.before - row.wide.after) > 0.006;
            EXPECT_TRUE(!differs || row.isChanged()) << where;
            changed += row.isChanged() ? 1 : 0;
        }
    }
    EXPECT_GT(changed, 20);
}

TEST(AnswerTable, has_each_limit_once_at_the_size_that_the_solved_row_has_there) {
    const std::regex breakingSpace("[0-9] (px|%)|[0-9]\u202F[0-9]|'");
    std::size_t atBreakpoints = 0;
    std::size_t bounds = 0;
    for (const Solved& solved : solvedSamples()) {
        std::size_t limits = 0;
        for (const SizeRow& row : solved.table.rows) {
            for (const solve::Limit& limit : row.limits) {
                ++limits;
                const solve::Binding& binding = limit.binding;
                EXPECT_EQ(binding.wish.role, row.role) << limit.text;
                EXPECT_EQ(binding.variant, row.variant) << limit.text;
                EXPECT_FALSE(std::regex_search(limit.fullText, breakingSpace)) << limit.fullText;
                EXPECT_TRUE(limit.fullText.ends_with(limit.text)) << limit.fullText;
                EXPECT_TRUE(limit.fullText.starts_with(solve::roleLabel(row.role) + ", ")) << limit.fullText;
                EXPECT_GE(limit.width, solved.project.leastWidth) << limit.text;
                EXPECT_LE(limit.width, solved.project.mostWidth) << limit.text;
                // Zoomed pages are narrower than the range; a test below is about them.
                if (binding.width < solved.project.leastWidth) continue;
                EXPECT_EQ(binding.band, row.band) << limit.text;
                // A breakpoint belongs to the band below it; the range of a wish starts above its lower
                // width.
                const bool above = project::bandAt(solved.project.row().variants[row.variant],
                                                   binding.width) < binding.band ||
                                   (!binding.wish.everywhere && binding.width == binding.wish.widths.from &&
                                    binding.width > solved.project.leastWidth);
                EXPECT_EQ(limit.text.find("just above ") != std::string::npos, above) << limit.text;
                EXPECT_NEAR(limit.width, binding.width + (above ? 1 : 0), 1e-6) << limit.text;
                atBreakpoints += above ? 1 : 0;
                const double width = above ? std::nextafter(binding.width, 1e9) : binding.width;
                EXPECT_NEAR(binding.size, laidOutSize(*solved.answer.solved, row.variant, row.role, width),
                            emitted)
                    << solved.name << ": " << limit.fullText;
                EXPECT_NE(limit.text.find(solve::sizeLabel(binding.size) + "\u00A0px"), std::string::npos)
                    << limit.text;
                if (!binding.text.exists || binding.isLower) continue;
                // No wish allows a larger size there.
                double most = 1e9;
                for (const sweep::Curve& curve :
                     solve::allowedSizes(solved.project, row.variant, row.role, solveStore()).most)
                    if (width >= curve.front().width && width <= curve.back().width)
                        most = std::min(most, sweep::valueAt(curve, width));
                EXPECT_LE(binding.size, most + 1e-6) << limit.fullText;
                EXPECT_GT(binding.size, most * 0.985) << solved.name << ": " << limit.fullText;
                ++bounds;
            }
        }
        EXPECT_EQ(limits, solved.answer.bindings.size()) << solved.name;
    }
    EXPECT_GT(atBreakpoints, 5U);
    EXPECT_GT(bounds, 20U);
}

TEST(AnswerTable, marks_rows_unchanged_where_the_sizes_satisfy_the_wishes) {
    const project::Project project = samples().at("ferry-words.tenter.json");
    const solve::Answer once = solve::solve(project, allVariants(project), solveStore());
    ASSERT_TRUE(once.solved);
    const solve::Answer twice = solve::solve(*once.solved, allVariants(project), solveStore());
    const AnswerTable table = solve::answerTable(*once.solved, twice, solveStore());
    EXPECT_TRUE(table.isUnchanged);
    EXPECT_TRUE(std::ranges::none_of(table.rows, &SizeRow::isChanged));
    EXPECT_TRUE(solve::toText(*once.solved, table).starts_with("The current sizes satisfy every wish.\n"));
}

TEST(AnswerTable, offers_resolutions_each_of_which_resolves_the_conflict) {
    const project::Project sample = samples().at("night-sky.tenter.json");
    int applied = 0;
    for (const auto& wishes : {std::vector<std::string>{"body.size=22-", "heading.ratio=body*1.6-"},
                               std::vector<std::string>{"heading.lines=1", "heading.size=30-"},
                               std::vector<std::string>{"body.measure=60-"}}) {
        const project::Project project = wishing(sample, wishes);
        const solve::Answer answer = solve::solve(project, allVariants(project), solveStore());
        const AnswerTable table = solve::answerTable(project, answer, solveStore());
        EXPECT_TRUE(table.rows.empty());
        ASSERT_TRUE(table.conflict) << wishes.front();
        EXPECT_EQ(table.conflict->wishes.size(), answer.conflict.wishes.size());
        ASSERT_FALSE(table.conflict->resolutions.empty()) << solve::toText(project, table);
        for (const solve::Resolution& one : table.conflict->resolutions) {
            EXPECT_EQ(one.isApplicable, one.relaxation.wish.kind != kindOf("words")) << one.text;
            if (!one.isApplicable) continue;
            EXPECT_NE(one.text.find("“" + solve::describe(one.relaxation.wish) + "”"), std::string::npos);
            const project::Project changed = solve::relaxed(project, one.relaxation);
            EXPECT_EQ(solve::solve(changed, allVariants(changed), solveStore()).solved.has_value(),
                      !one.relaxation.othersConflict)
                << one.text;
            ++applied;
        }
    }
    EXPECT_GT(applied, 3);
}

// A page zoomed by three is a third as wide as the window. CSSOM View 1, § 2: page zoom.
TEST(AnswerTable, shows_a_limit_of_a_zoomed_page_at_the_width_of_the_window) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    solve::Binding binding;
    binding.wish.kind = kindOf("zoom");
    binding.wish.role = "heading";
    binding.wish.value = 3;
    binding.width = project.leastWidth / 3;
    binding.size = 30;
    solve::Answer answer;
    answer.solved = project;
    answer.variants = {0};
    answer.bindings.push_back(binding);
    const AnswerTable table = solve::answerTable(project, answer, solveStore());
    const auto row = std::ranges::find_if(table.rows, [](const SizeRow& one) { return !one.limits.empty(); });
    ASSERT_NE(row, table.rows.end());
    EXPECT_EQ(row->role, "heading");
    EXPECT_NEAR(row->limits[0].width, project.leastWidth, 1e-6);
    EXPECT_NE(row->limits[0].text.find("at 330\u00A0px with 300\u00A0% browser zoom"), std::string::npos)
        << row->limits[0].text;
}

TEST(AnswerTable, names_the_reserve_for_longer_text_that_limits_a_size) {
    const project::Project walks = samples().at("shore-walks.tenter.json");
    const auto textWith = [&](const char* reserve) {
        const project::Project project = wishing(walks, {"heading.lines=2", "aim=largest", reserve});
        return answerText(project, solve::solve(project, {0}, solveStore()));
    };
    EXPECT_NE(textWith("reserve=35%")
                  .find("because of the wish “one line” with a reserve of 35\u00A0%, limited by the "),
              std::string::npos);
    EXPECT_EQ(textWith("reserve=0").find("reserve"), std::string::npos);
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::size_t codePoints(const std::string& text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

TEST(AnswerText, has_aligned_columns_and_then_every_limit) {
    for (const Solved& solved : solvedSamples()) {
        const std::vector<std::string> lines = linesOf(solve::toText(solved.project, solved.table));
        ASSERT_GT(lines.size(), solved.table.rows.size() + 3);
        EXPECT_EQ(lines[0], "Sizes in px at the two ends of each band:");
        // The last column is aligned to the right, so all rows end in the same column.
        for (std::size_t i = 0; i < solved.table.rows.size(); ++i) {
            const std::string& line = lines[3 + i];
            const SizeRow& row = solved.table.rows[i];
            EXPECT_EQ(codePoints(line), codePoints(lines[2])) << line;
            EXPECT_NE(line.find(solve::bandLabel(row)), std::string::npos) << line;
            EXPECT_NE(line.find(solve::roleLabel(row.role)), std::string::npos) << line;
            const std::string after = solve::sizeLabel(row.wide.after);
            const bool same = after == solve::sizeLabel(row.wide.before);
            EXPECT_TRUE(line.ends_with(same ? " same" : " " + after)) << line;
            for (const solve::Limit& limit : row.limits)
                EXPECT_EQ(std::ranges::count(lines, limit.fullText), 1) << limit.fullText;
        }
    }
}

TEST(Titles, are_what_people_call_variants_with_the_class_where_two_are_alike) {
    project::Project project;
    project.row().variants.resize(3);
    project.row().variants[0].className = "walks-trio";
    project.row().variants[0].name = "3";
    project.row().variants[1].className = "walks-solo";
    project.row().variants[1].name = "1 column";
    project.row().variants[2].className = "walks-other";
    EXPECT_EQ(project::titleOf(project.row().variants[0]), "walks-trio");
    EXPECT_EQ(project::titleOf(project.row().variants[1]), "walks-solo");
    EXPECT_EQ(project::titleOf(project.row().variants[2]), "walks-other");
    project.row().variants[0].name = "3 columns, home page";
    EXPECT_EQ(project::titleOf(project.row().variants[0]), "3 columns, home page");
    EXPECT_EQ(project::quotedTitle(project, 0), "“3 columns, home page”");
    project.row().variants[2].name = "3 columns, home page";
    EXPECT_EQ(project::quotedTitle(project, 0), "“3 columns, home page”, class walks-trio");
}

}  // namespace
}  // namespace tenter::test
