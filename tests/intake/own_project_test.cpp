// A stylesheet or a page that Tenter wrote comes back as the project: the same values at every width.
#include "intake/own_project.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <fstream>
#include <set>

#include "emit/css_reader.h"
#include "emit/page.h"
#include "emit/page_folder.h"
#include "emit/page_scaffold.h"
#include "emit/stylesheet.h"
#include "intake/own_page.h"
#include "project/cascade.h"
#include "project/file.h"

namespace tenter::intake {
namespace {

namespace fs = std::filesystem;
using units::Length;

const fs::path samples = TENTER_SOURCE_DIR "/sample-projects";
const std::vector<std::string> names{"bird-counts", "ferry-words", "night-sky", "season", "shore-walks"};

project::Project sample(const std::string& name) {
    project::Problems problems;
    auto read = project::read(samples / (name + ".tenter.json"), problems);
    EXPECT_TRUE(read.has_value()) << name;
    return read.value_or(project::Project{});
}

std::string sheetOf(const project::Project& project, const emit::SheetForm& form) {
    return emit::stylesheet(project, {project::everyVariant(project), project.unit, form, {}});
}

/// Widths beside every breakpoint, and some between.
std::vector<double> widthsOf(const project::Project& project) {
    std::vector<double> widths{320, 500, 777, 1000, 1333, 1900};
    for (const project::Variant& variant : project.row().variants)
        for (const project::Band& band : variant.bands)
            if (band.upTo) {
                widths.push_back(*band.upTo);
                widths.push_back(*band.upTo + 0.5);
            }
    for (const project::PageRange& range : project.page.ranges)
        if (range.upTo) widths.push_back(*range.upTo);
    return widths;
}

/// Fails where the stylesheets of two projects have other values; font sizes may differ by 0.01 px.
void expectSameRow(const project::Project& expected, const project::Project& actual) {
    const tests::CssSheet one = tests::readCss(sheetOf(expected, {}));
    const tests::CssSheet other = tests::readCss(sheetOf(actual, {}));
    std::set<std::string> selectors;
    for (const tests::CssRule& rule : one.rules)
        selectors.insert(rule.selectors.begin(), rule.selectors.end());
    for (const double width : widthsOf(expected)) {
        for (const std::string& selector : selectors) {
            auto values = tests::computed(one, selector, width);
            auto found = tests::computed(other, selector, width);
            const bool isText = values.contains("font-family");
            if (isText) {
                values.erase("font-size");
                found.erase("font-size");
            }
            EXPECT_EQ(found, values) << selector << " at " << width;
        }
        for (const project::Variant& variant : expected.row().variants) {
            const auto at = actual.row().findVariant(variant.className);
            ASSERT_TRUE(at.has_value()) << variant.className;
            const project::Variant& read = actual.row().variants[*at];
            const auto before = project::resolve(expected, variant, project::bandAt(variant, width));
            const auto after = project::resolve(actual, read, project::bandAt(read, width));
            for (const auto& [role, style] : before.text.roles) {
                const project::TextStyle* text = after.text.find(role);
                if (text == nullptr) continue;
                EXPECT_EQ(text->follow, style.follow) << role;
                EXPECT_NEAR(text->size->sizeAt(width), style.size->sizeAt(width), 0.01)
                    << role << " at " << width;
            }
        }
    }
}

/// The stylesheet of a project comes back as the same row.
void expectReadBack(const project::Project& project) {
    const std::string css = sheetOf(project, {});
    SCOPED_TRACE(css);
    project::Problems problems;
    auto read = projectOfSheet({css, "row.css", ".", 16}, problems);
    ASSERT_TRUE(read.has_value()) << (problems.empty() ? "" : problems.front().line());
    // A stylesheet has no cards, which decide what a stylesheet contains.
    read->project.row().cards = project.row().cards;
    expectSameRow(project, read->project);
}

TEST(OwnSheet, OfEverySampleInEveryFormComesBack) {
    const std::vector<emit::SheetForm> forms{{},
                                             {.properties = true},
                                             {.layer = true},
                                             {.comments = false},
                                             {.minified = true},
                                             {.properties = true, .layer = true, .minified = true}};
    for (const std::string& name : names)
        for (std::size_t form = 0; form < forms.size(); ++form) {
            SCOPED_TRACE(name + ", form " + std::to_string(form));
            const project::Project project = sample(name);
            const std::string css = sheetOf(project, forms[form]);
            project::Problems problems;
            const double root = project.page.rootSize.resolve(units::usualReaderSize, 1000.0);
            auto read = projectOfSheet({css, "row.css", ".", root}, problems);
            ASSERT_TRUE(read.has_value()) << (problems.empty() ? "" : problems.front().line());
            EXPECT_EQ(read->report.size(), 1U) << ::testing::PrintToString(read->report);
            EXPECT_EQ(read->project.unit, project.unit);
            // A stylesheet has no cards, which decide what a stylesheet contains.
            read->project.row().cards = project.row().cards;
            expectSameRow(project, read->project);
        }
}

TEST(OwnPage, OfEverySampleInEveryFormComesBackWithItsTextsAndPictures) {
    const std::vector<emit::SheetForm> forms{{}, {.properties = true}, {.layer = true}, {.minified = true}};
    for (const char* name :
         {"bird-counts", "ferry-words", "marsh-ar", "night-sky", "season", "shore-walks"}) {
        SCOPED_TRACE(name);
        const project::Project project = sample(name);
        text::Fonts fonts;
        fonts.use(project.fonts, samples);
        text::ParagraphStore store(fonts);
        project::Problems problems;
        emit::PageFolderOptions options;
        options.sheet.unit = project.unit;
        std::string path = (fs::temp_directory_path() / "tenter-intake-XXXXXX").string();
        ASSERT_NE(mkdtemp(path.data()), nullptr);
        const fs::path site = fs::path(path) / "site";
        emit::FolderCuts cuts(project, samples, options.variant, store, text::defaultProfile());
        ASSERT_TRUE(cuts.write(site, problems));
        options.cuts = &cuts;
        for (const emit::SheetForm& form : forms) {
            options.sheet.form = form;
            const auto folder = emit::pageFolder(project, samples, options, store, problems);
            ASSERT_TRUE(folder.has_value());
            ASSERT_TRUE(project::replaceFolder(site, folder->files, problems));
            std::ifstream stream(site / "index.html", std::ios::binary);
            const std::string html{std::istreambuf_iterator<char>(stream), {}};
            const auto read = projectOfPage({html, site / "index.html", site, 16}, problems);
            ASSERT_TRUE(read.has_value()) << (problems.empty() ? "" : problems.front().line());
            EXPECT_TRUE(read->report.empty()) << read->report.front();
            EXPECT_EQ(read->project.name, project.name);
            EXPECT_EQ(read->project.language, project.language);
            EXPECT_EQ(read->project.rightToLeft, project.rightToLeft);
            EXPECT_EQ(read->project.row().headingLevel, project.row().headingLevel);
            for (const double width : widthsOf(project)) {
                const project::PageSettings before = project.page.at(width);
                const project::PageSettings after = read->project.page.at(width);
                EXPECT_EQ(after.rootSize.css(), before.rootSize.css()) << width;
                EXPECT_EQ(after.container.width.css(), before.container.width.css()) << width;
                EXPECT_EQ(after.container.maxWidth.css(), before.container.maxWidth.css()) << width;
                EXPECT_EQ(after.container.background.css(), before.container.background.css()) << width;
                EXPECT_EQ(after.container.padding.left.value_or(Length()).css(),
                          before.container.padding.left.value_or(Length()).css())
                    << width;
            }
            ASSERT_EQ(read->project.row().cards.size(), project.row().cards.size());
            for (std::size_t c = 0; c < project.row().cards.size(); ++c) {
                const auto& before = project.row().cards[c].parts;
                const auto& after = read->project.row().cards[c].parts;
                ASSERT_EQ(after.size(), before.size());
                for (std::size_t p = 0; p < before.size(); ++p)
                    if (const auto* text = std::get_if<project::TextPart>(&before[p])) {
                        const auto& same = std::get<project::TextPart>(after[p]);
                        EXPECT_EQ(same.role, text->role);
                        EXPECT_EQ(project::plainText(same.copy), project::plainText(text->copy));
                        EXPECT_EQ(same.name, text->name);
                    } else {
                        const auto& picture = std::get<project::PicturePart>(after[p]);
                        EXPECT_TRUE(fs::exists(site / picture.file)) << picture.file;
                        // Of the cut files the widest, which is the one that the markup gives the size of.
                        const std::string size = "-" + std::to_string(std::lround(picture.width)) + "x" +
                                                 std::to_string(std::lround(picture.height)) + ".jpg";
                        EXPECT_TRUE(picture.file.ends_with(size)) << picture.file;
                        EXPECT_EQ(picture.alt, std::get<project::PicturePart>(before[p]).alt);
                        EXPECT_NEAR(picture.focusX, std::get<project::PicturePart>(before[p]).focusX, 1e-6);
                    }
            }
            project::Project one = project;
            one.row().variants.resize(1);
            expectSameRow(one, read->project);
        }
        fs::remove_all(path);
    }
}

project::TextPart partOf(const std::string& role) {
    project::TextPart text;
    text.role = role;
    text.copy = {{project::Run::Kind::Plain, std::string("Low tide"), ""}};
    return text;
}

/// Cards whose pictures stand at every place that has rules of its own.
std::vector<project::Card> cardsWithPictures() {
    const project::TextPart text = partOf("body");
    project::PicturePart picture;
    picture.file = "shore.jpg";
    picture.width = 320;
    picture.height = 213;
    return {{{picture, text}, {}},
            {{text, picture}, {}},
            {{text, picture, text}, {}},
            {{picture}, {}},
            {{picture, text, picture, text}, {}},
            {{picture, text, picture}, {}}};
}

// A negative margin of a picture's own is not the card's padding, whether pictures are full-bleed or not.
TEST(OwnSheet, KeepsFullBleedPicturesAndNegativeMarginsApart) {
    const project::Sides none{Length(), Length(), Length(), Length(), {}};
    const project::Sides uneven{Length::px(17), Length::rem(1.25), Length::px(9), Length::em(1), {}};
    const project::Sides blockOnly{Length::px(17), Length(), Length::px(9), Length(), {}};
    const project::Sides inlineOnly{Length(), Length::px(11), Length(), Length::px(12), {}};
    const project::Sides shares{
        Length::percent(4), Length::percent(3), Length::px(9), Length::percent(2.5), {}};
    const project::Sides negative{Length::px(-4), Length::px(-6), Length::px(-3), Length::px(-5), {}};
    const project::Sides mixed{Length::px(3), Length::px(-6), Length(), Length::px(2), {}};
    const std::vector<project::Card> all = cardsWithPictures();
    for (const project::Direction direction : {project::Direction::Stacked, project::Direction::Beside})
        for (const bool bleed : {false, true})
            for (const project::Sides& padding : {none, uneven, blockOnly, inlineOnly, shares})
                for (const project::Sides& margin : {none, negative, mixed})
                    for (std::size_t count = 0; count <= all.size(); ++count) {
                        // No project has the share of a card beside a picture that is in its padding.
                        if (direction == project::Direction::Beside && !bleed && padding == shares) continue;
                        project::Project project = sample("shore-walks");
                        project.row().variants.resize(1);
                        for (project::Band& band : project.row().variants[0].bands) {
                            band.set.card = {};
                            band.set.picture = {};
                        }
                        // One card with pictures, or several with a class for each place.
                        project.row().cards = count == all.size() ? all : std::vector{all[count]};
                        project.row().cards.push_back(
                            {{partOf("heading"), partOf("body"), partOf("button")}, {}});
                        project::Settings& style = project.row().style;
                        style.card.direction = direction;
                        style.card.pictureShare = Length::percent(35);
                        style.card.bleed = bleed;
                        style.card.padding = padding;
                        style.card.radius = Length::px(8);
                        style.card.border = {Length::px(1), units::Colour{10, 20, 30, 255}, {}};
                        style.picture.margin = margin;
                        style.picture.radius = Length::px(3);
                        expectReadBack(project);
                        if (::testing::Test::HasFailure()) return;
                    }
}

// In a subgrid the stylesheet has no percentages in vertical margins of pictures.
TEST(OwnSheet, KnowsTheSharesInMarginsOfPicturesInASubgrid) {
    const project::Sides padding{Length::px(9), Length::percent(4), Length::px(9), Length::px(12), {}};
    const project::Sides margin{
        Length::percent(3.1), Length::percent(0.5), Length::percent(2.04), Length::px(7), {}};
    for (const project::Direction direction : {project::Direction::Stacked, project::Direction::Beside})
        for (const Length& gap : {Length::px(24), Length::percent(3)}) {
            project::Project project = sample("shore-walks");
            project.row().variants.resize(1);
            project.row().cards = cardsWithPictures();
            project.row().cards.push_back({{partOf("heading"), partOf("body"), partOf("button")}, {}});
            for (project::Band& band : project.row().variants[0].bands) {
                band.set.card = {};
                band.set.picture = {};
                band.set.row.columnGap = gap;
                band.set.row.level = project::Level::Subgrid;
                band.set.row.lastLine = project::LastLine::Start;
            }
            project::Settings& style = project.row().style;
            style.card.direction = direction;
            style.card.bleed = direction == project::Direction::Beside;
            style.card.pictureShare = Length::percent(35);
            style.card.padding = padding;
            style.picture.margin = margin;
            expectReadBack(project);
        }
}

/// A page with a sheet of the sample in which every `family` of the button is replaced.
std::string pageWithButtonFont(const std::string& families) {
    project::Project project = sample("shore-walks");
    project.row().style.text.of("button").family = std::vector<std::string>{"Cabin"};
    std::string css = sheetOf(project, {});
    const std::string cabin = "\"Cabin\"";
    for (std::size_t at = css.find(cabin); at != std::string::npos;
         at = css.find(cabin, at + families.size()))
        css.replace(at, cabin.size(), families);
    return "<!doctype html><style>" + css +
           "</style><main><section class=\"walks-pair\"><article class=\"walks-card\"><a "
           "class=\"walks-button\" href=\"#\">Low</a></article></section></main>";
}

TEST(OwnPage, KnowsTheFontsThatOnlyItNames) {
    const auto familyOf = [](const std::string& families) {
        project::Problems problems;
        const auto read = projectOfPage({pageWithButtonFont(families), "page.html", ".", 16}, problems);
        EXPECT_TRUE(read.has_value()) << (problems.empty() ? "" : problems.front().line());
        return read ? *project::resolve(read->project, read->project.row().variants[0], 0)
                           .text.find("button")
                           ->family
                    : std::vector<std::string>();
    };
    using Names = std::vector<std::string>;
    EXPECT_EQ(familyOf("\"Tenter fallback serif\", \"Cabin\", sans-serif"), (Names{"Cabin", "sans-serif"}));
    EXPECT_EQ(familyOf("\"Tenter family Lato\", \"Tenter serif\", serif"), (Names{"Lato", "serif"}));
    // As earlier versions wrote it if no named family has a character of the texts.
    EXPECT_EQ(familyOf("\"Tenter fallback Lato\""), Names{"Lato"});
    EXPECT_EQ(familyOf("\"Tenter fallback serif\""), Names{"serif"});
}

// A break at the end of a text is no line of its own, but a second one is.
TEST(OwnPage, KeepsBreaksAtTheEndOfATextAndThoseAlone) {
    using Kind = project::Run::Kind;
    const project::Run plain{Kind::Plain, "Low tide", ""};
    const project::Run end{Kind::Break, "", ""};
    project::Project project = sample("shore-walks");
    const std::vector<project::Copy> copies{{plain, end}, {plain, end, end}, {end, plain, end, end}, {end}};
    project.row().cards = {{}};
    for (const project::Copy& copy : copies) {
        project::TextPart part = partOf("body");
        part.copy = copy;
        project.row().cards[0].parts.emplace_back(part);
    }
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const std::string html = emit::page(project, 0, samples, store, problems);
    const auto read = projectOfPage({html, "page.html", ".", 16}, problems);
    ASSERT_TRUE(read.has_value()) << (problems.empty() ? "" : problems.front().line());
    ASSERT_EQ(read->project.row().cards[0].parts.size(), copies.size());
    for (std::size_t i = 0; i < copies.size(); ++i)
        EXPECT_EQ(std::get<project::TextPart>(read->project.row().cards[0].parts[i]).copy, copies[i]) << i;
}

TEST(OwnPage, HasItsContainerBesideItsPlace) {
    project::Page page;
    page.container.width = Length::px(900);
    page.container.place = project::ContainerPlace::Start;
    page.container.shift = {-3.25, 40.5, {}};
    project::PageRange narrow;
    narrow.upTo = 700;
    narrow.container.width = Length::percent(90);
    narrow.container.place = project::ContainerPlace::Center;
    narrow.container.shift = project::Shift{};
    project::PageRange middle;
    middle.upTo = 1100;
    middle.container.shift = project::Shift{0, -12, {}};
    middle.container.width = Length::percent(50);
    middle.container.maxWidth = Length::rem(40);
    middle.container.addedWidth = 90.5;
    page.ranges = {narrow, middle};
    const project::Page read = ownPage(css::readSheet(emit::scaffold(page, "container")), {"container"});
    for (const double width : {400.0, 700.0, 701.0, 1100.0, 1101.0, 1800.0}) {
        SCOPED_TRACE(width);
        const project::Container before = page.at(width).container;
        const project::Container after = read.at(width).container;
        EXPECT_EQ(after.width.css(), before.width.css());
        EXPECT_EQ(after.maxWidth.css(), before.maxWidth.css());
        EXPECT_EQ(after.addedWidth, before.addedWidth);
        EXPECT_EQ(after.place, before.place);
        EXPECT_EQ(after.shift.percent, before.shift.percent);
        EXPECT_EQ(after.shift.px, before.shift.px);
    }
}

TEST(OwnSheet, OfOthersIsRefused) {
    for (const char* css : {"", ".a { color: red }", ".walks .walks-title { color: red }", "/* x", "}{"}) {
        project::Problems problems;
        EXPECT_FALSE(projectOfSheet({css, "row.css", ".", 16}, problems)) << css;
        EXPECT_EQ(problems.size(), 1U) << css;
    }
    project::Problems problems;
    EXPECT_FALSE(projectOfPage({"<p>Hello</p>", "page.html", ".", 16}, problems));
    EXPECT_EQ(problems.size(), 1U);
}

// Otherwise nobody would know why the import is less exact.
TEST(OwnSheet, WithValuesOfNoProjectSaysWhyItIsReadAsThatOfOthers) {
    std::string css = sheetOf(sample("shore-walks"), {});
    const std::string columns = "repeat(2, minmax(0, 1fr))";
    const std::size_t at = css.find(columns);
    ASSERT_NE(at, std::string::npos);
    css.replace(at, columns.size(), "repeat(300, minmax(0, 1fr))");
    project::Problems problems;
    EXPECT_FALSE(projectOfSheet({css, "row.css", ".", 16}, problems));
    ASSERT_FALSE(whyNotOwn(problems).empty());
    EXPECT_TRUE(
        whyNotOwn(problems).front().starts_with("Warning: This has Tenter’s own markup, but is read like a "
                                                "page of another author: \"columns\" must be"))
        << whyNotOwn(problems).front();
    project::Problems others;
    EXPECT_FALSE(projectOfSheet({".a { color: red }", "row.css", ".", 16}, others));
    EXPECT_TRUE(whyNotOwn(others).empty());
}

TEST(OwnSheet, ReportsWhatItDoesNotUnderstand) {
    std::string css = sheetOf(sample("shore-walks"), {});
    const std::string gap = "column-gap: 1.75rem";
    const std::size_t at = css.find(gap);
    ASSERT_NE(at, std::string::npos);
    css.replace(at, gap.size(), "column-gap: 3ch");
    project::Problems problems;
    const auto read = projectOfSheet({css, "row.css", ".", 16}, problems);
    ASSERT_TRUE(read.has_value());
    ASSERT_GE(read->report.size(), 2U);
    EXPECT_EQ(read->report.front(), "Warning: The value “3ch” of column-gap of the row was not understood.");
}

// What a project cannot express is reported with both values.
TEST(OwnSheet, ReportsValuesThatTheProjectDoesNotGive) {
    std::string css = sheetOf(sample("shore-walks"), {});
    const std::string display = "text-decoration: none";
    const std::size_t at = css.find(display);
    ASSERT_NE(at, std::string::npos);
    css.replace(at, display.size(), "text-decoration: underline");
    project::Problems problems;
    const auto read = projectOfSheet({css, "row.css", ".", 16}, problems);
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->report.front(),
              "Warning: The value “underline” of text-decoration of the button is “none” in the project.");
}

}  // namespace
}  // namespace tenter::intake
