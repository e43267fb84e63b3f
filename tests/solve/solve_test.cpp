#include "solve/solve.h"

#include "solving.h"

namespace tenter::test {
namespace {

using solve::Answer;

/// Factors for the end sizes of ramps.
constexpr std::pair<double, double> spoilt[] = {{1, 1}, {1.7, 1.7}, {0.5, 0.6}, {2.3, 0.8}, {0.7, 1.9}};

// Ten thousand widths per sample: two thousand for each pair of factors, in each variant and engine.
TEST(Solve, violates_no_wish_at_any_width_of_any_sample) {
    std::mt19937 random(7);
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : spoilt) {
            project::Project project = sample;
            spoil(project, first, last);
            const Answer answer = solveRelaxing(project);
            ASSERT_TRUE(answer.solved) << name << " " << first << " " << last << "\n"
                                       << answerText(project, answer);
            EXPECT_EQ(violatedAnywhere(*answer.solved, 2000, random), "")
                << name << " " << first << " " << last;
        }
    }
}

/// True for the checks whose findings sizes can fix.
bool isFitted(const std::string& check) {
    for (const char* one :
         {"heading-lines", "button-lines", "measure", "small-type", "zoom", "word", "growth"})
        if (check == one) return true;
    return false;
}

TEST(Solve, leaves_no_finding_that_sizes_can_fix) {
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : spoilt) {
            project::Project project = sample;
            spoil(project, first, last);
            const Answer answer = solveRelaxing(project);
            ASSERT_TRUE(answer.solved) << name << "\n" << answerText(project, answer);
            for (const std::size_t variant : allVariants(project))
                for (const checks::Finding& finding : checks::check(*answer.solved, variant, solveStore()))
                    EXPECT_FALSE(isFitted(finding.check))
                        << name << " " << first << " " << last << " "
                        << project.row().variants[variant].className << ": " << finding.says;
        }
    }
}

/// The largest growth of a role in proportion to another one from `before` to `solved`, over the ends of
/// bands, with its place.
std::pair<double, std::string> mostGrown(const project::Project& solved, const project::Project& before) {
    std::pair<double, std::string> most{0, ""};
    for (const std::size_t variant : allVariants(solved)) {
        const layout::PreparedRow now(solved, variant, solveStore(), text::blink());
        const layout::PreparedRow then(before, variant, solveStore(), text::blink());
        std::vector<double> widths{solved.leastWidth, solved.mostWidth};
        for (const project::Band& band : solved.row().variants[variant].bands)
            if (band.upTo) widths.insert(widths.end(), {*band.upTo, *band.upTo + 0.01});
        for (const double width : widths)
            for (std::uint32_t one = 0; one < now.roles().size(); ++one)
                for (std::uint32_t other = 0; other < now.roles().size(); ++other) {
                    const double grown = now.fontSize(one, width) / now.fontSize(other, width) /
                                         (then.fontSize(one, width) / then.fontSize(other, width));
                    if (grown > most.first)
                        most = {grown, now.roles()[one] + " to " + now.roles()[other] + " at " +
                                           std::to_string(width)};
                }
    }
    return most;
}

// The button labels and the body must become much smaller to satisfy the wishes. Headings and prices need
// not, but follow them in part.
TEST(Solve, keeps_proportions_if_some_roles_must_become_much_smaller) {
    for (const auto& [name, sample] : samples()) {
        project::Project project = sample;
        project.row().wishes.reset();
        if (name.starts_with("season")) project.row().wishes = sample.row().wishes;
        spoil(project, 1.7, 1.7);
        const Answer answer = solveRelaxing(project);
        ASSERT_TRUE(answer.solved) << name;
        const auto [grown, where] = mostGrown(*answer.solved, project);
        EXPECT_LT(grown, 1.3) << name << ": " << where;
    }
}

// Whatever the factors, the proportions of roles stay similar to those that were designed.
TEST(Solve, keeps_the_order_of_roles) {
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : spoilt) {
            project::Project project = sample;
            spoil(project, first, last);
            const Answer answer = solveRelaxing(project);
            ASSERT_TRUE(answer.solved) << name;
            const auto [grown, where] = mostGrown(*answer.solved, sample);
            EXPECT_LT(grown, 1.8) << name << " " << first << " " << last << ": " << where;
        }
    }
}

}  // namespace
}  // namespace tenter::test
