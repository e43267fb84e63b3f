// Sizes that follow the card width: the best fit to those that follow the page width, and solved like them.
#include "solve/card_scale.h"

#include "project/card_scale.h"
#include "solving.h"

namespace tenter::test {
namespace {

/// The sum of squared changes of a role's size over every variant and every eighth px of width.
double changeOf(const project::Project& before, const project::Project& after, const std::string& role) {
    double sum = 0;
    for (const std::size_t variant : allVariants(before)) {
        const layout::PreparedRow was(before, variant, solveStore(), text::blink());
        const layout::PreparedRow is(after, variant, solveStore(), text::blink());
        const auto style = [&](const layout::PreparedRow& row) {
            return static_cast<std::uint32_t>(std::ranges::find(row.roles(), role) - row.roles().begin());
        };
        for (double width = before.leastWidth; width <= before.mostWidth; width += 8)
            sum += std::pow(is.fontSize(style(is), width) - was.fontSize(style(was), width), 2);
    }
    return sum;
}

/// Each sample before and after the conversion. Samples whose parts are aligned by subgrid are left out:
/// their cards cannot be containers.
std::map<std::string, std::pair<project::Project, solve::CardScale>> turnedSamples() {
    std::map<std::string, std::pair<project::Project, solve::CardScale>> turned;
    for (const auto& [name, sample] : samples()) {
        project::Problems problems;
        auto scale = solve::toCardScale(sample, solveStore(), problems);
        EXPECT_EQ(scale.has_value(), problems.empty()) << name;
        if (scale) turned.emplace(name, std::pair(sample, std::move(*scale)));
    }
    return turned;
}

TEST(CardScale, sets_each_role_once_for_every_variant) {
    const auto turned = turnedSamples();
    EXPECT_GE(turned.size(), 3U);
    for (const auto& [name, both] : turned) {
        const project::Project& project = both.second.project;
        const auto roles = project::usedRoles(project);
        EXPECT_EQ(both.second.roles.size(), roles.size()) << name;
        for (const std::string& role : roles) {
            EXPECT_EQ(project.row().style.text.find(role)->follow, project::Follow::Card) << name << role;
            for (const project::Variant& variant : project.row().variants)
                for (std::size_t band = 0; band < variant.bands.size(); ++band)
                    EXPECT_EQ(project::resolve(project, variant, band).text.find(role)->size,
                              project.row().style.text.find(role)->size)
                        << name << " " << role;
        }
        project::Problems problems;
        EXPECT_TRUE(
            project::parse(project::write(project), name, TENTER_SOURCE_DIR "/sample-projects", problems));
    }
}

TEST(CardScale, fits_the_current_sizes_better_than_similar_ramps) {
    std::mt19937 random(31);
    std::uniform_real_distribution<double> little(-0.6, 0.6);
    for (const auto& [name, both] : turnedSamples()) {
        for (const solve::CardRamp& one : both.second.roles) {
            const double best = changeOf(both.first, both.second.project, one.role);
            for (int i = 0; i < 12; ++i) {
                project::Project other = both.second.project;
                units::RampPoint from = one.ramp.from();
                units::RampPoint to = one.ramp.to();
                from.size += little(random);
                to.size += one.ramp.isFlat() ? from.size - to.size : little(random);
                if (const auto ramp = units::Ramp::between(from, to))
                    other.row().style.text.of(one.role).size = *ramp;
                // The sizes are sampled at other widths here, and the ramp is rounded to 0.01 px.
                EXPECT_GE(changeOf(both.first, other, one.role), best * 0.99 - 0.5)
                    << name << " " << one.role;
            }
        }
    }
}

TEST(CardScale, reports_the_largest_change_and_what_browsers_need) {
    for (const auto& [name, both] : turnedSamples()) {
        for (const solve::CardRamp& one : both.second.roles) {
            const layout::PreparedRow was(both.first, one.variant, solveStore(), text::blink());
            const layout::PreparedRow is(both.second.project, one.variant, solveStore(), text::blink());
            const auto style = [&](const layout::PreparedRow& row) {
                return static_cast<std::uint32_t>(std::ranges::find(row.roles(), one.role) -
                                                  row.roles().begin());
            };
            EXPECT_NEAR(was.fontSize(style(was), one.width), one.before, 1e-6) << name << one.role;
            EXPECT_NEAR(is.fontSize(style(is), one.width), one.after, 0.02) << name << one.role;
        }
        const auto said = solve::describe(both.first, both.second);
        ASSERT_EQ(said.size(), both.second.roles.size() + 1);
        EXPECT_NE(said.back().find("container"), std::string::npos);
    }
}

// Judged like sizes that follow the page: by the ordinary layout at random widths.
TEST(CardScale, is_solved_like_sizes_that_follow_the_page) {
    std::mt19937 random(5);
    for (auto [name, both] : turnedSamples()) {
        project::Project project = both.second.project;
        spoil(project, 1.5, 1.8);
        const solve::Answer answer = solveRelaxing(project);
        ASSERT_TRUE(answer.solved) << name << "\n" << answerText(project, answer);
        EXPECT_EQ(violatedAnywhere(*answer.solved, 1000, random), "") << name;
    }
}

// CSS Contain 3 § 3.2: size containment along the inline axis; a subgrid's tracks are its parent's.
TEST(CardScale, is_refused_where_cards_cannot_be_containers) {
    project::Project project = samples().at("shore-walks.tenter.json");
    project.row().style.row.level = project::Level::Subgrid;
    for (project::Variant& variant : project.row().variants) {
        variant.set.row.level.reset();
        for (project::Band& band : variant.bands)
            band.set.row.level.reset();
    }
    project::Problems problems;
    EXPECT_FALSE(solve::toCardScale(project, solveStore(), problems));
    EXPECT_FALSE(problems.empty());
}

}  // namespace
}  // namespace tenter::test
