#include "project/validate.h"

#include <functional>
#include <random>

#include "given.h"
#include "project/json_text.h"
#include "project/rules.h"
#include "random_project.h"

namespace tenter::project {
namespace {

using Change = std::function<void(Project&)>;

/// A sound project with something of each kind.
Project baseProject() {
    Project project = sound(smallProject().dump());
    FontEntry font;
    font.family = "Own Sans";
    font.file = "own.woff2";
    project.fonts.push_back(font);
    project.row().wishes.emplace().roles.emplace_back().role = "heading";
    project.checking.silenced.push_back({"holes", "two more come in May"});
    project.row().given.emplace();
    project.row().given->markup = "<p>Low tide";
    project.row().given->selectors = {{"row", ""}, {"card", ".walk"}};
    return project;
}

TextPart& textOf(Project& project) {
    return std::get<TextPart>(project.row().cards.at(0).parts.at(0));
}
PicturePart& pictureOf(Project& project) {
    return std::get<PicturePart>(project.row().cards.at(0).parts.at(1));
}
RoleWishes& wishesOf(Project& project) {
    return project.row().wishes->roles.at(0);
}

template <class T>
void repeat(std::vector<T>& list, std::size_t count) {
    list.resize(count, T(list.front()));
}

void addRoles(RoleStyles& styles, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i)
        styles.of("role-" + std::to_string(i)).weight = 400;
}

/// Each breaks one rule.
const std::vector<std::pair<const char*, Change>>& breaches() {
    static const std::vector<std::pair<const char*, Change>> all{
        {"/row", [](Project& p) { p.row().name = "low tide"; }},
        {"/language", [](Project& p) { p.language = "english language"; }},
        {"/headingLevel", [](Project& p) { p.row().headingLevel = 7; }},
        {"/range/from", [](Project& p) { p.leastWidth = 199; }},
        {"/range/to", [](Project& p) { p.mostWidth = 5001; }},
        {"/range", [](Project& p) { p.leastWidth = p.mostWidth; }},
        {"/page/scrollbar/width", [](Project& p) { p.page.scrollbar.width = 41; }},
        {"/page/rootSize", [](Project& p) { p.page.rootSize = 0; }},
        {"/page/readerSize", [](Project& p) { p.page.readerSize = 7; }},
        {"/page/ranges/0/upTo", [](Project& p) { p.page.ranges = {{.upTo = 0}}; }},
        {"/page/ranges/1/upTo",
         [](Project& p) {
             p.page.ranges = {{.upTo = 700}, {.upTo = 20000}};
         }},
        {"/page/ranges/1",
         [](Project& p) {
             p.page.ranges = {{.upTo = 700}, {.upTo = 700}};
         }},
        {"/page/ranges/0",
         [](Project& p) {
             p.page.ranges = {{}, {.upTo = 700}};
         }},
        {"/page/ranges/0/rootSize", [](Project& p) { p.page.ranges = {{.rootSize = 101}}; }},
        {"/page/ranges/0/rootSize",
         [](Project& p) { p.page.ranges = {{.rootSize = units::RootSize::percent(5)}}; }},
        {"/page/rootSize", [](Project& p) { p.page.rootSize = units::RootSize::of({.px = 14, .vw = 101}); }},
        {"/page/rootSize",
         [](Project& p) {
             p.page.rootSize = units::RootSize::of({.px = 14, .vw = 1, .least = 18, .most = 16});
         }},
        {"/page/ranges/0/container/maxWidth",
         [](Project& p) { p.page.ranges.emplace_back().container.maxWidth = Length::px(-1); }},
        {"/page/container/width", [](Project& p) { p.page.container.width = Length::ofAuto(); }},
        {"/page/container/maxWidth", [](Project& p) { p.page.container.maxWidth = Length::px(-1); }},
        {"/page/container/padding/left", [](Project& p) { p.page.container.padding.left = Length::cqi(1); }},
        {"/fonts", [](Project& p) { repeat(p.fonts, 101); }},
        {"/fonts/0/family", [](Project& p) { p.fonts[0].family.clear(); }},
        {"/fonts/0/file", [](Project& p) { p.fonts[0].file.clear(); }},
        {"/fonts/0/weight", [](Project& p) { p.fonts[0].leastWeight = p.fonts[0].mostWeight = 0; }},
        {"/fonts/0/weight/1", [](Project& p) { p.fonts[0].mostWeight = 1001; }},
        {"/fonts/0/weight", [](Project& p) { p.fonts[0].leastWeight = 500; }},
        {"/style/row/columns", [](Project& p) { p.row().style.row.columns = 13; }},
        {"/style/row/width", [](Project& p) { p.row().style.row.width = Length::cqi(40); }},
        {"/style/row/rowGap", [](Project& p) { p.row().style.row.rowGap = Length::px(10001); }},
        {"/style/picture/ratio",
         [](Project& p) {
             p.row().style.picture.ratio = {{1e6, 1}};
         }},
        {"/style/text/card",
         [](Project& p) { p.row().style.text.roles.emplace_back("card", TextStyle()).second.weight = 400; }},
        {"/style/text", [](Project& p) { addRoles(p.row().style.text, 101); }},
        {"/style/text/body/family/1",
         [](Project& p) {
             p.row().style.text.of("body").family = {{"Own Sans", "a\x01"}};
         }},
        {"/style/text/body/family", [](Project& p) { p.row().style.text.of("body").family.emplace(); }},
        {"/style/text/body/weight", [](Project& p) { p.row().style.text.of("body").weight = 1001; }},
        {"/style/text/body/size", [](Project& p) { p.row().style.text.of("body").size = Ramp::flat(401); }},
        {"/style/text/body/size/1/1",
         [](Project& p) {
             p.row().style.text.of("body").size = Ramp::between({300, 16}, {900, 500});
         }},
        {"/style/text/body/lineHeight",
         [](Project& p) { p.row().style.text.of("body").lineHeight = LineHeight::of(Length::percent(4)); }},
        {"/style/text/body/keepLines", [](Project& p) { p.row().style.text.of("body").keepLines = 51; }},
        {"/cards", [](Project& p) { repeat(p.row().cards, 501); }},
        {"/cards/0/parts", [](Project& p) { repeat(p.row().cards[0].parts, 51); }},
        {"/cards/0/parts/0/role", [](Project& p) { textOf(p).role = "Heading"; }},
        {"/cards/0/parts/0/copy",
         [](Project& p) {
             textOf(p).copy = {{Run::Kind::Plain, std::string(longestText + 1, 'x'), {}}};
         }},
        {"/cards/0/parts/0/copy", [](Project& p) { textOf(p).copy = Copy(mostRuns + 1); }},
        {"/cards",
         [](Project& p) {
             textOf(p).copy = {{Run::Kind::Plain, std::string(longestText, 'x'), {}}};
             repeat(p.row().cards, longestTexts / longestText + 1);
         }},
        {"/style/text/heading/family",
         [](Project& p) {
             p.row().style.text.of("heading").family = std::vector<std::string>(mostFamilies + 1, "Karla");
         }},
        {"/cards/0/parts/1/picture", [](Project& p) { pictureOf(p).file.clear(); }},
        {"/cards/0/parts/1/size/0", [](Project& p) { pictureOf(p).width = 1e6; }},
        {"/cards/0/parts/1/ratio",
         [](Project& p) {
             pictureOf(p).ratio = {{3, 1e6}};
         }},
        {"/cards/0/parts/1/focus/1", [](Project& p) { pictureOf(p).focusY = 1.5; }},
        {"/cards/0/parts/1",
         [](Project& p) {
             pictureOf(p).width = 0;
             p.row().variants[0].bands[1].set.picture.ratio.emplace();
         }},
        {"/variants", [](Project& p) { p.row().variants.clear(); }},
        {"/variants", [](Project& p) { repeat(p.row().variants, 51); }},
        {"/variants/0/class", [](Project& p) { p.row().variants[0].className = ".walks"; }},
        {"/variants/1/class", [](Project& p) { repeat(p.row().variants, 2); }},
        {"/variants/0/set/card/pictureShare",
         [](Project& p) { p.row().variants[0].set.card.pictureShare = Length::px(10); }},
        {"/variants/0/bands", [](Project& p) { p.row().variants[0].bands.clear(); }},
        {"/variants/0/bands", [](Project& p) { repeat(p.row().variants[0].bands, 51); }},
        {"/variants/0/bands/1", [](Project& p) { p.row().variants[0].bands[1].upTo = 900; }},
        {"/variants/0/bands/0", [](Project& p) { p.row().variants[0].bands[0].upTo.reset(); }},
        {"/variants/0/bands/0/upTo", [](Project& p) { p.row().variants[0].bands[0].upTo = 10001; }},
        {"/variants/0/bands/1",
         [](Project& p) {
             repeat(p.row().variants[0].bands, 2);
             p.row().variants[0].bands.emplace_back();
         }},
        {"/wishes/grid", [](Project& p) { p.row().wishes->grid = Length::px(17); }},
        {"/wishes/reserve", [](Project& p) { p.row().wishes->reserve = 0.6; }},
        {"/wishes/without/0", [](Project& p) { p.row().wishes->without = {500}; }},
        {"/wishes/roles", [](Project& p) { repeat(p.row().wishes->roles, 1001); }},
        {"/wishes/roles/0/role", [](Project& p) { wishesOf(p).role = "picture"; }},
        {"/wishes/roles/0/lines", [](Project& p) { wishesOf(p).lines = 0; }},
        {"/wishes/roles/0/zoom", [](Project& p) { wishesOf(p).zoom = 1; }},
        {"/wishes/roles/0/upTo",
         [](Project& p) {
             wishesOf(p).from = 900;
             wishesOf(p).upTo = 800;
         }},
        {"/wishes/roles/0/leastMeasure",
         [](Project& p) {
             wishesOf(p).leastMeasure = 70;
             wishesOf(p).mostMeasure = 60;
         }},
        {"/wishes/roles/0/leastSize",
         [](Project& p) {
             wishesOf(p).leastSize = 20;
             wishesOf(p).mostSize = 18;
         }},
        {"/wishes/roles/0/ratio",
         [](Project& p) {
             wishesOf(p).ratio = 1.5;
             wishesOf(p).ratioTo = "heading";
         }},
        {"/wishes/roles/0/leastRatio", [](Project& p) { wishesOf(p).leastRatio = 1.5; }},
        {"/checks/silenced", [](Project& p) { repeat(p.checking.silenced, 1000); }},
        {"/checks/silenced/0/check", [](Project& p) { p.checking.silenced[0].check = "Holes"; }},
        {"/checks/silenced/0/reason", [](Project& p) { p.checking.silenced[0].reason.clear(); }},
        {"/checks/limits/leastZoom", [](Project& p) { p.checking.limits.leastZoom = 0.5; }},
        {"/given/levelBefore", [](Project& p) { p.row().given->levelBefore = 0; }},
        {"/given/selectors", [](Project& p) { p.row().given->selectors.pop_back(); }},
        {"/given/selectors/Big Text",
         [](Project& p) { p.row().given->selectors.emplace_back("Big Text", "p"); }},
        {"/given/selectors/card", [](Project& p) { p.row().given->selectors[1].second = " "; }},
        {"/given/selectors/card",
         [](Project& p) { p.row().given->selectors[1].second = std::string(longestSelectors + 1, 'p'); }},
        {"/given/markup", [](Project& p) { p.row().given->markup = std::string(longestCode + 1, ' '); }},
        {"/given/theme", [](Project& p) { p.row().given->theme = std::string(longestCode + 1, ' '); }},
        {"/",
         [](Project& p) {
             addRoles(p.row().style.text, 60);
             for (int i = 0; i < 60; ++i)
                 p.row().variants[0].set.text.of("other-" + std::to_string(i)).weight = 400;
         }},
        {"/style/row/level",
         [](Project& p) {
             p.row().style.row.level = Level::Subgrid;
             p.row().style.row.lastLine = LastLine::Center;
         }},
        {"/style/card/padding/top",
         [](Project& p) {
             p.row().variants[0].bands[0].set.card.direction = Direction::Beside;
             p.row().style.card.padding.top = Length::percent(4);
         }},
    };
    return all;
}

TEST(Validate, finds_nothing_wrong_with_a_sound_project) {
    EXPECT_EQ(validate(baseProject()).size(), 0U);
    EXPECT_TRUE(sound(write(baseProject())) == sound(write(baseProject())));
}

// The file of a project that breaks a rule is refused with the same message.
TEST(Validate, reports_each_breach_as_parse_reports_it_in_the_file) {
    for (const auto& [place, change] : breaches()) {
        SCOPED_TRACE(place);
        Project project = baseProject();
        change(project);
        const Problems typed = validate(project);
        ASSERT_EQ(typed.size(), 1U);
        EXPECT_EQ(typed[0].place, place);
        EXPECT_TRUE(saysHowToFix(typed[0])) << typed[0].line();
        const Problems read = problemsOf(write(project));
        ASSERT_EQ(read.size(), 1U);
        EXPECT_EQ(read[0].place, typed[0].place);
        EXPECT_EQ(read[0].sentence(), typed[0].sentence());
        EXPECT_FALSE(read[0].position.empty());
    }
}

TEST(Validate, skips_only_what_is_equal_in_a_valid_project) {
    const Project valid = baseProject();
    for (const auto& [place, change] : breaches()) {
        Project project = valid;
        change(project);
        const Problems problems = validate(project, &valid);
        ASSERT_EQ(problems.size(), 1U) << place;
        EXPECT_EQ(problems[0].place, place);
    }
}

/// Changes values of projects at random, often to what no file may hold.
class RandomChange {
public:
    explicit RandomChange(unsigned seed) : random_(seed) {}

