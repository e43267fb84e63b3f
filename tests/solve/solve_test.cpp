#include "solve/solve.h"

#include "solving.h"

namespace tenter::test {
namespace {

using solve::Answer;

/// Factors that ramps' ends are multiplied by.
constexpr std::pair<double, double> spoilt[] = {{1, 1}, {1.7, 1.7}, {0.5, 0.6}, {2.3, 0.8}, {0.7, 1.9}};

// Ten thousand widths a sample: two thousand for each way it was spoilt, in each variant and engine.
TEST(Solve, breaks_no_wish_at_any_width_of_any_sample) {
    std::mt19937 random(7);
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : spoilt) {
            project::Project project = sample;
            spoil(project, first, last);
            const Answer answer = solveEasing(project);
            ASSERT_TRUE(answer.solved) << name << " " << first << " " << last << "\n"
                                       << inSentences(project, answer);
            EXPECT_EQ(brokenAnywhere(*answer.solved, 2000, random), "")
                << name << " " << first << " " << last;
        }
    }
}

/// What sizes can mend, by the checks' names.
bool isFitted(const std::string& check) {
    for (const char* one :
         {"heading-lines", "button-lines", "measure", "small-type", "zoom", "word", "growth"})
        if (check == one) return true;
    return false;
}

TEST(Solve, leaves_no_finding_from_fitted_wishes_in_spoilt_samples) {
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : spoilt) {
            project::Project project = sample;
            spoil(project, first, last);
            const Answer answer = solveEasing(project);
            ASSERT_TRUE(answer.solved) << name << "\n" << inSentences(project, answer);
            for (const std::size_t variant : allVariants(project))
                for (const checks::Finding& finding : checks::check(*answer.solved, variant, solveStore()))
                    EXPECT_FALSE(isFitted(finding.check))
                        << name << " " << first << " " << last << " " << project.variants[variant].className
                        << ": " << finding.says;
        }
    }
}

}  // namespace
}  // namespace tenter::test
