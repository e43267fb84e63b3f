// Roles with the same size in every variant.
#include "solve/allowed.h"
#include "solving.h"

namespace tenter::test {
namespace {

using solve::Answer;

/// A width, of `count` random ones, at which `role` differs between variants; empty if there is none.
std::string unequalAnywhere(const project::Project& solved, const std::string& role, int count,
                            std::mt19937& random) {
    std::vector<std::unique_ptr<layout::PreparedRow>> rows;
    for (const std::size_t variant : project::everyVariant(solved))
        rows.push_back(std::make_unique<layout::PreparedRow>(solved, variant, solveStore(), text::blink()));
    std::uniform_real_distribution<double> widths(solved.leastWidth, solved.mostWidth);
    const auto sizeAt = [&](const layout::PreparedRow& row, double width) {
        const auto index = std::ranges::find(row.roles(), role) - row.roles().begin();
        return row.fontSize(static_cast<std::uint32_t>(index), width);
    };
    for (int i = 0; i < count; ++i) {
        const double width = widths(random);
        const double size = sizeAt(*rows[0], width);
        for (std::size_t other = 1; other < rows.size(); ++other)
            if (std::abs(sizeAt(*rows[other], width) - size) > 1e-9)
                return solved.row().variants[other].className + " at " + std::to_string(width) + ": " +
                       std::to_string(sizeAt(*rows[other], width)) + ", not " + std::to_string(size);
    }
    return {};
}

/// A card in a variant `one` with one column and a variant `few` with two columns above 700 px.
project::Project oneAndFew(const std::string& wishes, const std::string& bandsOfOne = "[{}]",
                           const std::string& heading = "Observatory under the winter sky at ebb") {
    const std::string variants = R"([{"class": "one", "bands": )" + bandsOfOne + R"(},
        {"class": "few", "bands": [{"upTo": 700}, {"set": {"row": {"columns": 2}}}]}])";
    const project::Json json = project::Json::parse(
        R"({"format": "tenter-project", "version": 1, "name": "few", "range": {"from": 320, "to": 1200},
            "style": {"row": {"columns": 1, "width": "100%", "columnGap": "0"}, "card": )" +
        plainCard + R"(, "text": {
              "heading": {"family": ["Vollkorn"], "size": [[320, 22], [1200, 32]], "margin": {"top": "0", "bottom": "0"}},
              "body": {"family": ["Karla"], "size": [[320, 15], [1200, 19]], "margin": {"top": "0", "bottom": "0"}}}},
            "cards": [{"parts": [{"role": "heading", "copy": ")" +
        heading + R"("}, {"role": "body", "copy": "Out and back."}]}],
            "wishes": )" +
        wishes + R"(, "variants": )" + variants + "}");
    project::Problems problems;
    const auto made = project::parse(json.dump(), "few", {}, problems);
    EXPECT_TRUE(made) << (problems.empty() ? "" : problems[0].line());
    return made.value_or(project::Project());
}

units::Ramp rampIn(const project::Project& project, std::size_t variant, std::size_t band,
                   const std::string& role = "heading") {
    return *project::resolve(project, project.row().variants[variant], band).text.find(role)->size;
}

// Variants with different breakpoints and wrong sizes, at ten thousand widths.
TEST(SameInVariants, holds_at_any_width_of_every_sample_with_all_other_wishes) {
    std::mt19937 random(17);
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : {std::pair(1.0, 1.0), std::pair(1.7, 1.5), std::pair(0.6, 0.9)}) {
            project::Project project = wishing(sample, {"heading.variants=same", "body.variants=same"});
            spoil(project, first, last);
            const Answer answer = solveRelaxing(project);
            ASSERT_TRUE(answer.solved) << name << "\n" << answerText(project, answer);
            EXPECT_TRUE(answer.violated.empty()) << name;
            for (const char* role : {"heading", "body"})
                EXPECT_EQ(unequalAnywhere(*answer.solved, role, 10000, random), "")
                    << name << " " << role << " " << first;
            EXPECT_EQ(violatedAnywhere(*answer.solved, 2000, random), "") << name << " " << first;
        }
    }
}

