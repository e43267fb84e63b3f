// Small cards, for which the best answer can be found by brute force.
#include <array>
#include <set>

#include "solve/nearness_objective.h"
#include "solving.h"
#include "units/number.h"

namespace tenter::test {
namespace {

using solve::Answer;

/// One band, one column, no spacing: lines are as wide as the page.
project::Project smallCard(const std::string& heading, const std::string& body, const std::string& wishes,
                           const std::string& styles = R"({
    "heading": {"family": ["Vollkorn"], "size": [[320, 22], [800, 32]], "margin": {"top": "0", "bottom": "0"}},
    "body": {"family": ["Karla"], "size": [[320, 15], [800, 19]], "margin": {"top": "0", "bottom": "0"}}})") {
    return projectOf(
        R"({"row": {"columns": 1, "width": "100%"}, "card": )" + plainCard + R"(, "text": )" + styles + "}",
        "[{}]",
        R"([{"parts": [{"role": "heading", "copy": ")" + heading + R"("}, {"role": "body", "copy": ")" +
            body + R"("}]}])",
        R"("range": {"from": 320, "to": 800}, "wishes": )" + wishes + ", ");
}

units::Ramp rampOf(const project::Project& project, const std::string& role) {
    return *project::resolve(project, project.row().variants[0], 0).text.find(role)->size;
}

void setRamp(project::Project& project, const std::string& role, double from, double to) {
    project.row().variants[0].set.text.of(role).size = units::Ramp::between({320, from}, {800, to});
}

/// True if the row satisfies its wishes at every second width of the range, under both break profiles.
bool satisfiesWishes(const project::Project& project) {
    for (const text::BreakProfile* profile : text::profiles()) {
        Judge judge(project, 0, *profile);
        for (double width = project.leastWidth; width <= project.mostWidth; width += 2)
            if (!judge.violatedAt(width).empty()) return false;
    }
    return true;
}

const char* const noMargins = R"("slack": 0, "narrowSlack": 0, "grid": "0.25px")";

