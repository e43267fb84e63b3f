// Tight fits, and differences between browsers. Measured; see the sources of the break profiles.
#include <set>

#include "checking.h"
#include "layout/prepared.h"
#include "project/role_wishes.h"
#include "sweep/differences.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(TightFitCheck, ReportsOnlyWideRangesOfTightFits) {
    // Size and column grow alike, so a line that just fits does so at every width.
    project::Project project = headed("Out and back over the flats");
    set(project, "row/width", R"("50vw")");
    set(project, "text/heading/size", "[[320, 10], [1920, 60]]");
    layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double line = layout::layOut(row, 1600).lines.front().line.width;
    ASSERT_LT(line, 800);
    set(project, "row/width", R"(")" + std::to_string(line / 16 * 1.001) + R"(vw")");
    Options options;
    options.profile = &text::blink();
    const Finding found = findingOf(project, "tight-fit", std::nullopt, options);
    ASSERT_FALSE(found.widths.empty());
    EXPECT_GT(found.share, 0.95);
    set(project, "row/width", R"(")" + std::to_string(line / 16 * 1.01) + R"(vw")");
    EXPECT_FALSE(has(project, "tight-fit", std::nullopt, options));
}

// The text of a finding is about the width that the window shows, also where the type grows and the column
// does not, so that the line is full at its last width.
TEST(TightFitCheck, QuotesALineThatIsThereAtTheWidthOfTheFinding) {
    Options options;
    options.profile = &text::blink();
    int quoted = 0;
    for (int step = 0; step < 60; ++step) {
        project::Project project =
            quiet("[" + card("Low tide", longText) + "]", "[{}]", R"({"columns": 1, "width": "480px"})");
        set(project, "text/body/size", "[[320, 14], [1920, " + std::to_string(14.4 + step * 0.02) + "]]");
        const Finding found = findingOf(project, "tight-fit", std::nullopt, options);
        const std::string start = "the line that ends with “";
        const std::size_t from = found.says.find(start);
        if (from == std::string::npos) continue;
        const std::string rest = found.says.substr(from + start.size());
        const std::string word = rest.substr(0, rest.find("”"));
        ++quoted;
        const layout::PreparedRow row(project, 0, checkStore(), text::blink());
        const auto& paragraph = row.band(0).part({0, 1}).paragraph;
        bool isThere = false;
        for (const layout::LaidLine& line : layout::layOut(row, found.at).lines)
            isThere = isThere || paragraph->utf8(line.line.first, line.line.end).ends_with(word);
        EXPECT_TRUE(isThere) << found.says << " at " << found.at;
    }
    EXPECT_GT(quoted, 10);
}

TEST(TightFitCheck, ReportsNarrowRangesThatWouldViolateAWish) {
    const std::string heading = "Out and back over the flats";
    const auto fitting = [&](double share) {
        // A column that is wider than the line of the heading by `share` of it, up to 340 px.
        project::Project project = headed(heading);
        const layout::PreparedRow row(project, 0, checkStore(), text::blink());
        const double line = layout::layOut(row, 1600).lines.front().line.width;
        project = quiet("[" + card(heading, "Out.") + "]", R"([{"upTo": 340, "set": {"row": {"width": ")" +
                                                               std::to_string(line * (1 + share)) +
                                                               R"(px"}}}, {}])");
        project::ownWishesOrNew(project, "heading", {}).lines = 1;
        return project;
    };
    project::Project project = fitting(0.002);
    const Finding found = findingOf(project, "tight-fit");
    expectSpans(found, {{320, 340}});
    EXPECT_NE(found.says.find("differently, into 2 lines; the wish is at most 1 line."), std::string::npos)
        << found.says;
    project::ownWishesOrNew(project, "heading", {}).lines = 2;
    EXPECT_FALSE(has(project, "tight-fit"));
    EXPECT_FALSE(has(fitting(0.003), "tight-fit"));
    // Where the wish is violated already, heading-lines reports it.
    project = fitting(-0.002);
    EXPECT_FALSE(has(project, "tight-fit"));
    EXPECT_TRUE(has(project, "heading-lines"));
}

// Only one engine breaks after `/` (measured; see the sources of the break profiles).
TEST(EnginesCheck, NamesTheCharacterAndExactWidths) {
    project::Project project = headed("Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh");
    const Finding found = findingOf(project, "engines");
    EXPECT_NE(found.says.find("after “/”"), std::string::npos) << found.says;
    EXPECT_NE(found.says.find("/<wbr>"), std::string::npos) << found.says;
    const layout::PreparedRow one(project, 0, checkStore(), text::blink());
    const layout::PreparedRow other(project, 0, checkStore(), text::gecko());
    std::set<int> different;
    for (const sweep::LineDifference& difference : sweep::lineDifferences({&one, &other}, 320, 1920))
        for (int width = static_cast<int>(difference.first); width <= difference.last; ++width)
            different.insert(width);
    EXPECT_EQ(wholeWidthsOf(found), different);
    EXPECT_FALSE(has(headed("Tern Holm"), "engines"));
}

// Measured in both engines (DEVELOPERS.md): only Chromium breaks between `-` and a digit. The text also has
// an earlier place at which the engines differ, but no line breaks there.
TEST(EnginesCheck, NamesTheBreakThatCausesTheDifference) {
    project::Project project = headed("Either/or mornings for under-12s and whoever brings them");
    set(project, "text/heading/size", "[[320, 24], [1920, 40]]");
    const std::vector<Finding> all = findingsOf(project);
    const bool reported = std::ranges::any_of(all, [](const Finding& finding) {
        return finding.check == "engines" && finding.says.find("“under-<wbr>12s”") != std::string::npos;
    });
    EXPECT_TRUE(reported);
}

}  // namespace
}  // namespace tenter::checks
