// Sizes must look designed, not only satisfy the wishes: samples with deliberately wrong sizes get back to
// about the sizes that were designed. The tolerances are common practice, no source.
#include "solving.h"

namespace tenter::test {
namespace {

/// A role's size at both ends of every band of every variant, CSS px, in the order of the widths.
std::vector<double> sizesOf(const project::Project& project, const std::string& role) {
    std::vector<double> sizes;
    for (const project::Variant& variant : project.row().variants) {
        double from = project.leastWidth;
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const double to = variant.bands[band].upTo.value_or(project.mostWidth);
            const units::Ramp ramp = *project::resolve(project, variant, band).text.find(role)->size;
            sizes.push_back(ramp.sizeAt(from));
            sizes.push_back(ramp.sizeAt(to));
            from = to;
        }
    }
    return sizes;
}

project::Project solved(const project::Project& project) {
    const solve::Answer answer = solve::solve(project, allVariants(project), solveStore());
    EXPECT_TRUE(answer.solved) << answerText(project, answer);
    return answer.solved.value_or(project);
}

void spoilRole(project::Project& project, const std::string& role, double times) {
    const project::Project before = project;
    spoil(project, times, times);
    const auto restore = [&](project::Settings& settings, const project::Settings& old) {
        for (auto& [name, style] : settings.text.roles)
            if (name != role) style.size = old.text.find(name)->size;
    };
    restore(project.row().style, before.row().style);
    for (std::size_t v = 0; v < project.row().variants.size(); ++v) {
        restore(project.row().variants[v].set, before.row().variants[v].set);
        for (std::size_t b = 0; b < project.row().variants[v].bands.size(); ++b)
            restore(project.row().variants[v].bands[b].set, before.row().variants[v].bands[b].set);
    }
}

// A row that is too large or too small as a whole gets back to similar sizes in the same proportions.
TEST(NaturalSizes, come_back_after_scaling_the_whole_row) {
    for (const auto& [name, sample] : samples()) {
        const std::vector<double> body = sizesOf(sample, "body");
        const std::vector<double> heading = sizesOf(sample, "heading");
        for (const double times : {0.6, 1.7}) {
            project::Project project = sample;
            spoil(project, times, times);
            const project::Project back = solved(project);
            const std::vector<double> bodyNow = sizesOf(back, "body");
            const std::vector<double> headingNow = sizesOf(back, "heading");
            for (std::size_t i = 0; i < body.size(); ++i) {
                EXPECT_GT(bodyNow[i], 0.9 * body[i]) << name << " times " << times << ", " << i;
                EXPECT_LT(bodyNow[i], 1.25 * body[i]) << name << " times " << times << ", " << i;
                const double proportion = (headingNow[i] / bodyNow[i]) / (heading[i] / body[i]);
                EXPECT_NEAR(proportion, 1, 0.2) << name << " times " << times << ", " << i;
            }
        }
    }
}

// If one role has wrong sizes, that role changes and the body does not.
TEST(NaturalSizes, keep_the_body_if_another_role_is_wrong) {
    for (const auto& [name, sample] : samples()) {
        const std::vector<double> body = sizesOf(solved(sample), "body");
        for (const auto& [role, times] :
             {std::pair("heading", 0.5), std::pair("heading", 1.8), std::pair("button", 2.0)}) {
            project::Project project = sample;
            spoilRole(project, role, times);
            const std::vector<double> bodyNow = sizesOf(solved(project), "body");
            for (std::size_t i = 0; i < body.size(); ++i)
                EXPECT_NEAR(bodyNow[i] / body[i], 1, 0.04)
                    << name << ", " << role << " times " << times << ", " << i;
        }
    }
}

// The heading stays larger than the body, whichever role was wrong.
TEST(NaturalSizes, keep_the_heading_larger_than_the_body) {
    for (const auto& [name, sample] : samples()) {
        for (const auto& [role, times] :
             {std::pair("heading", 0.5), std::pair("body", 1.6), std::pair("button", 2.0)}) {
            project::Project project = sample;
            spoilRole(project, role, times);
            const project::Project back = solved(project);
            const std::vector<double> body = sizesOf(back, "body");
            const std::vector<double> heading = sizesOf(back, "heading");
            for (std::size_t i = 0; i < body.size(); ++i)
                EXPECT_GT(heading[i], 1.04 * body[i]) << name << ", " << role << " times " << times;
        }
    }
}

// Sizes that have to change step little at breakpoints, if the wishes allow it.
TEST(NaturalSizes, step_little_at_breakpoints) {
    for (const auto& [name, sample] : samples()) {
        project::Project project = sample;
        spoil(project, 0.7, 1.9);
        const project::Project back = solved(project);
        const std::vector<double> body = sizesOf(back, "body");
        std::size_t i = 0;
        for (const project::Variant& variant : back.row().variants) {
            for (std::size_t band = 0; band + 1 < variant.bands.size(); ++band) {
                const double below = body[i + 2 * band + 1];
                const double above = body[i + 2 * band + 2];
                EXPECT_GT(std::min(below, above), 0.84 * std::max(below, above))
                    << name << ", " << variant.className << " at " << *variant.bands[band].upTo;
            }
            i += 2 * variant.bands.size();
        }
    }
}

// A wrong slope is no guide: sizes that had to grow at one end of a band and shrink at the other get back to
// the designed sizes, not to the steepest ramp that the wishes allow.
TEST(NaturalSizes, come_back_after_changing_the_slopes) {
    for (const auto& [name, sample] : samples()) {
        project::Project project = sample;
        spoil(project, 0.7, 1.9);
        const std::vector<double> body = sizesOf(sample, "body");
        const std::vector<double> bodyNow = sizesOf(solved(project), "body");
        for (std::size_t i = 0; i < body.size(); ++i) {
            EXPECT_GT(bodyNow[i], 0.85 * body[i]) << name << ", " << i;
            EXPECT_LT(bodyNow[i], 1.25 * body[i]) << name << ", " << i;
        }
    }
}

// If one variant has wrong sizes, the others, which share no ramp with it, do not change.
TEST(NaturalSizes, keep_the_other_variants) {
    for (const auto& [name, sample] : samples()) {
        const project::Project before = solved(sample);
        project::Project project = before;
        project::Variant& spoilt = project.row().variants.back();
        spoil(spoilt.set, 1.9, 1.9);
        for (project::Band& band : spoilt.bands)
            spoil(band.set, 1.9, 1.9);
        const std::vector<double> body = sizesOf(before, "body");
        const std::vector<double> bodyNow = sizesOf(solved(project), "body");
        const std::size_t others = body.size() - 2 * spoilt.bands.size();
        for (std::size_t i = 0; i < others; ++i)
            EXPECT_NEAR(bodyNow[i] / body[i], 1, 0.02) << name << ", " << i;
    }
}

// A solved row does not change when it is solved again.
TEST(NaturalSizes, stay_when_they_are_solved_again) {
    for (const auto& [name, sample] : samples()) {
        for (const auto& [first, last] : {std::pair(1.0, 1.0), std::pair(1.7, 1.7), std::pair(0.7, 1.9)}) {
            project::Project project = sample;
            spoil(project, first, last);
            const project::Project once = solved(project);
            EXPECT_EQ(solved(once), once) << name << " times " << first << " and " << last;
        }
    }
}

// A row that is too small to read is no guide: its body starts at the browsers' default size, 16 px, or as
// near as its measure allows.
TEST(NaturalSizes, start_at_the_browser_default_if_the_sizes_were_too_small) {
    const project::Project sample = samples().at("night-sky.tenter.json");
    project::Project project = sample;
    spoil(project, 0.6, 0.6);
    const std::vector<double> body = sizesOf(solved(project), "body");
    EXPECT_NEAR(*std::ranges::min_element(body), 16, 0.8);
}

}  // namespace
}  // namespace tenter::test
