// Output in another language than English.
#include <gtest/gtest.h>

#include "process.h"

namespace tenter::tests {
namespace {

const std::string languageSample = TENTER_SAMPLES "/shore-walks.tenter.json";

TEST(OutputLanguage, IsEnglishUnlessAskedFor) {
    const Finished usual = tenterCli({"check", languageSample});
    const Finished english = tenterCli({"check", languageSample, "--language", "en"});
    EXPECT_EQ(usual.out, english.out);
    EXPECT_NE(usual.out.find("Automated checks cover only a part of WCAG 2.2."), std::string::npos);
}

TEST(OutputLanguage, IsThatOfTheFindings) {
    const Finished english = tenterCli({"check", languageSample});
    const Finished german = tenterCli({"check", languageSample, "--language", "de"});
    EXPECT_EQ(german.code, english.code);
    EXPECT_NE(german.out.find("Automatische Prüfungen decken nur einen Teil der WCAG 2.2 ab."),
              std::string::npos)
        << german.out;
    EXPECT_NE(german.out.find("Grundlage: "), std::string::npos) << german.out;
    // Outside quotations of the sample's texts.
    std::string sentences = german.out;
    for (std::size_t from = sentences.find("„"); from != std::string::npos; from = sentences.find("„"))
        sentences.erase(from, sentences.find("“", from) - from + std::string("“").size());
    for (const char* word : {" the ", " is ", " has ", " of ", " at ", " from ", "Basis"})
        EXPECT_EQ(sentences.find(word), std::string::npos) << word << "\n" << sentences;
}

TEST(OutputLanguage, IsThatOfTheSpecSheet) {
    const Finished german = tenterCli({"sheet", languageSample, "--language", "de", "--date", "2026-11-29"});
    ASSERT_EQ(german.code, 0) << german.err;
    EXPECT_NE(german.out.find("<html lang=\"de\">"), std::string::npos);
    for (const char* text : {"Schlüsselbreiten", "Befunde", "Zeilenlänge", "Bildfelder", "Schriftgröße"})
        EXPECT_NE(german.out.find(text), std::string::npos) << text;
    for (const char* text : {"Key widths", "Findings", "Measure", "Picture slots", "Font size", "spec sheet"})
        EXPECT_EQ(german.out.find(text), std::string::npos) << text;
}

TEST(OutputLanguage, MustHaveACatalogue) {
    for (const char* verb : {"check", "sheet"}) {
        const Finished refused = tenterCli({verb, languageSample, "--language", "xx"});
        EXPECT_EQ(refused.code, 2);
        EXPECT_EQ(refused.out, "");
        EXPECT_NE(refused.err.find("The language must be en or de; it is \"xx\"."), std::string::npos)
            << refused.err;
    }
}

}  // namespace
}  // namespace tenter::tests
