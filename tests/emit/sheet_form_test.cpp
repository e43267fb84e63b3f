// The forms of the stylesheet: each comes to the same values at every width.
#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <set>

#include "css_reader.h"
#include "emit/stylesheet.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using tests::computed;
using tests::readCss;

std::string sheetOf(const project::Project& project, const SheetForm& form,
                    std::vector<std::size_t> variants = {0}) {
    return stylesheet(project, {std::move(variants), project.unit, form});
}

/// `value` with each `var()` replaced by what `properties` has. CSS Custom Properties 1 § 3.
std::string substituted(std::string value, const std::map<std::string, std::string>& properties) {
    static const std::regex var(R"(var\((--[^)]*)\))");
    for (std::smatch found; std::regex_search(value, found, var);) {
        const auto known = properties.find(found[1]);
        EXPECT_NE(known, properties.end()) << found[1];
        if (known == properties.end()) break;
        value = found.prefix().str() + known->second + found.suffix().str();
    }
    return value;
}

/// The selectors of a sheet that start with the class of the variant.
std::set<std::string> selectorsOf(const tests::CssSheet& sheet, const std::string& className) {
    std::set<std::string> out;
    for (const tests::CssRule& rule : sheet.rules)
        for (const std::string& selector : rule.selectors)
            if (selector.starts_with("." + className)) out.insert(selector);
    return out;
}

void expectSame(const tests::CssSheet& plain, const tests::CssSheet& other, const std::string& className) {
    EXPECT_TRUE(other.sound);
    for (const std::string& selector : selectorsOf(plain, className))
        for (const double width : {320.0, 590.5, 640.0, 641.0, 930.0, 980.5, 981.0, 1600.0}) {
            const auto properties = computed(other, "." + className, width);
            auto found = computed(other, selector, width);
            std::erase_if(found, [](const auto& one) { return one.first.starts_with("--"); });
            for (auto& [property, value] : found)
                value = substituted(value, properties);
            EXPECT_EQ(found, computed(plain, selector, width)) << selector << " at " << width;
        }
}

TEST(SheetForm, WithCustomPropertiesComesToTheSameValues) {
    std::vector<project::Project> projects{tests::walks(), tests::shipped("season"),
                                           tests::shipped("shore-walks")};
    std::mt19937 random(71);
    for (int i = 0; i < 60; ++i)
        projects.push_back(tests::randomProject(random));
    for (const project::Project& project : projects) {
        const std::vector<std::size_t> all = project::everyVariant(project);
        const tests::CssSheet plain = readCss(sheetOf(project, {}, all));
        const tests::CssSheet moved = readCss(sheetOf(project, {.properties = true}, all));
        for (const project::Variant& variant : project.row().variants)
            expectSame(plain, moved, variant.className);
    }
}

TEST(SheetForm, WithCustomPropertiesChangesOnlyTheseInMediaQueries) {
    const tests::CssSheet sheet = readCss(sheetOf(tests::shipped("shore-walks"), {.properties = true}));
    std::size_t narrower = 0;
    for (const tests::CssRule& rule : sheet.rules) {
        if (rule.media.empty() || !rule.media.front().starts_with("(max-width")) continue;
        ++narrower;
        EXPECT_EQ(rule.selectors, (std::vector<std::string>{".walks-trio"}));
        for (const auto& [property, value] : rule.declarations)
            EXPECT_TRUE(property.starts_with("--walks-")) << property;
    }
    EXPECT_GE(narrower, 2U);
    const auto row = computed(sheet, ".walks-trio", 500);
    EXPECT_TRUE(row.contains("--walks-heading-font-size"));
    EXPECT_TRUE(row.contains("--walks-button-hover-background"));
}

TEST(SheetForm, MinifiedComesToTheSameValuesInFewerBytes) {
    const project::Project project = tests::shipped("shore-walks");
    const std::vector<std::size_t> all = project::everyVariant(project);
    for (const bool properties : {false, true}) {
        const std::string usual = sheetOf(project, {.properties = properties}, all);
        const std::string small = sheetOf(project, {.properties = properties, .minified = true}, all);
        EXPECT_LT(small.size(), usual.size() * 3 / 4);
        EXPECT_EQ(small.find('\n'), std::string::npos);
        EXPECT_EQ(small.find("/*"), std::string::npos);
        const tests::CssSheet plain = readCss(usual);
        const tests::CssSheet minified = readCss(small);
        EXPECT_EQ(minified.rules.size(), plain.rules.size());
        for (std::size_t i = 0; i < std::min(plain.rules.size(), minified.rules.size()); ++i) {
            EXPECT_EQ(minified.rules[i].selectors, plain.rules[i].selectors);
            EXPECT_EQ(minified.rules[i].declarations, plain.rules[i].declarations);
        }
    }
}

TEST(SheetForm, WithoutCommentsIsTheSameSheetWithoutThem) {
    const project::Project project = tests::shipped("shore-walks");
    const std::string bare = sheetOf(project, {.comments = false});
    EXPECT_TRUE(readCss(bare).comments.empty());
    EXPECT_FALSE(readCss(sheetOf(project, {})).comments.empty());
    expectSame(readCss(sheetOf(project, {})), readCss(bare), "walks-trio");
}

TEST(SheetForm, InALayerHasEverythingInside) {
    const std::string layered = sheetOf(tests::shipped("shore-walks"), {.layer = true, .comments = false});
    EXPECT_TRUE(layered.starts_with("@layer walks {\n")) << layered.substr(0, 100);
    EXPECT_TRUE(layered.ends_with("\n}\n"));
    std::string inside = layered.substr(15, layered.size() - 15 - 2);
    inside = std::regex_replace(inside, std::regex("(^|\n)  "), "$1");
    const std::string plain = sheetOf(tests::shipped("shore-walks"), {.comments = false});
    EXPECT_EQ(inside, plain);
}

}  // namespace
}  // namespace tenter::emit
