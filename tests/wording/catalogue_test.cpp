// resources/translations/core_de.ts as Linguist has it, and as the program has it.
#include <gtest/gtest.h>

#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "speaking.h"
#include "wording/catalogue.h"
#include "wording/say.h"

namespace tenter::wording {
namespace {

std::string catalogueText() {
    std::ifstream file(TENTER_SOURCE_DIR "/resources/translations/core_de.ts");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::set<std::string> placeholdersOf(std::string_view view) {
    const std::string text(view);
    static const std::regex placeholder("%[1-9n]");
    return {std::sregex_token_iterator(text.begin(), text.end(), placeholder), std::sregex_token_iterator()};
}

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++found;
    return found;
}

TEST(GermanCatalogue, IsFinished) {
    const std::string text = catalogueText();
    ASSERT_FALSE(text.empty());
    EXPECT_EQ(count(text, "type=\"unfinished\""), 0U);
    EXPECT_EQ(count(text, "type=\"vanished\""), 0U);
    EXPECT_EQ(count(text, "type=\"obsolete\""), 0U);
    EXPECT_EQ(germanCatalogue().size(), count(text, "<message>") + count(text, "<message numerus=\"yes\">"));
}

TEST(GermanCatalogue, HasThePlaceholdersOfEachText) {
    for (const Entry& entry : germanCatalogue()) {
        EXPECT_EQ(placeholdersOf(entry.one), placeholdersOf(entry.source)) << entry.source;
        if (!entry.many.empty()) {
            EXPECT_EQ(placeholdersOf(entry.many), placeholdersOf(entry.source)) << entry.source;
        }
    }
}

TEST(GermanCatalogue, TranslatesEachTextOnce) {
    std::set<std::string_view> sources;
    for (const Entry& entry : germanCatalogue()) {
        EXPECT_TRUE(sources.insert(entry.source).second) << entry.source;
        EXPECT_FALSE(entry.one.empty()) << entry.source;
        EXPECT_EQ(entry.source.back() == '.', entry.one.back() == '.' || entry.one == ",") << entry.source;
    }
    EXPECT_GT(sources.size(), 400U);
}

TEST(GermanCatalogue, KeepsSignsThatXmlEscapes) {
    const test::Speaking speaking("de");
    EXPECT_EQ(say("Use the same limit in both, such as “width <= 980px” and “width > 980px”"),
              "In beiden dieselbe Grenze verwenden, etwa „width <= 980px“ und „width > 980px“");
    EXPECT_EQ(say("“%1”", {"[a; b]"}), "„[a; b]“");
}

}  // namespace
}  // namespace tenter::wording
