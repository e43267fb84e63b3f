#include "project/role_wishes.h"

#include "given.h"

namespace tenter::project {
namespace {

constexpr WishWidths everywhere;

TEST(Wishing, for_a_range_keeps_those_for_all_widths) {
    Project project = sound(smallProject().dump());
    const WishWidths middle{600, 900};
    EXPECT_EQ(wishesFor(project, "heading", middle).lines, 3);
    ownWishesOrNew(project, "heading", middle).lines = 2;
    ownWishesOrNew(project, "heading", everywhere).lines = 4;
    EXPECT_EQ(wishesFor(project, "heading", everywhere).lines, 4);
    EXPECT_EQ(wishesFor(project, "heading", middle).lines, 2);
    EXPECT_EQ(wishesFor(project, "heading", {std::nullopt, 600}).lines, 4);
    EXPECT_EQ(wishesFor(project, "heading", {900, std::nullopt}).lines, 4);
    ASSERT_NE(ownWishesFor(project, "heading", middle), nullptr);
    EXPECT_EQ(ownWishesFor(project, "heading", middle)->lines, 2);
    EXPECT_EQ(ownWishesFor(project, "heading", {600, std::nullopt}), nullptr);
    EXPECT_EQ(ownWishesFor(project, "body", everywhere), nullptr);
    // As a solver reads it, by widths.
    const auto lines = wishRanges(effectiveWishes(project), "heading", &RoleWishes::lines);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[1].value, 2);
}

TEST(Wishing, that_are_removed_leave_no_entry) {
    const Project before = sound(smallProject().dump());
    Project project = before;
    ownWishesOrNew(project, "heading", {600, 900}).lines = 2;
    EXPECT_NE(project, before);
    ownWishesOrNew(project, "heading", {600, 900}).lines.reset();
    dropEmptyWishes(project);
    EXPECT_EQ(project, before);
}

TEST(Wishing, that_asks_nothing_is_within_what_a_project_may_say) {
    Project project = sound(smallProject().dump());
    RoleWishes nothing = unlimitedWishes();
    nothing.role = "heading";
    nothing.ratioTo = "body";
    ownWishesOrNew(project, "heading", everywhere) = nothing;
    Problems problems;
    EXPECT_TRUE(parse(write(project), "asks nothing", {}, problems)) << problems.size();
}

}  // namespace
}  // namespace tenter::project
