// Design tokens: valid by the published rules, and the values of the project.
#include "emit/tokens.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "emit/sample.h"
#include "emit/token_rules.h"
#include "project/file.h"

namespace tenter::emit {
namespace {

project::Json tokensOf(const project::Project& project, units::Unit unit = units::Unit::Px) {
    return project::Json::parse(tokens(project, {project::everyVariant(project), unit}));
}

/// The token at `path`: of the band, of all widths, or of all variants.
project::Json found(const project::Json& row, const std::string& variant, const std::string& band,
                    const std::string& path) {
    const project::Json::json_pointer at("/" + path);
    for (const project::Json& group : {row[variant].value(band, project::Json::object()),
                                       row[variant].value("all-widths", project::Json::object()),
                                       row.value("all-variants", project::Json::object())})
        if (group.contains(at)) return group[at];
    return {};
}

struct Faulty {
    std::string file;
    std::string fault;
};

// Without this, a test with the rules could not fail.
TEST(TokenRules, FindWhatTheFormatForbids) {
    const std::string colour = R"("colorSpace": "srgb", "components": [0, 0.5, 1])";
    const std::vector<Faulty> all{
        {R"({"a.b": {"$type": "number", "$value": 1}})", "name"},
        {R"({"a": {"$value": 1}})", "no type"},
        {R"({"a": {"$type": "length", "$value": 1}})", "no known $type"},
        {R"({"a": {"$type": "number", "$value": "1"}})", "not a number"},
        {R"({"a": {"$type": "dimension", "$value": "1px"}})", "not an object"},
        {R"({"a": {"$type": "dimension", "$value": {"value": 1, "unit": "em"}}})", "neither px nor rem"},
        {R"({"a": {"$type": "dimension", "$value": {"unit": "px"}}})", "no number"},
        {R"({"a": {"$type": "color", "$value": "#fff"}})", "not an object"},
        {R"({"a": {"$type": "color", "$value": {"colorSpace": "srgb", "components": [0, 300, 1]}}})",
         "outside of 0 to 1"},
        {R"({"a": {"$type": "color", "$value": {)" + colour + R"(, "hex": "#abcd"}}})", "six digits"},
        {R"({"a": {"$type": "color", "$value": {)" + colour + R"(, "alpha": 2}}})", "alpha"},
        {R"({"a": {"$type": "typography", "$value": {"fontFamily": "A"}}})", "has no fontSize"},
        {R"({"a": {"$type": "border", "$value": {"color": {)" + colour +
             R"(}, "width": {"value": 1, "unit": "px"}, "style": "thick"}}})",
         "stroke style"},
        {R"({"a": {"$type": "fontWeight", "$value": 1001}})", "1 to 1000"},
        {R"({"a": {"$type": "number", "$value": 1, "b": {"$type": "number", "$value": 1}}})",
         "not a property"},
        {R"({"a": {"$kind": "x"}})", "not a property"},
        {R"({"a": 3})", "not an object"},
        {R"({"$description": 3})", "must be a string"}};
    for (const Faulty& one : all) {
        const std::vector<std::string> faults = tests::tokenFaults(one.file);
        ASSERT_FALSE(faults.empty()) << one.file;
        EXPECT_NE(faults.front().find(one.fault), std::string::npos) << one.file << "\n" << faults.front();
    }
    EXPECT_TRUE(
        tests::tokenFaults(R"({"g": {"$type": "color", "a": {"$value": {)" + colour + R"(}}}})").empty());
}

TEST(Tokens, OfEverySampleAndOfRandomProjectsAreValid) {
    std::vector<project::Project> projects;
    for (const char* name : {"bird-counts", "ferry-words", "marsh-ar", "night-sky", "season", "shore-walks"})
        projects.push_back(tests::shipped(name));
    std::mt19937 random(20261129);
    for (int i = 0; i < 200; ++i)
        projects.push_back(tests::randomProject(random));
    for (const project::Project& project : projects)
        for (const units::Unit unit : {units::Unit::Px, units::Unit::Rem}) {
            const std::string text = tokens(project, {project::everyVariant(project), unit});
            const std::vector<std::string> faults = tests::tokenFaults(text);
            ASSERT_TRUE(faults.empty()) << faults.front() << "\n" << text;
        }
}

TEST(Tokens, AreTheEndsOfRamps) {
    const project::Json file = tokensOf(tests::shipped("shore-walks"));
    const project::Json size = found(file["walks"], "walks-trio", "up-to-590", "text/heading/font-size");
    EXPECT_EQ(size["narrow"]["$value"], project::Json::parse(R"({"value": 21, "unit": "px"})"));
    EXPECT_EQ(size["wide"]["$value"], project::Json::parse(R"({"value": 27, "unit": "px"})"));
    EXPECT_EQ(size["narrow-width"]["$value"]["value"], 360);
    EXPECT_EQ(size["wide-width"]["$value"]["value"], 590);
    const project::Json type = found(file["walks"], "walks-trio", "up-to-590", "text/heading/typography");
    EXPECT_EQ(type["wide"]["$value"]["fontSize"]["value"], 27);
    EXPECT_EQ(type["wide"]["$value"]["letterSpacing"]["value"], -0.135);  // -0.005em
    EXPECT_EQ(type["wide"]["$value"]["lineHeight"], 1.18);
    EXPECT_EQ(type["wide"]["$value"]["fontFamily"],
              project::Json::parse(R"(["Vollkorn", "EB Garamond", "serif"])"));
}

TEST(Tokens, GiveLengthsInEmAtBothEndsOfTheRamp) {
    const project::Json file = tokensOf(tests::shipped("shore-walks"));
    const project::Json margin =
        found(file["walks"], "walks-trio", "up-to-590", "text/heading/margin/bottom");
    EXPECT_DOUBLE_EQ(margin["narrow"]["$value"]["value"], 9.45);  // 0.45em of 21 px
    EXPECT_DOUBLE_EQ(margin["wide"]["$value"]["value"], 12.15);   // of 27 px
}

TEST(Tokens, StateColoursInSrgbWithTheirHexadecimalForm) {
    const project::Json file = tokensOf(tests::shipped("shore-walks"));
    const project::Json colour = found(file["walks"], "walks-trio", "up-to-590", "text/heading/color");
    EXPECT_EQ(colour["$value"]["hex"], "#17323a");
    EXPECT_EQ(colour["$value"]["components"],
              project::Json::parse("[0.0902, 0.1961, 0.2275]"));  // 23, 50, 58 of 255
    EXPECT_FALSE(colour["$value"].contains("alpha"));
    const project::Json shadow = found(file["walks"], "walks-trio", "up-to-590", "card/box-shadow");
    EXPECT_EQ(shadow["$value"]["color"]["alpha"], 0.1216);  // 1f of ff
}

TEST(Tokens, AreInRemAsMultiplesOfSixteenPx) {
    project::Project project = tests::walks();
    project.page.rootSize = 10;
    project.row().style.row.columnGap = units::Length::rem(2);
    const project::Json px = tokensOf(project);
    const project::Json rem = tokensOf(project, units::Unit::Rem);
    const std::string row = project.row().name;
    EXPECT_EQ(found(px[row], "walks-pair", "up-to-640", "row/column-gap")["$value"]["value"], 20);
    EXPECT_EQ(found(rem[row], "walks-pair", "up-to-640", "row/column-gap")["$value"]["value"], 1.25);
}

TEST(Tokens, StateSharesAsNumbers) {
    project::Project project = tests::walks();
    project.row().style.text.of("body").padding.left = units::Length::percent(5);
    const project::Json file = tokensOf(project);
    const project::Json padding =
        found(file[project.row().name], "walks-trio", "up-to-640", "text/body/padding/left");
    EXPECT_EQ(padding["$type"], "number");
    EXPECT_EQ(padding["$value"], 0.05);
}

// A breakpoint with decimals; names must not contain a full stop.
TEST(Tokens, HaveAGroupForEachBand) {
    const project::Json file = tokensOf(tests::walks());
    const project::Json trio = file[tests::walks().row().name]["walks-trio"];
    EXPECT_TRUE(trio.contains("up-to-640"));
    EXPECT_TRUE(trio.contains("above-640-up-to-980-5"));
    EXPECT_TRUE(trio.contains("above-980-5"));
    EXPECT_EQ(trio["above-980-5"]["viewport"]["above"]["$value"]["value"], 980.5);
}

TEST(Tokens, OmitWhatHasNoEffectInAnyBand) {
    project::Project project = tests::walks();
    project.row().style.row.background = units::Colour{0, 0, 0, 0};
    for (project::Variant& variant : project.row().variants) {
        variant.set.row.background.reset();
        for (project::Band& band : variant.bands)
            band.set.row.background.reset();
    }
    const auto background = [](const project::Project& of, const char* band) {
        return found(tokensOf(of)[of.row().name], "walks-trio", band, "row/background");
    };
    for (const char* band : {"up-to-640", "above-640-up-to-980-5", "above-980-5"})
        EXPECT_TRUE(background(project, band).is_null()) << band;
    project.row().variants[1].bands[0].set.row.background = units::Colour{1, 2, 3, 255};
    EXPECT_EQ(background(project, "up-to-640")["$value"]["hex"], "#010203");
    EXPECT_EQ(background(project, "above-980-5")["$value"]["alpha"], 0);
}

}  // namespace
}  // namespace tenter::emit