TEST(SameInVariants, holds_on_a_grid) {
    std::mt19937 random(18);
    project::Project project = wishing(samples().at("shore-walks.tenter.json"),
                                       {"heading.variants=same", "button.variants=same", "grid=0.5px"});
    spoil(project, 1.5, 1.4);
    const Answer answer = solveRelaxing(project);
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    EXPECT_EQ(project.row().wishes->grid, units::Length::px(0.5));
    for (const char* role : {"heading", "button"}) {
        EXPECT_EQ(unequalAnywhere(*answer.solved, role, 10000, random), "") << role;
        for (const units::RampPoint& end :
             {rampIn(*answer.solved, 0, 0, role).from(), rampIn(*answer.solved, 0, 0, role).to()})
            EXPECT_EQ(std::remainder(end.size, 0.5), 0) << role << " " << end.size;
    }
}

// With common breakpoints each band has its own ramp, the same in every variant.
TEST(SameInVariants, keeps_one_ramp_per_band_for_common_breakpoints) {
    std::mt19937 random(19);
    const project::Project project = wishing(
        oneAndFew(R"({"roles": [{"role": "heading", "sameInVariants": true}]})",
                  R"([{"upTo": 700, "set": {"text": {"heading": {"size": 40}}}}, {}])"),
        {"heading.zoom=2000%", "heading.lines=1@-700", "heading.lines=2@700-", "heading.size=26-@900-"});
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    EXPECT_TRUE(answer.sharedRamps.empty());
    EXPECT_EQ(unequalAnywhere(*answer.solved, "heading", 10000, random), "");
    EXPECT_EQ(violatedAnywhere(*answer.solved, 3000, random), "");
    for (const std::size_t band : {0U, 1U})
        EXPECT_EQ(rampIn(*answer.solved, 0, band), rampIn(*answer.solved, 1, band));
    EXPECT_NE(rampIn(*answer.solved, 0, 0), rampIn(*answer.solved, 0, 1));
}

TEST(SameInVariants, notes_where_different_breakpoints_require_one_ramp) {
    project::Project project =
        oneAndFew(R"({"roles": [{"role": "heading", "lines": 2, "sameInVariants": true}]})");
    project.row().variants[1].bands[0].set.text.of("heading").size = units::Ramp::flat(30);
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    const std::string told = answerText(project, answer);
    EXPECT_NE(told.find("Heading has one ramp from 320 to 1200\u00A0px in every variant"), std::string::npos)
        << told;
    // The ramp is set once, in the style.
    EXPECT_FALSE(answer.solved->row().variants[1].bands[0].set.text.find("heading"));
    EXPECT_TRUE(answer.solved->row().style.text.find("heading")->size);
}

TEST(SameInVariants, keeps_sizes_that_are_equal_already) {
    const project::Project project = oneAndFew(R"({"roles": [{"role": "heading", "sameInVariants": true}]})");
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved);
    EXPECT_EQ(*answer.solved, project);
    EXPECT_TRUE(answer.bindings.empty()) << answerText(project, answer);
}

TEST(SameInVariants, solves_every_variant_whichever_is_requested) {
    project::Project project =
        oneAndFew(R"({"roles": [{"role": "heading", "lines": 2, "sameInVariants": true}]})");
    spoil(project, 1.8, 1.8);
    const Answer one = solve::solve(project, {0}, solveStore());
    const Answer all = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(one.solved && all.solved);
    EXPECT_EQ(*one.solved, *all.solved);
    project.row().wishes->roles[0].sameInVariants = false;
    EXPECT_EQ(solve::solve(project, {0}, solveStore()).solved->row().variants[1], project.row().variants[1]);
}

TEST(SameInVariants, names_the_places_that_limit_all_variants) {
    project::Project project = oneAndFew(
        R"({"aim": "largest", "roles": [{"role": "heading", "lines": 2, "sameInVariants": true}]})");
    project.row().variants[0].set.text.of("heading").size = *units::Ramp::between({320, 22}, {1200, 50});
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved);
    const std::string told = answerText(project, answer);
    EXPECT_NE(
        told.find(
            "the same size in every variant, limited at 320\u00A0px viewport width in “one” and just above "
            "700\u00A0px viewport width in “few”.\n"),
        std::string::npos)
        << told;
}

