// How answers are told: each wish once, each place as readers have it.
#include <regex>
#include <set>

#include "project/titles.h"
#include "solving.h"

namespace tenter::test {
namespace {

TEST(Sentences, tell_each_wish_once_and_name_places_as_readers_have_them) {
    const std::regex breaking("[0-9] px|[0-9]{4}[0-9]*(\\.[0-9]+)?\u00A0px|'");
    std::size_t places = 0;
    std::size_t justPast = 0;
    for (const auto& [name, sample] : samples()) {
        // The season's headings are in bands of two columns on a phone: two lines of them are too few.
        std::vector<std::string> asked{"aim=largest"};
        if (!name.starts_with("season")) asked.emplace_back("heading.lines=2");
        const project::Project project = wishing(sample, asked);
        const solve::Answer answer = solve::solve(project, project::everyVariant(project), solveStore());
        std::set<std::string> wishes;
        for (const solve::Told& one : solve::told(project, answer)) {
            EXPECT_FALSE(std::regex_search(one.says, breaking)) << name << ": " << one.says;
            for (const project::Variant& variant : project.variants)
                EXPECT_EQ(one.says.find(" in " + variant.className), std::string::npos) << one.says;
            if (one.places.empty()) continue;
            EXPECT_TRUE(wishes.insert(one.says.substr(0, one.says.find(": "))).second) << one.says;
            for (const solve::ToldPlace& place : one.places) {
                const std::string words = one.says.substr(place.start, place.length);
                EXPECT_GE(place.width, project.leastWidth);
                EXPECT_LE(place.width, project.mostWidth);
                EXPECT_FALSE(place.says.empty());
                // Zoomed pages have a test of their own.
                if (words.empty() || place.at.width < project.leastWidth) continue;
                ++places;
                const project::Variant& variant = project.variants[place.at.variant];
                const bool past = project::bandAt(variant, place.at.width) < place.at.band;
                EXPECT_EQ(words.find("ust past ") != std::string::npos, past) << one.says;
                justPast += past ? 1 : 0;
                EXPECT_NEAR(place.width, place.at.width + (past ? 1 : 0), 1e-6) << one.says;
            }
        }
    }
    EXPECT_GT(places, 40U);
    EXPECT_GT(justPast, 5U);
}

// A page zoomed by three is a third as wide as the window. CSSOM View 1, § 2: page zoom.
TEST(Sentences, tell_widths_of_zoomed_pages_by_the_window_that_readers_have) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    solve::Binding binding;
    binding.demand.kind = solve::Kind::Zoom;
    binding.demand.role = "heading";
    binding.demand.value = 3;
    binding.width = project.leastWidth / 3;
    binding.size = 30;
    solve::Answer answer;
    answer.bindings.push_back(binding);
    const std::vector<solve::Told> told = solve::told(project, answer);
    ASSERT_EQ(told.size(), 1U);
    ASSERT_EQ(told[0].places.size(), 1U);
    EXPECT_NEAR(told[0].places[0].width, project.leastWidth, 1e-6);
    EXPECT_NE(told[0].says.find("330\u00A0px zoomed to 300\u00A0%"), std::string::npos) << told[0].says;
}

TEST(Sentences, name_the_room_for_longer_copy_that_decides) {
    const project::Project walks = samples().at("shore-walks.tenter.json");
    const auto toldWith = [&](const char* reserve) {
        const project::Project project = wishing(walks, {"heading.lines=2", "aim=largest", reserve});
        return inSentences(project, solve::solve(project, {0}, solveStore()));
    };
    EXPECT_NE(toldWith("reserve=35%").find(", with 35\u00A0% more copy, “"), std::string::npos);
    EXPECT_EQ(toldWith("reserve=0").find("more copy"), std::string::npos);
}

TEST(Titles, are_what_people_call_variants_with_the_class_where_two_are_alike) {
    project::Project project;
    project.variants.resize(3);
    project.variants[0].className = "walks-trio";
    project.variants[0].name = "3";
    project.variants[1].className = "walks-solo";
    project.variants[1].name = "1";
    project.variants[2].className = "walks-other";
    EXPECT_EQ(project::titleOf(project.variants[0]), "3 columns");
    EXPECT_EQ(project::titleOf(project.variants[1]), "1 column");
    EXPECT_EQ(project::titleOf(project.variants[2]), "walks-other");
    EXPECT_EQ(project::quotedTitle(project, 0), "“3 columns”");
    project.variants[2].name = "3 columns";
    EXPECT_EQ(project::quotedTitle(project, 0), "“3 columns”, class walks-trio");
}

}  // namespace
}  // namespace tenter::test
