#include "given.h"
#include "project/intervals.h"

namespace tenter::project {
namespace {

Json withPage(const std::string& page) {
    Json project = smallProject();
    project["page"] = Json::parse(page);
    return project;
}

const char* const threeRanges = R"json({
    "rootSize": 18,
    "container": {"width": "90%", "maxWidth": "1200px", "padding": {"left": "20px", "right": "20px"}},
    "ranges": [
        {"upTo": 575, "rootSize": "100%", "container": {"width": "100%", "padding": {"left": "12px"}}},
        {"upTo": 991, "container": {"maxWidth": "720px", "background": "#eef"}},
        {"upTo": 1400, "rootSize": "calc(14px + 0.3vw)"}]})json";

TEST(PageRanges, set_what_differs_and_inherit_the_rest) {
    const Page page = sound(withPage(threeRanges).dump()).page;
    const PageSettings narrow = page.at(575);
    EXPECT_EQ(narrow.rootSize, units::RootSize::percent(100));
    EXPECT_EQ(narrow.container.width, Length::percent(100));
    EXPECT_EQ(narrow.container.maxWidth, Length::px(1200));
    EXPECT_EQ(narrow.container.padding.left, Length::px(12));
    EXPECT_EQ(narrow.container.padding.right, Length::px(20));
    const PageSettings middle = page.at(575.01);
    EXPECT_EQ(middle.rootSize, 18);
    EXPECT_EQ(middle.container.width, Length::percent(90));
    EXPECT_EQ(middle.container.maxWidth, Length::px(720));
    EXPECT_EQ(middle.container.background.css(), "#eef");
    EXPECT_EQ(page.at(1000).rootSize.css(), "calc(14px + 0.3vw)");
}

// The rule of ends is that of bands: a range includes its end.
TEST(PageRanges, leave_wider_pages_as_the_page_says) {
    const Page page = sound(withPage(threeRanges).dump()).page;
    EXPECT_EQ(page.rangeAt(991), 1U);
    EXPECT_EQ(page.rangeAt(991.5), 2U);
    EXPECT_EQ(page.rangeAt(1400.5), 3U);
    EXPECT_EQ(page.at(1400.5).rootSize, 18);
    EXPECT_EQ(page.at(1400.5).container.background.css(), "#fff");
    Page open = page;
    open.ranges.back().upTo.reset();
    EXPECT_EQ(open.at(9000).rootSize.css(), "calc(14px + 0.3vw)");
}

TEST(PageRanges, merge_with_the_bands) {
    Json json = withPage(threeRanges);
    json["variants"][0]["bands"] = Json::parse(R"([{"upTo": 700}, {"upTo": 991}, {}])");
    Project project = sound(json.dump());
    const auto described = [&] {
        std::string all;
        for (const Interval& interval : intervals(project.page, project.row().variants[0]))
            all += (interval.upTo ? std::to_string(static_cast<int>(*interval.upTo)) : "open") + ":" +
                   std::to_string(interval.band) + "/" + std::to_string(interval.range) + " ";
        return all;
    };
    EXPECT_EQ(described(), "575:0/0 700:0/1 991:1/1 1400:2/2 open:2/3 ");
    project.page.ranges.back().upTo.reset();
    EXPECT_EQ(described(), "575:0/0 700:0/1 991:1/1 open:2/2 ");
    project.page.ranges.clear();
    EXPECT_EQ(described(), "700:0/0 991:1/0 open:2/0 ");
}

TEST(PageRanges, are_written_as_they_were_read) {
    const Json json = withPage(threeRanges);
    EXPECT_EQ(Json::parse(write(sound(json.dump()))), json);
}

/// The problem of a page with `ranges` (JSON text): its place and its sentences.
std::string problemOf(const std::string& ranges) {
    const Problem problem = problemsOf(withPage("{\"ranges\": " + ranges + "}").dump()).at(0);
    return problem.place + ": " + problem.what + " " + problem.fix;
}

TEST(PageRanges, in_the_wrong_order_are_problems) {
    EXPECT_EQ(problemOf(R"json([{"upTo": 900}, {"upTo": 900}])json"),
              "/page/ranges/1: The page range ends at or below the end of the page range before it. Put the "
              "page ranges in order of rising widths.");
    EXPECT_EQ(problemOf(R"json([{}, {"upTo": 900}])json"),
              "/page/ranges/0: The page range has no end; only the last page range may have none. Add "
              "\"upTo\" with a width in px.");
}

TEST(PageRanges, with_a_wrong_root_size_are_problems) {
    const auto problemWith = [](const std::string& size) {
        return problemOf("[{\"rootSize\": \"" + size + "\"}]");
    };
    const std::string place = "/page/ranges/0/rootSize: \"rootSize\" ";
    EXPECT_EQ(problemWith("2em"), place +
                                      "must be a number of px, or a CSS value such as \"62.5%\" or "
                                      "\"clamp(15px, 14px + 0.3vw, 18px)\"; it is \"2em\". ");
    EXPECT_EQ(problemWith("900%"), place + "must be a size of 1 to 100 px; it is \"900%\". ");
    EXPECT_EQ(problemWith("clamp(18px, 14px + 0.3vw, 16px)"),
              place + "has a smallest size above its largest. Write clamp(smallest, calculation, largest).");
}

}  // namespace
}  // namespace tenter::project
