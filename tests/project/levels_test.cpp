#include "project/levels.h"

#include "given.h"
#include "level_cases.h"
#include "project/cascade.h"

namespace tenter::project {
namespace {

TEST(Levels, are_given_by_order_and_the_last_to_what_ends_every_card) {
    for (const test::LevelCase& given : test::levelCases()) {
        SCOPED_TRACE(given.name);
        Json json = smallProject();
        json["style"] = Json::parse(test::styleOf(given));
        json["cards"] = Json::parse(test::cardsOf(given));
        const Project project = sound(json.dump());
        const Settings settings = resolve(project, project.row().variants[0], 0);
        const Levels levels = Levels::of(project, settings);
        EXPECT_EQ(levels.count, static_cast<std::size_t>(given.count));
        for (std::size_t c = 0; c < project.row().cards.size(); ++c) {
            std::vector<int> found;
            for (const auto& level : levels.in(project.row().cards[c], settings))
                found.push_back(level ? static_cast<int>(*level) : -1);
            EXPECT_EQ(found, given.levels[c]) << given.cards[c];
        }
    }
}

TEST(Levels, are_one_in_a_row_without_cards) {
    Json json = smallProject();
    json["cards"] = Json::array();
    const Project project = sound(json.dump());
    EXPECT_EQ(Levels::of(project, resolve(project, project.row().variants[0], 0)).count, 1U);
}

}  // namespace
}  // namespace tenter::project