// Brute force: every pair of end sizes on the same grid that is larger by more than a step violates a wish.
TEST(SmallCard, has_no_larger_sizes_by_more_than_a_step) {
    for (const int lines : {1, 2, 3}) {
        for (const char* heading :
             {"Lantern walk to the seal bank", "Observatory under the winter sky at ebb"}) {
            project::Project project = smallCard(heading, "Low tide",
                                                 std::string(R"({"aim": "largest", "roles": [
                    {"role": "heading", "withColumn": false, "zoom": 20, "lines": )") +
                                                     std::to_string(lines) + "}], " + noMargins + "}");
            const Answer answer = solve::solve(project, {0}, solveStore());
            ASSERT_TRUE(answer.solved) << answerText(project, answer);
            ASSERT_TRUE(satisfiesWishes(*answer.solved)) << heading << " " << lines;
            const units::Ramp found = rampOf(*answer.solved, "heading");
            // The objective counts each end relative to its current size.
            const auto worth = [](double from, double to) { return from / 22 + to / 32; };
            const double step = 0.25;
            const double best = worth(found.from().size, found.to().size) + worth(step, step);
            int tried = 0;
            for (double from = 11; from <= 90; from += step) {
                for (double to = 11; to <= 220; to += step) {
                    if (worth(from, to) <= best || worth(from, to) > best + 0.5) continue;
                    ++tried;
                    setRamp(project, "heading", from, to);
                    ASSERT_FALSE(satisfiesWishes(project))
                        << heading << " " << lines << ": " << from << " to " << to << " beats "
                        << found.from().size << " to " << found.to().size;
                }
            }
            EXPECT_GT(tried, 1000);
        }
    }
}

/// A role's sizes at the two ends of its one band, before (`now`) and after (`then`), CSS px.
struct Ends {
    double share = 0;  ///< of a place's weight
    std::array<double, 2> now{}, then{};

    [[nodiscard]] double times(std::size_t end) const { return then[end] / now[end]; }
    [[nodiscard]] double weight(std::size_t end) const { return share * now[end] / ((now[0] + now[1]) / 2); }
};

/// The NearnessObjective for two roles, of which the first is the main role, computed from its definition:
/// the optimal common factors are among the factors of the sizes.
double farFrom(const std::array<Ends, 2>& roles) {
    const std::array<double, 5> factors{1, roles[0].times(0), roles[0].times(1), roles[1].times(0),
                                        roles[1].times(1)};
    const double whole = roles[0].weight(0) + roles[0].weight(1) + roles[1].weight(0) + roles[1].weight(1);
    double least = 1e9;
    for (const double row : factors) {
        double sum = solve::variantWeight * whole * std::abs(row - 1);
        for (const std::size_t end : {0U, 1U}) {
            double here = 1e9;
            for (const double place : factors) {
                double cost = 0;
                for (const Ends& role : roles)
                    cost += role.weight(end) * (std::abs(role.times(end) - place) +
                                                solve::bandEndWeight * std::abs(place - row));
                here = std::min(here, cost);
            }
            sum += here;
        }
        least = std::min(least, sum);
    }
    for (const Ends& role : roles)
        least += role.share * solve::slopeWeight * std::abs(role.times(1) - role.times(0));
    return least + solve::largestChangeWeight * whole *
                       std::max(std::abs(roles[0].times(0) - 1), std::abs(roles[0].times(1) - 1));
}

// The same for the nearest sizes of a role that is not the main role: all sizes that are nearer by more than
// a step violate a wish.
TEST(SmallCard, has_no_nearer_sizes_by_more_than_a_step) {
    for (const int lines : {1, 2}) {
        project::Project project = smallCard("Observatory under the winter sky at ebb",
                                             "Out by the hard and back along the bank, slowly.",
                                             R"({"roles": [{"role": "body", "locked": true},
                          {"role": "heading", "withColumn": false, "zoom": 20, "lines": )" +
                                                 std::to_string(lines) + "}], " + noMargins + "}");
        setRamp(project, "heading", 44, 68);
        const Answer answer = solve::solve(project, {0}, solveStore());
        ASSERT_TRUE(answer.solved) << answerText(project, answer);
        const units::Ramp found = rampOf(*answer.solved, "heading");
        const auto far = [&](double from, double to) {
            return farFrom({Ends{solve::mainRoleShare, {15, 19}, {15, 19}},
                            Ends{1 - solve::mainRoleShare, {44, 68}, {from, to}}});
        };
        const double step = 0.25;
        const double nearest = far(found.from().size, found.to().size);
        // The most that a step at either end may add to the objective.
        const double least = nearest - 3 * step / 44;
        EXPECT_GT(least, 0);
        int tried = 0;
        for (double from = 11; from <= 80; from += step)
            for (double to = 11; to <= 120; to += step) {
                // All sizes that are a little nearer, and some of those that are much nearer.
                const double here = far(from, to);
                const bool isCoarse = std::fmod(from, 4) == 0 && std::fmod(to, 4) == 0;
                if (here >= least || (here < 0.95 * least && !isCoarse)) continue;
                ++tried;
                setRamp(project, "heading", from, to);
                ASSERT_FALSE(satisfiesWishes(project)) << from << " to " << to << " instead of "
                                                       << found.from().size << " to " << found.to().size;
            }
        EXPECT_GT(tried, 200);
    }
}

TEST(SmallCard, keeps_sizes_that_satisfy_its_wishes) {
    const project::Project project = smallCard("Low tide", "Out and back.", R"({"roles": []})");
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved);
    EXPECT_EQ(*answer.solved, project);
    EXPECT_TRUE(answer.bindings.empty()) << answerText(project, answer);
}

TEST(SmallCard, keeps_a_locked_role) {
    const project::Project project =
        smallCard("Lantern walk to the seal bank", "Out and back.",
                  R"({"aim": "largest", "roles": [{"role": "heading", "locked": true, "zoom": 5},
                                                  {"role": "body", "mostSize": 20}]})");
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    EXPECT_EQ(rampOf(*answer.solved, "heading"), rampOf(project, "heading"));
    EXPECT_EQ(rampOf(*answer.solved, "body").to().size, 20);
}

