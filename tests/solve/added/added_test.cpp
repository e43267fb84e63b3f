// Adding a wish touches one new file and one line of the registry: this program is linked with both and with
// the unchanged library.
#include "../solving.h"
#include "solve/wish_key.h"

namespace tenter::test {
namespace {

TEST(AddedWish, is_one_of_the_wishes_of_every_role) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    const auto wishes = solve::singleWishes(project, project::effectiveWishes(project));
    std::vector<std::string> roles;
    for (const solve::Wish& wish : wishes)
        if (wish.kind == kindOf("words")) roles.push_back(wish.role);
    ASSERT_FALSE(roles.empty());
    for (const std::string& role : roles)
        EXPECT_EQ(std::ranges::count_if(wishes,
                                        [&](const solve::Wish& wish) {
                                            return wish.kind == kindOf("added") && wish.role == role;
                                        }),
                  1);
    EXPECT_EQ(solve::registry().back(), kindOf("added"));
}

TEST(AddedWish, has_a_notation) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    EXPECT_EQ(solve::wishKeys().back()->name, "added");
    project::Wishes wishes;
    project::Problems problems;
    EXPECT_TRUE(solve::addWish("heading.added=now", project, wishes, problems));
    EXPECT_FALSE(solve::addWish("heading.added=later", project, wishes, problems));
    EXPECT_FALSE(solve::addWish("heading.ad=now", project, wishes, problems));
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_NE(problems[0].line().find("The added wish has one value."), std::string::npos)
        << problems[0].line();
    EXPECT_NE(problems[1].line().find("added"), std::string::npos) << problems[1].line();
}

TEST(AddedWish, takes_part_in_solving_and_in_conflicts) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    const solve::Answer answer = solve::solve(project, {0}, solveStore());
    EXPECT_TRUE(answer.solved);
    EXPECT_TRUE(answer.violated.empty());
    // A word so long that no size is small enough: the conflict is between it and a smallest size.
    project::Project wide = project;
    for (project::Part& part : wide.row().cards[0].parts)
        if (auto* text = std::get_if<project::TextPart>(&part); text != nullptr && text->role == "heading")
            text->copy = {project::Run{project::Run::Kind::Plain, std::string(3000, 'm'), {}}};
    const project::Project only = wishingOnly(wide, {});
    const solve::Answer conflict = solve::solve(only, {0}, solveStore());
    ASSERT_FALSE(conflict.solved);
    EXPECT_TRUE(std::ranges::any_of(conflict.conflict.wishes, [](const solve::Wish& wish) {
        return wish.kind == kindOf("words") || wish.kind == kindOf("added");
    }));
}

}  // namespace
}  // namespace tenter::test
