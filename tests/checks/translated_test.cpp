// Findings and remedies in another language.
#include <regex>

#include "../wording/speaking.h"
#include "checking.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/titles.h"
#include "rows.h"

namespace tenter::checks {
namespace {

/// The plain words of `text` outside quotation marks that are no values: neither units, nor names of
/// browsers, nor names of the project.
std::vector<std::string> plainWords(std::string text, const project::Project& project) {
    constexpr std::string_view opening = "“";
    constexpr std::string_view closing = "”";
    for (std::size_t from = text.find(opening); from != std::string::npos; from = text.find(opening)) {
        const std::size_t to = text.find(closing, from);
        text.erase(from, to == std::string::npos ? to : to + closing.size() - from);
    }
    std::set<std::string> values{"px", "em", "rem", "CSS", "WCAG", "h1", "h2", "h3", "h4", "h5", "h6"};
    for (const text::BreakProfile* profile : text::profiles())
        values.emplace(profile->title());
    const auto addWords = [&](const std::string& name) {
        static const std::regex word("[A-Za-z][A-Za-z0-9]*");
        for (std::sregex_iterator at(name.begin(), name.end(), word); at != std::sregex_iterator(); ++at)
            values.insert(at->str());
    };
    const auto addSettings = [&](const project::Settings& settings) {
        for (const auto& [role, style] : settings.text.roles) {
            addWords(role);
            for (const std::string& family : style.family.value_or(std::vector<std::string>()))
                addWords(family);
        }
    };
    // Names of properties.
    if (project.row().given) {
        addWords(project.row().given->theme);
        addWords(project.row().given->markup);
    }
    addSettings(project::resolve(project, project.row().variants[0], 0));
    for (const project::Variant& variant : project.row().variants)
        addWords(variant.className);
    for (const project::Card& card : project.row().cards)
        for (const project::Part& part : card.parts)
            if (const auto* picture = std::get_if<project::PicturePart>(&part)) addWords(picture->file);
    std::vector<std::string> words;
    static const std::regex plain("#[0-9a-f]+|[A-Za-z][A-Za-z0-9]*");
    for (std::sregex_iterator at(text.begin(), text.end(), plain); at != std::sregex_iterator(); ++at)
        if (at->str().front() != '#' && !values.contains(at->str())) words.push_back(at->str());
    return words;
}

/// The findings of the first variant, with fonts that were found in the language in use: notes about fonts
/// are sentences, and a store keeps them.
std::vector<Finding> findingsOf(const project::Project& project) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    return checks::check(project, 0, store);
}

TEST(TranslatedFindings, HaveNoEnglishWordInTheirSentences) {
    for (const auto& [check, project] : test::rows::rowsByCheck()) {
        SCOPED_TRACE(check);
        const test::Speaking speaking(test::fullWidth);
        const std::vector<Finding> findings = findingsOf(project);
        EXPECT_NE(test::find(findings, check), nullptr);
        for (const Finding& finding : findings)
            for (const std::string& sentence :
                 {finding.statement.what, finding.statement.why, finding.statement.fix})
                EXPECT_EQ(plainWords(sentence, project), std::vector<std::string>()) << sentence;
    }
}

TEST(TranslatedFindings, AreTheSameFindingsInGerman) {
    for (const auto& [check, project] : test::rows::rowsByCheck()) {
        SCOPED_TRACE(check);
        const std::vector<Finding> english = findingsOf(project);
        std::vector<bool> namesItsWidths;
        for (const Finding& finding : english)
            namesItsWidths.push_back(widthsBeyondText(project, finding, 3).empty());
        const test::Speaking speaking("de");
        const std::vector<Finding> german = findingsOf(project);
        ASSERT_EQ(english.size(), german.size());
        for (std::size_t i = 0; i < english.size(); ++i) {
            EXPECT_EQ(english[i].check, german[i].check);
            EXPECT_EQ(english[i].places, german[i].places);
            EXPECT_EQ(english[i].severity, german[i].severity);
            EXPECT_NE(english[i].says, german[i].says);
            EXPECT_EQ(widthsBeyondText(project, german[i], 3).empty(), namesItsWidths[i]) << german[i].says;
        }
    }
}

TEST(TranslatedFindings, HaveTheArticlesOfTheirRolesInGerman) {
    const std::string text = R"(, "copy": "Low tide")";
    const std::string role = R"({"role": ")";
    const project::Project project =
        test::quiet(R"([{"parts": [)" + role + R"(heading")" + text + "}, " + role + R"(body")" + text +
                    "}, " + role + R"(button")" + text + "}, " + role + R"(price")" + text + "}, " + role +
                    R"(heading", "copy": ""}]}])");
    const auto said = [&](std::size_t part) { return named(project, {0, part}); };
    EXPECT_EQ(said(0), "the heading “Low tide”");
    EXPECT_EQ(said(3), "the price “Low tide”");
    EXPECT_EQ(said(4), "the empty heading of card 1");
    EXPECT_EQ(shortening("price"), "shorten the price");
    const test::Speaking speaking("de");
    EXPECT_EQ(said(0), "die Überschrift „Low tide“");
    EXPECT_EQ(said(1), "der Absatz „Low tide“");
    EXPECT_EQ(said(2), "der Button „Low tide“");
    EXPECT_EQ(said(3), "der Text „Low tide“ (Rolle „price“)");
    EXPECT_EQ(said(4), "die leere Überschrift in Karte 1");
    EXPECT_EQ(shortening("body"), "den Absatz kürzen");
    EXPECT_EQ(shortening("price"), "den Text der Rolle „price“ kürzen");
}

TEST(TranslatedFindings, HaveTheCasesOfGermanArticles) {
    const auto whatOf = [](const std::string& check) {
        for (const auto& [name, project] : test::rows::rowsByCheck())
            if (name == check)
                for (const Finding& finding : findingsOf(project))
                    if (finding.check == check) return finding.statement.what;
        return std::string();
    };
    EXPECT_NE(whatOf("word").find(" in the heading “"), std::string::npos);
    const test::Speaking speaking("de");
    EXPECT_NE(whatOf("word").find(" in der Überschrift „"), std::string::npos) << whatOf("word");
    EXPECT_NE(whatOf("font").find(", zuerst im Absatz „"), std::string::npos) << whatOf("font");
    EXPECT_NE(whatOf("tight-fit").find(", die in der Überschrift „"), std::string::npos)
        << whatOf("tight-fit");
    EXPECT_NE(whatOf("heading-lines").find(" hat die Überschrift „"), std::string::npos);
}

TEST(TitlesOfChecks, AreTheirNamesInEnglish) {
    for (const std::string_view name : checkNames()) {
        const std::string english = titleOfCheck(name);
        std::string expected = capitalised(std::string(name));
        std::ranges::replace(expected, '-', ' ');
        EXPECT_EQ(english, expected);
        const test::Speaking speaking(test::fullWidth);
        EXPECT_NE(titleOfCheck(name), english) << "it can be translated";
    }
    EXPECT_EQ(titleOfCheck("new-check"), "New check");
}

}  // namespace
}  // namespace tenter::checks
