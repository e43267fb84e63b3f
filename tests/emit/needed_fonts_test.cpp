// The fonts that a stylesheet says a page must load, against the fonts that the layout uses.
#include "emit/needed_fonts.h"

#include <gtest/gtest.h>

#include "emit/stylesheet.h"
#include "sample.h"

namespace tenter::emit {
namespace {

TEST(NeededFonts, AreTheFacesOfAllTexts) {
    const project::Project project = tests::shipped("shore-walks");
    const std::vector<NeededFont> fonts = neededFonts(project, {0});
    ASSERT_EQ(fonts.size(), 2U);
    EXPECT_EQ(fonts[0].title(), "Vollkorn 600");
    // The body has strong and emphasised words; CSS Fonts 4 § 2.2.1: bolder than 400 is 700.
    EXPECT_EQ(fonts[1].family, "Karla");
    EXPECT_EQ(fonts[1].upright.front(), 400);
    EXPECT_NE(std::ranges::find(fonts[1].upright, 700), fonts[1].upright.end());
    EXPECT_EQ(fonts[1].italic, std::vector<double>{400});
}

TEST(NeededFonts, LeaveOutGenericFamilies) {
    project::Project project = tests::walks();
    for (auto& variant : project.row().variants)
        for (auto& band : variant.bands)
            band.set.text = {};
    for (const char* role : {"heading", "body", "button"})
        project.row().style.text.of(role).family = std::vector<std::string>{"sans-serif", "Karla"};
    EXPECT_TRUE(neededFonts(project, {0}).empty());
    EXPECT_EQ(fontSentence(project, {0}), "");
    EXPECT_EQ(stylesheet(project, {{0}, units::Unit::Rem}).find("must load"), std::string::npos);
}

TEST(NeededFonts, StandInTheCommentsOnly) {
    const project::Project project = tests::shipped("shore-walks");
    StylesheetOptions options{{0}, units::Unit::Rem};
    EXPECT_NE(stylesheet(project, options).find("/* The page must load these fonts: Vollkorn 600; Karla 400"),
              std::string::npos);
    options.form.comments = false;
    EXPECT_EQ(stylesheet(project, options).find("must load"), std::string::npos);
}

}  // namespace
}  // namespace tenter::emit
