#include <gtest/gtest.h>

#include <set>

#include "css_reader.h"
#include "emit/stylesheet.h"
#include "emit/usage.h"
#include "project/file.h"
#include "project/level_cases.h"

namespace tenter::emit {
namespace {

using Computed = std::map<std::string, std::string>;

/// Rows of a one-column grid of `count` rows for items in order, as CSS Grid 2 § 8.5 places them: first those
/// locked to a row, then the others, each in the next row that is free. -1: placed absolutely.
std::vector<int> placed(const std::vector<Computed>& items, int count) {
    std::vector<int> rows(items.size(), -1);
    std::set<int> taken;
    const auto value = [](const Computed& item, const std::string& property) {
        const auto found = item.find(property);
        return found == item.end() ? std::string("auto") : found->second;
    };
    for (std::size_t i = 0; i < items.size(); ++i)
        if (value(items[i], "grid-row-end") == "-1") taken.insert(rows[i] = count - 1);
    int cursor = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (rows[i] >= 0 || value(items[i], "position") == "absolute") continue;
        while (taken.contains(cursor))
            ++cursor;
        taken.insert(rows[i] = cursor);
    }
    return rows;
}

TEST(Stylesheet, LevelsPartsAsTheLayoutDoes) {
    for (const test::LevelCase& given : test::levelCases()) {
        SCOPED_TRACE(given.name);
        project::Problems problems;
        const auto project = project::parse(
            R"({"format": "tenter-project", "version": 1, "name": "Test", "row": "walks", "style": )" +
                test::styleOf(given) + R"(, "cards": )" + test::cardsOf(given) +
                R"(, "variants": [{"class": "row", "bands": [{}]}]})",
            "test", {}, problems);
        ASSERT_TRUE(project) << (problems.empty() ? "" : problems.front().line());
        StylesheetOptions options;
        options.variants = {0};
        const tests::CssSheet sheet = tests::readCss(stylesheet(*project, options));
        const auto of = [&](const std::string& part) {
            return tests::computed(sheet, ".row .walks-" + part, 900);
        };
        EXPECT_EQ(of("card").at("grid-row"), "span " + std::to_string(given.count));
        const std::map<char, std::string> names{{'h', "heading"}, {'b', "body"}, {'B', "button"}};
        for (std::size_t c = 0; c < given.cards.size(); ++c) {
            std::vector<Computed> items;
            for (std::size_t i = 0; i < given.cards[c].size(); ++i) {
                const char letter = given.cards[c][i];
                items.push_back(of(letter == 'p' ? "picture" : names.at(letter)));
                // What differs between pictures that stand differently is in classes of their own.
                if (letter == 'p')
                    items.back().merge(of("picture-" + picturePosition(project->row().cards[c], i).word()));
            }
            EXPECT_EQ(placed(items, given.count), given.levels[c]) << given.cards[c];
        }
    }
}

// Measured in Firefox 153: a subgrid counts a percentage in the vertical margin of a picture as 0 for the
// height of the row, and not for the positions of the parts. So the stylesheet has none there.
TEST(Stylesheet, PicturesInASubgridHaveNoPercentagesInVerticalMargins) {
    const auto margin = [](const std::string& level) {
        project::Problems problems;
        const auto project = project::parse(
            R"({"format": "tenter-project", "version": 1, "name": "Test", "row": "walks", "style": {"row": {"level": ")" +
                level +
                R"(", "columnGap": "1.75rem"}, "card": {"padding": {"top": "1.25rem", "right": "1.25rem", "bottom": "1.25rem", "left": "1.25rem"},
                "border": {"width": "1px"}}, "picture": {"margin": {"top": "0", "right": "3%", "bottom": "1.48%", "left": "0"}}},
                "cards": [{"parts": [{"picture": "a.png", "size": [320, 213]}]}], "variants": [{"class": "row", "bands": [{"set": {"row": {"columns": 3}}}]}]})",
            "test", {}, problems);
        EXPECT_TRUE(project) << (problems.empty() ? "" : problems.front().line());
        StylesheetOptions options;
        options.variants = {0};
        return tests::computed(tests::readCss(stylesheet(*project, options)), ".row .walks-picture", 900);
    };
    EXPECT_EQ(margin("none").at("margin"), "0 3% 1.48% 0");
    EXPECT_EQ(margin("subgrid").at("margin"), "0 3% calc(-0.0543rem - 0.0296px + 0.4933cqi) 0");
}

}  // namespace
}  // namespace tenter::emit
