#include "project/project.h"

#include "given.h"

namespace tenter::project {
namespace {

// The model: band i is b₍ᵢ₋₁₎ < W ≤ bᵢ, the last open above; every real width is in exactly one.
TEST(Bands, include_their_breakpoint_and_nothing_above) {
    Variant variant;
    variant.bands.resize(3);
    variant.bands[0].upTo = 560;
    variant.bands[1].upTo = 900;
    EXPECT_EQ(bandAt(variant, 0), 0U);
    EXPECT_EQ(bandAt(variant, 560), 0U);
    EXPECT_EQ(bandAt(variant, 560.01), 1U);
    EXPECT_EQ(bandAt(variant, 900), 1U);
    EXPECT_EQ(bandAt(variant, 900.5), 2U);
    EXPECT_EQ(bandAt(variant, 1e9), 2U);
}

TEST(Copy, is_plain_text_with_line_feeds_for_breaks) {
    const Project project = sound(smallProjectWith(
        "/cards/0/parts/0/copy",
        Json::parse(R"(["Low ", {"strong": "tide"}, {"break": true}, {"link": "walk", "to": "#x"}])")));
    EXPECT_EQ(plainText(std::get<TextPart>(project.row().cards[0].parts[0]).copy), "Low tide\nwalk");
}

TEST(Roles, are_heading_body_button_and_what_the_project_adds) {
    Project project = sound(smallProject().dump());
    EXPECT_EQ(roles(project), (std::vector<std::string>{"heading", "body", "button"}));
    project.row().variants[0].bands[1].set.text.of("price");
    project.row().style.text.of("kicker");
    project.row().cards[0].parts.emplace_back(TextPart{"aside", {}, {}, {}, {}});
    EXPECT_EQ(roles(project),
              (std::vector<std::string>{"heading", "body", "button", "kicker", "price", "aside"}));
}

TEST(Variants, are_found_by_their_class) {
    const Project project = sound(smallProject().dump());
    EXPECT_EQ(project.row().findVariant("walks-pair"), 0U);
    EXPECT_EQ(project.row().findVariant("walks-trio"), std::nullopt);
}

// The model: the reader's preference scales the theme's root, 16 px being the usual preference.
TEST(Page, scales_the_root_by_the_readers_preference) {
    Page page;
    page.rootSize = 10;
    page.readerSize = 24;
    EXPECT_EQ(page.at(800).rootSize.resolve(page.readerSize, 800.0), 15);
}

}  // namespace
}  // namespace tenter::project