    void apply(Project& project) {
        switch (whole(0, 12)) {
            case 0:
                return change(project.row().style);
            case 1:
                return change(any(project.row().variants).set);
            case 2:
                return change(any(any(project.row().variants).bands).set);
            case 3: {
                auto& bands = any(project.row().variants).bands;
                Band& band = any(bands);
                if (whole(0, 2) == 0)
                    band.upTo.reset();
                else
                    band.upTo = whole(-1, 11000);
                return;
            }
            case 4: {
                auto& variants = project.row().variants;
                if (whole(0, 1) == 0) return variants.push_back(any(variants));
                any(variants).className = whole(0, 1) == 0 ? "walks-" + std::to_string(whole(1, 9)) : "1st";
                return;
            }
            case 5: {
                auto& bands = any(project.row().variants).bands;
                if (whole(0, 1) == 0) return bands.push_back(any(bands));
                bands.erase(bands.begin());
                return;
            }
            case 6:
                if (!project.row().cards.empty() && !any(project.row().cards).parts.empty())
                    change(any(any(project.row().cards).parts));
                return;
            case 7:
                if (!project.row().cards.empty())
                    repeat(project.row().cards, static_cast<std::size_t>(whole(499, 502)));
                return;
            case 8:
                project.leastWidth = whole(190, 2000);
                return;
            case 9:
                project.page.container.maxWidth = length();
                project.page.scrollbar.width = whole(0, 50);
                if (whole(0, 1) == 0) {
                    PageRange& range = project.page.ranges.emplace_back();
                    range.upTo = whole(-1, 11000);
                    range.container.padding.left = length();
                    range.rootSize = units::RootSize::of(
                        {.px = double(whole(-9, 110)), .vw = double(whole(-1, 2)), .least = whole(0, 40)});
                }
                return;
            case 10: {
                RoleWishes& wishes = project.row().wishes
                                         ? project.row().wishes->roles.emplace_back()
                                         : project.row().wishes.emplace().roles.emplace_back();
                wishes.role = whole(0, 4) == 0 ? "" : "body";
                RoleWishes::members([&](const char*, auto member) {
                    if (whole(0, 5) == 0) change(wishes.*member);
                });
                return;
            }
            case 11:
                project.checking.limits.usualZoom = whole(0, 25);
                project.row().headingLevel = whole(1, 7);
                return;
            default: {
                FontEntry& font = project.fonts.emplace_back();
                font.family = whole(0, 3) == 0 ? "" : "Own Sans";
                font.file = "own.woff2";
                font.leastWeight = whole(0, 700);
                font.mostWeight = whole(400, 1100);
            }
        }
    }

private:
    int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
    template <class T>
    T& any(std::vector<T>& list) {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(list.size()) - 1))];
    }
    Length length() {
        const double value = whole(-20, 120) * (whole(0, 9) == 0 ? 100 : 1);
        switch (whole(0, 7)) {
            case 0:
                return Length::rem(value);
            case 1:
                return Length::em(value);
            case 2:
                return Length::percent(value);
            case 3:
                return Length::vw(value);
            case 4:
                return Length::cqi(value);
            case 5:
                return Length::ofAuto();
            case 6:
                return Length::ofNone();
            default:
                return Length::px(value);
        }
    }

    void change(Part& part) {
        if (auto* text = std::get_if<TextPart>(&part)) {
            text->role = whole(0, 1) == 0 ? "price" : "Price";
            return;
        }
        auto& picture = std::get<PicturePart>(part);
        picture.width = whole(-1, 2);
        picture.height = whole(0, 2);
        picture.focusX = whole(0, 4) / 3.0;
        if (whole(0, 1) == 0) change(picture.ratio);
    }
    void change(std::optional<int>& out) { out = whole(-2, 60); }
    void change(std::optional<double>& out) { out = whole(-2, 1100); }
    void change(std::optional<bool>& out) { out = whole(0, 1) == 0; }
    void change(std::string& out) { out = whole(0, 1) == 0 ? "kicker" : "card"; }
    void change(std::optional<std::string>& out) { out = whole(0, 1) == 0 ? "kicker" : "body"; }
    void change(std::optional<Length>& out) { out = length(); }
    void change(std::optional<LineHeight>& out) {
        out = whole(0, 1) == 0 ? LineHeight::times(whole(0, 120)) : LineHeight::of(length());
    }
    void change(std::optional<Ramp>& out) {
        out = Ramp::between({double(whole(0, 11000)), double(whole(1, 450))}, {12000, 450.0 - whole(0, 440)});
        if (whole(0, 1) == 0) out = Ramp::flat(whole(1, 450));
    }
    void change(std::optional<Ratio>& out) {
        out = Ratio();
        if (whole(0, 1) == 0) out = Ratio{3, whole(0, 1) * 2.0};
    }
    void change(std::optional<std::vector<std::string>>& out) {
        out.emplace();
        for (int n = whole(0, 2); n > 0; --n)
            out->emplace_back(whole(0, 3) == 0 ? "" : "Own Sans");
    }
    void change(std::optional<Colour>& out) { out = Colour{}; }
    template <class E>
    requires std::is_enum_v<E>
    void change(std::optional<E>& out) {
        const auto& table = Words<E>::table;
        out = table[static_cast<std::size_t>(whole(0, static_cast<int>(table.size()) - 1))].second;
    }
    void change(RoleStyles& styles) { change(styles.of(whole(0, 3) == 0 ? "picture" : "heading")); }
    /// Changes one member, of a group within it where it is one.
    template <HasMembers T>
    void change(T& group) {
        int count = 0;
        T::members([&](const char*, auto) { ++count; });
        int chosen = whole(0, count - 1);
        T::members([&](const char*, auto member) {
            if (chosen-- == 0) change(group.*member);
        });
    }

    std::mt19937 random_;
};

TEST(Validate, refuses_a_random_project_exactly_where_its_file_is_refused) {
    RandomProject projects(20261128);
    RandomChange changes(4711);
    int refused = 0;
    int accepted = 0;
    for (int i = 0; i < 150; ++i) {
        const Project valid = sound(projects.next().dump());
        ASSERT_TRUE(validate(valid).empty());
        for (int k = 0; k < 4; ++k) {
            Project project = valid;
            changes.apply(project);
            const Problems typed = validate(project);
            const std::string text = write(project);
            Problems read;
            const bool isRead = parse(text, "walks", {}, read).has_value();
            ASSERT_EQ(typed.empty(), isRead) << (typed.empty() ? read : typed).front().line() << "\n" << text;
            ASSERT_EQ(validate(project, &valid).size(), typed.size());
            // Where a change breaks several rules, reading stops after the values.
            for (const Problem& problem : read)
                ASSERT_TRUE(std::ranges::any_of(typed, [&](const Problem& other) {
                    return other.place == problem.place && other.sentence() == problem.sentence();
                })) << problem.line();
            ++(isRead ? accepted : refused);
        }
    }
    EXPECT_GT(refused, 100);
    EXPECT_GT(accepted, 100);
}

}  // namespace
}  // namespace tenter::project
