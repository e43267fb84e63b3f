// Rules for the text of every finding: three short sentences, a place, plain words, plain numbers.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <regex>
#include <string>
#include <vector>

#include "checks/finding.h"
#include "project/project.h"

namespace tenter::test {

/// `text` without what is in quotation marks, which users wrote.
inline std::string withoutQuotations(const std::string& text) {
    return std::regex_replace(text, std::regex("“[^”]*”"), "“”");
}

/// The number of sentences of `text`, quotations aside. A full stop within a number or a file name ends none.
inline std::size_t sentenceCount(const std::string& text) {
    const std::string plain = withoutQuotations(text);
    const std::regex end("[.?!]( |$)");
    return static_cast<std::size_t>(
        std::distance(std::sregex_iterator(plain.begin(), plain.end(), end), std::sregex_iterator()));
}

inline std::size_t wordCount(const std::string& text) {
    const std::regex word("[^ ]+");
    return static_cast<std::size_t>(
        std::distance(std::sregex_iterator(text.begin(), text.end(), word), std::sregex_iterator()));
}

/// True if the sentence names widths, a card, or a part by its kind.
inline bool namesAPlace(const std::string& sentence, const project::Project& project) {
    std::vector<std::string> kinds{"card", "cards", "row", "paragraph", "picture", "link", "buttons"};
    for (const std::string& role : project::roles(project))
        kinds.push_back(role);
    if (sentence.find("\u00A0px") != std::string::npos || sentence.find("every width") != std::string::npos)
        return true;
    return std::ranges::any_of(kinds, [&](const std::string& kind) {
        return std::regex_search(sentence, std::regex("(^|[^a-z])" + kind + "([^a-z]|$)", std::regex::icase));
    });
}

/// Words that have a plainer replacement in every text of Tenter, as regular expressions.
inline const std::vector<std::string>& wordsToAvoid() {
    static const std::vector<std::string> words{"tell",
                                                "tells",
                                                "told",
                                                "telling",
                                                "mend",
                                                "mends",
                                                "mended",
                                                "otherwise",
                                                "whose",
                                                "take over",
                                                "takes over",
                                                "let go",
                                                "leave alone",
                                                "bring",
                                                "brings",
                                                "comes? to",
                                                "at its smallest",
                                                "(may|to) be had",
                                                "as little as",
                                                "like length",
                                                "famil(y|ies) of browsers",
                                                "trial",
                                                "levels? the parts",
                                                "levell?ing",
                                                "mute",
                                                "ignores?",
                                                "weighs?",
                                                "weighed",
                                                "ground",
                                                "keeps? company",
                                                "stands? in",
                                                "stand at",
                                                "stick out",
                                                "sticks out",
                                                "copy",
                                                "wished of",
                                                "unlike",
                                                "asked for",
                                                "nobody"};
    return words;
}

/// Expects a finding of `project` to follow these rules.
inline void expectReadable(const checks::Finding& finding, const project::Project& project) {
    SCOPED_TRACE(finding.says);
    EXPECT_LE(sentenceCount(finding.says), 3U);
    EXPECT_LE(finding.says.size(), 330U);
    EXPECT_LE(wordCount(finding.says), 55U);
    EXPECT_FALSE(finding.statement.what.empty());
    EXPECT_FALSE(finding.statement.why.empty());
    EXPECT_EQ(finding.says, checks::textOf(finding.statement, finding.profiles));
    for (const std::string& sentence : {finding.statement.what, finding.statement.why, finding.statement.fix})
        EXPECT_EQ(sentenceCount(sentence), 0U) << "a sentence of a statement has no full stop: " << sentence;
    EXPECT_TRUE(namesAPlace(withoutQuotations(finding.statement.what), project));
    const std::string plain = withoutQuotations(finding.says);
    EXPECT_TRUE(std::regex_search(plain, std::regex("^[A-Z]"))) << plain;
    EXPECT_EQ(plain.back(), '.');
    for (const std::string& word : wordsToAvoid())
        EXPECT_FALSE(std::regex_search(
            plain, std::regex("(^|[^A-Za-z])(" + word + ")([^A-Za-z-]|$)", std::regex::icase)))
            << word;
    // Thousands are not separated, and a minus is U+2212.
    EXPECT_FALSE(std::regex_search(plain, std::regex("[0-9](,|'|\u202F|\u2009|\u00A0)[0-9]"))) << plain;
    EXPECT_FALSE(std::regex_search(plain, std::regex("(^| )-[0-9]"))) << plain;
    EXPECT_FALSE(std::regex_search(plain, std::regex("[0-9]\\.[0-9]{3}"))) << "more than two decimals";
    EXPECT_FALSE(std::regex_search(plain, std::regex("[0-9] (px|em|%)"))) << "a space that breaks";
    // A width range appears once.
    const std::regex range("from [0-9.]+ to [0-9.]+\u00A0px", std::regex::icase);
    std::vector<std::string> ranges;
    for (std::sregex_iterator it(plain.begin(), plain.end(), range); it != std::sregex_iterator(); ++it)
        ranges.push_back(it->str());
    std::ranges::sort(ranges);
    EXPECT_TRUE(std::ranges::adjacent_find(ranges) == ranges.end());
}

}  // namespace tenter::test