// Brute force: every pair of end sizes on the grid that is larger by more than a step violates a wish in one
// of the variants.
TEST(SameInVariants, has_no_larger_sizes_by_more_than_a_step) {
    for (const int lines : {1, 2}) {
        project::Project project = oneAndFew(
            R"({"aim": "largest", "slack": 0, "narrowSlack": 0, "grid": "0.25px", "roles": [{"role": "heading",
                "withColumn": false, "zoom": 20, "sameInVariants": true, "lines": )" +
            std::to_string(lines) + "}]}");
        const auto keeps = [](const project::Project& tried) {
            for (const std::size_t variant : {0U, 1U})
                for (const text::BreakProfile* profile : text::profiles()) {
                    Judge judge(tried, variant, *profile);
                    for (double width = 320; width <= 1200; width += 4)
                        if (!judge.violatedAt(width).empty()) return false;
                    if (!judge.violatedAt(700.01).empty()) return false;
                }
            return true;
        };
        const Answer answer = solve::solve(project, {0, 1}, solveStore());
        ASSERT_TRUE(answer.solved) << answerText(project, answer);
        ASSERT_TRUE(keeps(*answer.solved)) << lines;
        const units::Ramp found = rampIn(*answer.solved, 0, 0);
        ASSERT_EQ(found, rampIn(*answer.solved, 1, 1));
        // The objective counts the sizes at the ends of every band relative to the current sizes.
        const units::Ramp before = rampIn(project, 0, 0);
        const auto worth = [&](const units::Ramp& ramp) {
            double sum = 0;
            for (const double width : {320.0, 1200.0, 320.0, 700.0, 700.0, 1200.0})
                sum += ramp.sizeAt(width) / before.sizeAt(width);
            return sum;
        };
        const double step = 0.25;
        const double best =
            worth(*units::Ramp::between({320, found.from().size + step}, {1200, found.to().size + step}));
        int tried = 0;
        for (double from = 11; from <= 60; from += step) {
            for (double to = 11; to <= 90; to += step) {
                const auto ramp = *units::Ramp::between({320, from}, {1200, to});
                if (worth(ramp) <= best || worth(ramp) > best + 1) continue;
                ++tried;
                project.row().style.text.of("heading").size = ramp;
                ASSERT_FALSE(keeps(project)) << lines << ": " << from << " to " << to << " beats "
                                             << found.from().size << " to " << found.to().size;
            }
        }
        EXPECT_GT(tried, 500);
    }
}

const char* const longBody =
    "A slow walk over firm sand to the seal bank, with time for questions and for tea from the flask, and "
    "back along the dyke before the channel fills and the gate is shut for the night.";

// Two columns cannot have the minimum size of one column. With different sizes both variants can be solved.
TEST(SameInVariants, is_in_an_irreducible_conflict) {
    std::vector<project::Project> all;
    project::Project measured = oneAndFew(
        R"({"roles": [{"role": "body", "sameInVariants": true, "zoom": 20, "withColumn": false, "leastMeasure": 40, "mostMeasure": 75}]})");
    std::get<project::TextPart>(measured.row().cards[0].parts[1]).copy[0].text = longBody;
    all.push_back(measured);
    project::Project locked =
        oneAndFew(R"({"roles": [{"role": "heading", "sameInVariants": true, "zoom": 20, "locked": true}]})");
    locked.row().variants[0].set.text.of("heading").size = units::Ramp::flat(27);
    all.push_back(locked);
    all.push_back(oneAndFew(
        R"({"roles": [{"role": "heading", "sameInVariants": true, "breakpoints": "proportional", "zoom": 20}]})"));
    for (const project::Project& project : all) {
        const Answer answer = solve::solve(project, {0}, solveStore());
        const std::string told = answerText(project, answer);
        ASSERT_FALSE(answer.solved) << told;
        ASSERT_EQ(std::ranges::count(answer.conflict.wishes, kindOf("sameInVariants"), &solve::Wish::kind), 1)
            << told;
        EXPECT_FALSE(solve::solve(wishingOnly(project, answer.conflict.wishes), {0, 1}, solveStore()).solved)
            << told;
        for (std::size_t i = 0; i < answer.conflict.wishes.size(); ++i) {
            std::vector<solve::Wish> others = answer.conflict.wishes;
            others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
            const project::Project part = wishingOnly(project, others);
            const Answer without = solve::solve(part, {0, 1}, solveStore());
            EXPECT_TRUE(without.solved) << solve::describe(answer.conflict.wishes[i]) << "\n"
                                        << told << answerText(part, without);
            const project::Project eased = solve::relaxed(project, answer.conflict.relaxations[i]);
            EXPECT_TRUE(solve::solve(eased, {0}, solveStore()).solved)
                << solve::describe(answer.conflict.relaxations[i].wish) << "\n"
                << told;
        }
    }
    const Answer answer = solve::solve(all[0], {0}, solveStore());
    const std::string told = answerText(all[0], answer);
    EXPECT_NE(told.find("Body, variant “one”, "), std::string::npos) << told;
    EXPECT_NE(told.find("Body, variant “few”, "), std::string::npos) << told;
    EXPECT_NE(told.find("Remove “body with the same size in every variant”"), std::string::npos) << told;
}