TEST(SmallCard, has_sizes_on_the_grid) {
    for (const double step : {0.5, 1.0, 0.0625 * 16}) {
        const project::Project project =
            wishing(smallCard("Observatory under the winter sky", "Out and back.", R"({"roles": []})"),
                    {"heading.lines=1", "grid=" + units::number(step) + "px"});
        const Answer answer = solve::solve(project, {0}, solveStore());
        ASSERT_TRUE(answer.solved) << answerText(project, answer);
        for (const char* role : {"heading", "body"})
            for (const units::RampPoint& end :
                 {rampOf(*answer.solved, role).from(), rampOf(*answer.solved, role).to()})
                EXPECT_EQ(std::remainder(end.size, step), 0) << role << " " << end.size;
    }
}

// At a ratio of seven to six, whole px are 21 and 18, or 28 and 24: far from 25 and 21.
TEST(SmallCard, finds_grid_sizes_that_are_not_the_nearest) {
    const project::Project project =
        wishing(smallCard("Low tide", "Out and back.", R"({"roles": []})", R"({
    "heading": {"family": ["Vollkorn"], "size": [[320, 24], [800, 25]], "margin": {"top": "0", "bottom": "0"}},
    "body": {"family": ["Karla"], "size": [[320, 21], [800, 21]], "margin": {"top": "0", "bottom": "0"}}})"),
                {"heading.ratio=body*1.16666-", "body.ratio=heading*0.8567-", "grid=1px"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    for (const double width : {320.0, 800.0}) {
        const double heading = rampOf(*answer.solved, "heading").sizeAt(width);
        EXPECT_EQ(std::remainder(heading, 7), 0) << heading;
        EXPECT_EQ(heading * 6, rampOf(*answer.solved, "body").sizeAt(width) * 7);
    }
}

// “None on the grid” is reported only if there are none.
TEST(SmallCard, reports_a_grid_without_sizes) {
    int none = 0;
    for (double least = 21; least < 27; least += 0.75) {
        const project::Project project =
            wishing(smallCard("Low tide", "Out and back.", R"({"roles": []})"),
                    {"heading.size=" + units::number(least) + "-" + units::number(least + 1.5), "grid=4px",
                     "heading.growth=0.2"});
        const Answer answer = solve::solve(project, {0}, solveStore());
        const bool isThere = std::floor((least + 1.5) / 4) * 4 >= least;
        EXPECT_EQ(answer.solved.has_value(), isThere) << least;
        EXPECT_EQ(answer.offGrid, !isThere) << least;
        none += isThere ? 0 : 1;
    }
    EXPECT_GT(none, 2);
}

TEST(SmallCard, couples_roles_by_their_ratio) {
    const project::Project card = smallCard("Low tide", "Out and back.", R"({"roles": []})");
    const auto ratioAt = [](const project::Project& project, double width) {
        return rampOf(project, "heading").sizeAt(width) / rampOf(project, "body").sizeAt(width);
    };
    const project::Project exactly = wishing(card, {"heading.ratio=body*1.6"});
    const Answer one = solve::solve(exactly, {0}, solveStore());
    ASSERT_TRUE(one.solved) << answerText(exactly, one);
    const project::Project least = wishing(card, {"heading.ratio=body*1.6-"});
    const Answer other = solve::solve(least, {0}, solveStore());
    ASSERT_TRUE(other.solved) << answerText(least, other);
    for (const double width : {320.0, 500.0, 800.0}) {
        EXPECT_NEAR(ratioAt(*one.solved, width), 1.6, 0.002);
        EXPECT_GE(ratioAt(*other.solved, width), 1.6 - 1e-9);
    }
    EXPECT_GT(ratioAt(*other.solved, 800), 1.65);
}

// After scaling by 1.7, the body is bounded by its measure and the kicker by nothing. The kicker must not
// become as large as the body.
TEST(Solve, keeps_a_smaller_role_smaller) {
    project::Project project = samples().at("ferry-words.tenter.json");
    spoil(project, 1.7, 1.7);
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    const auto leadAt = [](const project::Project& row, double width) {
        const auto size = [&](const char* role) {
            return project::resolve(row, row.row().variants[0], 0).text.find(role)->size->sizeAt(width);
        };
        return size("body") / size("kicker");
    };
    for (const double width : {240.0, 460.0})
        EXPECT_GT(leadAt(*answer.solved, width), std::sqrt(leadAt(project, width)) - 0.01);
}

// The button labels are slightly larger than the body and have to shrink. The body must not shrink with them.
TEST(Solve, ignores_small_leads) {
    const project::Project project = samples().at("season.tenter.json");
    const Answer answer = solve::solve(project, {0, 1}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    for (const std::size_t band : {1U, 2U, 3U})
        EXPECT_NEAR(project::resolve(*answer.solved, answer.solved->row().variants[0], band)
                        .text.find("body")
                        ->size->from()
                        .size,
                    15.5, 0.005);
}

TEST(SmallCard, satisfies_a_limit_of_growth) {
    const project::Project project =
        wishing(smallCard("Low tide", "Out and back.", R"({"roles": []})"), {"heading.growth=0.5"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved) << answerText(project, answer);
    const units::Ramp ramp = rampOf(*answer.solved, "heading");
    EXPECT_NEAR(ramp.to().size - ramp.from().size, 0.5 * 4.8, 0.011);
}

TEST(SmallCard, keeps_room_for_longer_text) {
    const project::Project plain = wishing(
        smallCard("Lantern walk to the seal bank", "Out and back.", R"({"roles": []})"),
        {"heading.lines=1", "heading.zoom=2000%", "heading.size=1-", "aim=largest", "heading.column=free"});
    const project::Project reserved = wishing(plain, {"reserve=25%"});
    const Answer all = solve::solve(plain, {0}, solveStore());
    const Answer less = solve::solve(reserved, {0}, solveStore());
    ASSERT_TRUE(all.solved && less.solved);
    EXPECT_NEAR(rampOf(*all.solved, "heading").from().size / rampOf(*less.solved, "heading").from().size,
                1.25, 0.005);
}

TEST(SmallCard, ignores_cards_that_the_wishes_ignore) {
    project::Project project = smallCard("Observatory of the northern saltmarshes and mudflats", "Out.",
                                         R"({"roles": [{"role": "heading", "lines": 1}]})");
    project.row().cards.push_back(project.row().cards[0]);
    std::get<project::TextPart>(project.row().cards[1].parts[0]).copy = {
        {project::Run::Kind::Plain, "Ebb", ""}};
    const Answer both = solve::solve(project, {0}, solveStore());
    const project::Project without = wishing(project, {"without=1"});
    const Answer second = solve::solve(without, {0}, solveStore());
    ASSERT_TRUE(both.solved && second.solved);
    EXPECT_LT(rampOf(*both.solved, "heading").from().size, 22);
    EXPECT_EQ(rampOf(*second.solved, "heading"), rampOf(project, "heading"));
}

TEST(SmallCard, shows_which_word_limits_and_what_a_shorter_one_allows) {
    const project::Project project =
        wishing(smallCard("Saltmarsh observatory", "Out and back.", R"({"roles": []})"),
                {"heading.lines=1", "heading.zoom=2000%", "aim=largest", "heading.column=free", "slack=0",
                 "narrow-slack=0"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(answer.solved);
    const auto binding = std::ranges::find_if(
        answer.bindings, [](const solve::Binding& one) { return one.wish.kind == kindOf("lines"); });
    ASSERT_NE(binding, answer.bindings.end()) << answerText(project, answer);
    EXPECT_EQ(binding->word, "observatory");
    EXPECT_EQ(binding->text.card, 0U);
    EXPECT_EQ(binding->text.part, 0U);
    // Letters differ in width: those removed here are near the mean of the word.
    project::Project shorter = project;
    std::get<project::TextPart>(shorter.row().cards[0].parts[0]).copy[0].text = "Saltmarsh observat";
    const Answer less = solve::solve(shorter, {0}, solveStore());
    ASSERT_TRUE(less.solved && binding->sizeWithShorterWord);
    const double size = rampOf(*less.solved, "heading").sizeAt(binding->width);
    EXPECT_NEAR(size / *binding->sizeWithShorterWord, 1, 0.02);
    EXPECT_GT(*binding->sizeWithShorterWord, binding->size * 1.1);
    const std::string text = answerText(project, answer);
    EXPECT_NE(text.find("limited by the word “observatory” (card 1). "), std::string::npos) << text;
    EXPECT_NE(text.find("With three letters fewer in this word, the limit is "), std::string::npos) << text;
}

/// Wishes of several kinds that cannot be satisfied together.
std::vector<std::vector<std::string>> contradictions() {
    return {{"heading.lines=1", "heading.size=30-"},
            {"body.size=18-", "body.size=-16@500-"},
            {"heading.ratio=body*2-", "body.size=17-", "heading.lines=1"},
            {"heading.size=locked", "heading.growth=0.2"},
            {"body.measure=-40", "body.size=-14"},
            {"heading.size=30-@700-", "heading.size=-20@-330", "heading.growth=0.4"},
            {"heading.zoom=210%", "heading.size=20-@700-", "heading.size=-15@-330"}};
}

TEST(Conflict, is_irreducible) {
    const project::Project card =
        smallCard("Observatory under the winter sky at ebb",
                  "A slow walk over firm sand to the seal bank, with time for questions and for tea.",
                  R"({"roles": []})");
    for (const auto& wishes : contradictions()) {
        const project::Project project = wishing(card, wishes);
        const Answer answer = solve::solve(project, {0}, solveStore());
        ASSERT_FALSE(answer.solved) << wishes.front();
        const std::string told = answerText(project, answer);
        ASSERT_GE(answer.conflict.wishes.size(), 2U) << told;
        ASSERT_EQ(answer.conflict.relaxations.size(), answer.conflict.wishes.size());
        EXPECT_FALSE(solve::solve(wishingOnly(card, answer.conflict.wishes), {0}, solveStore()).solved)
            << told;
        // Without any one of them the others can be satisfied.
        for (std::size_t i = 0; i < answer.conflict.wishes.size(); ++i) {
            std::vector<solve::Wish> others = answer.conflict.wishes;
            others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
            const project::Project part = wishingOnly(card, others);
            const Answer without = solve::solve(part, {0}, solveStore());
            EXPECT_TRUE(without.solved) << solve::describe(answer.conflict.wishes[i]) << "\n"
                                        << told << answerText(part, without);
        }
    }
}

TEST(Conflict, has_the_smallest_relaxation_of_each_wish) {
    const project::Project card =
        smallCard("Observatory under the winter sky at ebb",
                  "A slow walk over firm sand to the seal bank, with time for questions and for tea.",
                  R"({"roles": []})");
    int figures = 0;
    for (const auto& wishes : contradictions()) {
        const project::Project project = wishing(card, wishes);
        const Answer answer = solve::solve(project, {0}, solveStore());
        for (std::size_t i = 0; i < answer.conflict.relaxations.size(); ++i) {
            const solve::Relaxation& relaxation = answer.conflict.relaxations[i];
            if (relaxation.wish.kind == kindOf("words")) continue;
            // If there is a second conflict, the relaxation is for this one alone and says so.
            const solve::Relaxation none{answer.conflict.wishes[i], true};
            const bool ends =
                solve::solve(solve::relaxed(project, none), {0}, solveStore()).solved.has_value();
            EXPECT_EQ(relaxation.othersConflict, !ends) << solve::describe(relaxation.wish);
            if (!ends) continue;
            const project::Project eased = solve::relaxed(project, relaxation);
            EXPECT_TRUE(solve::solve(eased, {0}, solveStore()).solved) << solve::describe(relaxation.wish);
            if (relaxation.removed) continue;
            ++figures;
            // A fifth of the change is not enough.
            solve::Relaxation less = relaxation;
            const double wished = answer.conflict.wishes[i].value;
            less.wish.value = wished + (relaxation.wish.value - wished) / 5;
            if (less.wish.kind == kindOf("lines")) less.wish.value = relaxation.wish.value - 1;
            EXPECT_FALSE(solve::solve(solve::relaxed(project, less), {0}, solveStore()).solved)
                << solve::describe(less.wish) << " of " << solve::describe(relaxation.wish);
        }
    }
    EXPECT_GT(figures, 10);
}

// One line and 30 px conflict by themselves. The ratio to the body and its readable minimum are not a part of
// the conflict.
TEST(Conflict, prefers_two_explicit_wishes_to_three) {
    const project::Project project =
        wishing(smallCard("Observatory under the winter sky at ebb", "Out and back.", R"({"roles": []})"),
                {"heading.lines=1", "heading.size=30-", "heading.ratio=body*1.15-"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_FALSE(answer.solved);
    std::vector<const solve::Constraint*> kinds;
    for (const solve::Wish& wish : answer.conflict.wishes)
        kinds.push_back(wish.kind);
    EXPECT_EQ(kinds, (std::vector{kindOf("lines"), kindOf("leastSize")})) << answerText(project, answer);
}

// The useful relaxations resolve the whole conflict, and the type stays readable.
TEST(Conflict, offers_only_useful_relaxations) {
    const project::Project card = samples().at("night-sky.tenter.json");
    for (const auto& wishes : {std::vector<std::string>{"body.size=22-", "heading.ratio=body*1.6-"},
                               std::vector<std::string>{"heading.lines=1", "heading.size=30-"},
                               std::vector<std::string>{"body.measure=60-"}}) {
        const project::Project project = wishing(card, wishes);
        const Answer answer = solve::solve(project, allVariants(project), solveStore());
        ASSERT_FALSE(answer.solved) << wishes.front();
        const std::vector<solve::Relaxation> ways = solve::usefulRelaxations(answer.conflict);
        ASSERT_FALSE(ways.empty()) << answerText(project, answer);
        for (const solve::Relaxation& way : ways) {
            const project::Project eased = solve::relaxed(project, way);
            EXPECT_EQ(solve::solve(eased, allVariants(eased), solveStore()).solved.has_value(),
                      !way.othersConflict)
                << solve::describe(way.wish) << "\n"
                << answerText(project, answer);
            EXPECT_TRUE(way.wish.kind != kindOf("leastSize") || way.wish.value >= 11)
                << solve::describe(way.wish);
        }
    }
}

// A text that only just fits has no room for a third more.
TEST(Conflict, names_the_reserve_as_the_cause) {
    const project::Project card =
        smallCard("Lantern walk to the seal bank", "Out and back.", R"({"roles": []})");
    const project::Project project =
        wishing(card, {"heading.lines=1", "heading.size=19-", "heading.column=free", "reserve=35%"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_FALSE(answer.solved);
    EXPECT_TRUE(answer.conflict.reserveOnly) << answerText(project, answer);
    const project::Project none = wishing(project, {"reserve=0%"});
    EXPECT_TRUE(solve::solve(none, {0}, solveStore()).solved);
}

TEST(Conflict, says_where_it_is_and_by_which_word) {
    const project::Project project =
        wishing(smallCard("Saltmarsh observatory", "Out and back.", R"({"roles": []})"),
                {"heading.lines=1", "heading.size=40-"});
    const Answer answer = solve::solve(project, {0}, solveStore());
    const solve::AnswerTable table = solve::answerTable(project, answer, solveStore());
    ASSERT_TRUE(table.conflict);
    EXPECT_EQ(table.conflict->wishes,
              (std::vector<std::string>{"heading on one line", "heading at least 40\u00A0px"}));
    EXPECT_EQ(
        solve::summary(*table.conflict),
        "No sizes satisfy these wishes together: “heading on one line” and “heading at least 40\u00A0px”.");
    ASSERT_FALSE(table.conflict->places.empty());
    const solve::Limit& place = table.conflict->places.front();
    EXPECT_EQ(place.width, 320);
    EXPECT_TRUE(place.fullText.starts_with("Heading, 320–800\u00A0px (1 column): at most "))
        << place.fullText;
    EXPECT_NE(place.fullText.find("\u00A0px at 320\u00A0px viewport width, because of the wish “one line”, "
                                  "limited by the word “observatory” (card 1)"),
              std::string::npos)
        << place.fullText;
    EXPECT_TRUE(std::ranges::any_of(table.conflict->resolutions, [](const solve::Resolution& one) {
        return one.text == "Change “heading on one line” to “heading in at most 2 lines”" && one.isApplicable;
    })) << answerText(project, answer);
    const std::string text = answerText(project, answer);
    for (const char* part :
         {"  “heading on one line”\n", "Change “heading on one line” to “heading in at most 2 lines”\n"})
        EXPECT_NE(text.find(part), std::string::npos) << text;
}

TEST(Solve, splits_ramps_only_if_the_wishes_need_it) {
    const std::string styles = R"({"heading": {"family": ["Vollkorn"], "size": [[320, 24], [1600, 34]],
                                   "margin": {"top": "0", "bottom": "0"}}})";
    project::Project project = projectOf(
        R"({"row": {"columns": 1, "width": "100%"}, "card": )" + plainCard + R"(, "text": )" + styles + "}",
        R"([{"upTo": 700}, {"set": {"row": {"columns": 4}}}])",
        R"([{"parts": [{"role": "heading", "copy": "Lantern walk to the seal bank"}]}])",
        R"("range": {"from": 320, "to": 1600}, )");
    // The heading fits on one line on a phone, but not in a quarter of a page twice as wide.
    const project::Project tight = wishing(project, {"heading.lines=1@-700", "heading.lines=3@700-",
                                                     "heading.size=20-@-700", "heading.column=free"});
    const Answer split = solve::solve(tight, {0}, solveStore());
    ASSERT_TRUE(split.solved) << answerText(tight, split);
    const project::Project loose = wishing(project, {"heading.lines=3"});
    const Answer common = solve::solve(loose, {0}, solveStore());
    ASSERT_TRUE(common.solved) << answerText(loose, common);
    EXPECT_FALSE(common.solved->row().variants[0].bands[0].set.text.find("heading"));
    std::mt19937 random(3);
    EXPECT_EQ(violatedAnywhere(*split.solved, 3000, random), "");
    EXPECT_EQ(violatedAnywhere(*common.solved, 3000, random), "");
}

TEST(Solve, does_not_change_a_style_that_other_variants_use) {
    project::Project project = samples().at("ferry-words.tenter.json");
    spoil(project, 1.6, 1.6);
    const Answer one = solve::solve(project, {0}, solveStore());
    ASSERT_TRUE(one.solved) << answerText(project, one);
    EXPECT_EQ(one.solved->row().style, project.row().style);
    EXPECT_EQ(one.solved->row().variants[1], project.row().variants[1]);
    EXPECT_NE(one.solved->row().variants[0], project.row().variants[0]);
}

// With each relaxation the wishes can be satisfied.
TEST(SmallCard, can_be_solved_with_each_relaxation) {
    const project::Project project = smallCard("Low tide", "Walk to the bank", R"({"roles": [
        {"role": "heading", "ratioTo": "body", "ratio": 3, "mostSize": 30},
        {"role": "body", "leastSize": 15}]})");
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_FALSE(answer.solved);
    std::set<const solve::Constraint*> kinds;
    for (const solve::Relaxation& relaxation : answer.conflict.relaxations) {
        kinds.insert(relaxation.wish.kind);
        const project::Project eased = solve::relaxed(project, relaxation);
        EXPECT_TRUE(solve::solve(eased, {0}, solveStore()).solved) << solve::describe(relaxation.wish);
    }
    EXPECT_TRUE(kinds.contains(kindOf("ratio")));
    EXPECT_GE(kinds.size(), 2U);
}

TEST(SmallCard, shows_where_a_measure_limits_the_size) {
    const project::Project project = smallCard(
        "Low tide",
        "Two slow miles across the flats while the sea is out, looking under weed and into pools, and "
        "back before the channel fills.",
        R"({"roles": [{"role": "body", "leastMeasure": 60, "leastSize": 20}]})");
    const Answer answer = solve::solve(project, {0}, solveStore());
    ASSERT_FALSE(answer.solved);
    const solve::AnswerTable table = solve::answerTable(project, answer, solveStore());
    ASSERT_TRUE(table.conflict && !table.conflict->places.empty()) << answerText(project, answer);
    const solve::Limit& place = table.conflict->places.front();
    EXPECT_EQ(place.binding.wish.kind, kindOf("leastMeasure"));
    EXPECT_EQ(place.width, 320);
    EXPECT_NE(place.text.find("because of the wish “at least 60 characters per line”, "
                              "limited by the text “"),
              std::string::npos)
        << place.text;
    EXPECT_NE(place.text.find("text “Two slow miles"), std::string::npos) << place.text;
}

}  // namespace
}  // namespace tenter::test
