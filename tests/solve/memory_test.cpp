// A run that remembers the last one gives the answer of a run that does not.
#include "solve/memory.h"

#include "project/role_wishes.h"
#include "solving.h"

namespace tenter::test {
namespace {

void expectSameAnswer(const project::Project& project, solve::Memory& memory, const std::string& what) {
    solve::Options remembering;
    remembering.memory = &memory;
    const solve::Answer with = solve::solve(project, allVariants(project), solveStore(), remembering);
    const solve::Answer without = solve::solve(project, allVariants(project), solveStore());
    ASSERT_EQ(with.solved.has_value(), without.solved.has_value()) << what;
    if (with.solved) {
        EXPECT_EQ(*with.solved, *without.solved) << what;
    }
    EXPECT_EQ(answerText(project, with), answerText(project, without)) << what;
}

TEST(Memory, changes_no_answer_while_a_wish_is_dragged) {
    for (const auto& [name, sample] : samples()) {
        project::Project project = sample;
        solve::Memory memory;
        for (const double most : {30.0, 26.0, 22.0, 18.0, 26.0}) {
            project::ownWishesOrNew(project, "heading", {}).mostSize = most;
            expectSameAnswer(project, memory, name + ", at most " + std::to_string(most));
        }
        project::ownWishesOrNew(project, "heading", {}).lines = 1;
        expectSameAnswer(project, memory, name + ", one line");
    }
}

TEST(Memory, follows_every_other_change_of_the_project) {
    for (const auto& [name, sample] : samples()) {
        project::Project project = sample;
        solve::Memory memory;
        expectSameAnswer(project, memory, name);
        for (project::Card& card : project.row().cards)
            for (project::Part& part : card.parts)
                if (auto* text = std::get_if<project::TextPart>(&part))
                    for (project::Run& run : text->copy)
                        run.text += " and some more words";
        expectSameAnswer(project, memory, name + ", longer text");
        spoil(project, 1.3, 0.8);
        expectSameAnswer(project, memory, name + ", other ramps");
        project.row().style.row.columnGap = units::Length::px(7);
        expectSameAnswer(project, memory, name + ", another gap");
        project::ownWishesOrNew(project, "body", {}).leastMeasure = 20;
        project.row().wishes->slack = 0.02;
        expectSameAnswer(project, memory, name + ", another slack");
    }
}

}  // namespace
}  // namespace tenter::test