// Sizes that follow the card are equal in cards of different widths only if they are constant.
TEST(SameInVariants, holds_for_sizes_that_follow_the_card) {
    std::mt19937 random(20);
    project::Project project =
        oneAndFew(R"({"roles": [{"role": "heading", "lines": 2, "sameInVariants": true}]})");
    project.row().style.text.of("heading").follow = project::Follow::Card;
    project.row().style.text.of("heading").size = *units::Ramp::between({300, 30}, {1000, 50});
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    EXPECT_EQ(unequalAnywhere(*answer.solved, "heading", 10000, random), "");
    EXPECT_EQ(violatedAnywhere(*answer.solved, 3000, random), "");
}

TEST(SameInVariants, names_sizes_that_follow_the_card_as_the_cause) {
    const project::Project wished = wishing(samples().at("ferry-words.tenter.json"), {"body.variants=same"});
    const Answer answer = solve::solve(wished, {0}, solveStore());
    ASSERT_FALSE(answer.solved);
    EXPECT_NE(answerText(wished, answer).find("Set “Grows with” to “Viewport width”."), std::string::npos)
        << answerText(wished, answer);
}

TEST(SameInVariants, holds_at_the_widths_of_the_wish) {
    std::mt19937 random(21);
    project::Project project = oneAndFew(R"({"roles": [{"role": "heading", "lines": 2},
        {"role": "heading", "from": 700, "sameInVariants": true}]})",
                                         R"([{"upTo": 700}, {}])");
    project.row().variants[0].set.text.of("heading").size = units::Ramp::flat(18);
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    EXPECT_EQ(rampIn(*answer.solved, 0, 1), rampIn(*answer.solved, 1, 1));
    EXPECT_NE(rampIn(*answer.solved, 0, 0).sizeAt(320), rampIn(*answer.solved, 1, 0).sizeAt(320));
}

// A user who drags a ramp sees the bounds of the other variants too.
TEST(SameInVariants, includes_the_bounds_of_other_variants) {
    const auto mostAt = [](const project::Project& project, double width) {
        double most = 1e9;
        for (const sweep::Curve& curve : solve::allowedSizes(project, 0, "heading", solveStore()).most)
            for (std::size_t i = 0; i + 1 < curve.size(); ++i)
                if (curve[i].width <= width && width <= curve[i + 1].width)
                    most = std::min(most, curve[i].value + (curve[i + 1].value - curve[i].value) *
                                                               (width - curve[i].width) /
                                                               (curve[i + 1].width - curve[i].width));
        return most;
    };
    project::Project project = oneAndFew(R"({"roles": [{"role": "heading", "lines": 2}]})");
    const double alone = mostAt(project, 800);
    project.row().wishes->roles[0].sameInVariants = true;
    EXPECT_NEAR(mostAt(project, 800), alone / 2, 0.01);
    project.row().wishes->roles[0].from = 900;
    EXPECT_NEAR(mostAt(project, 800), mostAt(oneAndFew(R"({"roles": []})"), 800), 0.01);
}

}  // namespace
}  // namespace tenter::test
