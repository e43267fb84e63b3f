#include "project/cascade.h"

#include "given.h"
#include "units/contrast.h"

namespace tenter::project {
namespace {

template <class T>
bool isWhole(const std::optional<T>& member) {
    return member.has_value();
}
bool isWhole(const RoleStyles& styles);
template <HasMembers T>
bool isWhole(const T& group) {
    bool whole = true;
    T::members([&](const char* key, auto member) {
        if (isWhole(group.*member)) return;
        whole = false;
        ADD_FAILURE() << key << " is not set";
    });
    return whole;
}
bool isWhole(const RoleStyles& styles) {
    bool whole = true;
    for (const auto& entry : styles.roles)
        whole = isWhole(entry.second) && whole;
    return whole;
}

Project layered() {
    return sound(smallProjectWith("/style", Json::parse(R"({"row": {"columns": 4, "columnGap": "20px"},
        "text": {"heading": {"weight": 800, "margin": {"top": "1em"}}, "kicker": {"case": "uppercase"}}})")));
}

TEST(Cascade, sets_every_member) {
    const Project project = layered();
    EXPECT_TRUE(isWhole(defaultSettings()));
    EXPECT_TRUE(isWhole(resolve(project, project.row().variants[0], 0)));
    EXPECT_TRUE(isWhole(resolve(project, project.row().variants[0], 1)));
}

TEST(Cascade, overrides_the_style_by_the_variant_and_that_by_the_band) {
    Project project = layered();
    Variant& variant = project.row().variants[0];
    variant.set.row.columns = 2;
    variant.bands[0].set.row.columns = 1;
    variant.set.text.of("heading").margin.bottom = Length::px(3);
    variant.bands[0].set.text.of("heading").weight = 600;
    const Settings phone = resolve(project, variant, 0);
    const Settings wide = resolve(project, variant, 1);
    EXPECT_EQ(phone.row.columns, 1);
    EXPECT_EQ(wide.row.columns, 2);
    EXPECT_EQ(phone.row.columnGap, Length::px(20));
    EXPECT_EQ(phone.text.find("heading")->weight, 600);
    EXPECT_EQ(wide.text.find("heading")->weight, 800);
    EXPECT_EQ(phone.text.find("heading")->margin.top, Length::em(1));
    EXPECT_EQ(phone.text.find("heading")->margin.bottom, Length::px(3));
}

TEST(Cascade, gives_a_role_the_project_adds_what_body_has) {
    const Project project = layered();
    const Settings settings = resolve(project, project.row().variants[0], 0);
    const TextStyle* kicker = settings.text.find("kicker");
    ASSERT_NE(kicker, nullptr);
    EXPECT_EQ(kicker->letterCase, LetterCase::Uppercase);
    EXPECT_EQ(kicker->size, defaultText("body").size);
    EXPECT_EQ(defaultText("kicker"), defaultText("body"));
}

TEST(Cascade, keeps_what_a_layer_does_not_set) {
    Settings under;
    under.card.shadow.blur = Length::px(4);
    Settings over;
    over.card.shadow.y = Length::px(1);
    over.text.of("price").weight = 500;
    const Settings both = merged(under, over);
    EXPECT_EQ(both.card.shadow.blur, Length::px(4));
    EXPECT_EQ(both.card.shadow.y, Length::px(1));
    EXPECT_EQ(both.text.find("price")->weight, 500);
    EXPECT_EQ(merged(under, Settings{}), under);
}

TEST(Cascade, differs_by_what_one_layer_changes) {
    const Project project = layered();
    const Settings under = resolve(project, project.row().variants[0], 0);
    Settings change;
    change.row.columns = 1;
    change.card.border.width = Length::px(7);
    change.text.of("kicker").margin.left = Length::em(2);
    EXPECT_EQ(difference(under, merged(under, change)), change);
    EXPECT_EQ(difference(under, under), Settings{});
}

TEST(Cascade, does_not_mind_what_files_remembered) {
    Settings under = defaultSettings();
    Settings over = under;
    over.row.fileKeys.keys.emplace_back("x-note", "1");
    over.row.padding.fileKeys.keys.emplace_back("top", "");
    EXPECT_EQ(difference(under, over), Settings{});
    EXPECT_EQ(merged(under, over), under);
}

// A button given another background must not turn the default one's shade under the pointer.
TEST(Cascade, takes_hover_colours_from_those_at_rest) {
    Project project = layered();
    project.row().style.text.of("button").background = Colour{100, 50, 200, 255};
    project.row().style.text.of("button").colour = Colour{1, 2, 3, 255};
    Settings settings = resolve(project, project.row().variants[0], 0);
    EXPECT_EQ(settings.text.find("button")->hover.background, (Colour{80, 40, 160, 255}));
    EXPECT_EQ(settings.text.find("button")->hover.colour, (Colour{1, 2, 3, 255}));
    project.row().style.text.of("button").hover.background = Colour{9, 9, 9, 255};
    settings = resolve(project, project.row().variants[0], 0);
    EXPECT_EQ(settings.text.find("button")->hover.background, (Colour{9, 9, 9, 255}));
}

// WCAG 2.2, SC 1.4.3: text has a contrast of at least 4.5 to 1.
TEST(Defaults, are_readable) {
    const Settings settings = defaultSettings();
    const TextStyle& button = *settings.text.find("button");
    EXPECT_GE(units::contrast(*button.colour, *button.background), 4.5);
    EXPECT_GE(units::contrast(*button.hover.colour, *button.hover.background), 4.5);
    for (const char* role : {"heading", "body"}) {
        EXPECT_GE(units::contrast(*settings.text.find(role)->colour, *settings.card.background), 4.5) << role;
    }
    // SC 1.4.11: the focus ring at least 3 to 1.
    EXPECT_GE(units::contrast(*button.focus.colour, *settings.card.background), 3);
}

// M. Barvian, Smashing Magazine, 2023 (from memory): largest ≤ 2.5 × smallest passes WCAG 2.2, SC 1.4.4.
TEST(Defaults, can_be_zoomed_to_twice_the_size) {
    for (const char* role : {"heading", "body", "button"}) {
        const Ramp size = *defaultText(role).size;
        EXPECT_LE(size.to().size, 2.5 * size.from().size) << role;
    }
}

}  // namespace
}  // namespace tenter::project
