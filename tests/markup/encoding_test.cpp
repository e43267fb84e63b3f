#include "markup/encoding.h"

#include <gtest/gtest.h>

#include "parsing.h"

namespace tenter::markup {
namespace {

using std::string_literals::operator""s;

struct EncodingCase {
    std::string bytes;
    std::string text;
    std::string encoding;
};

void expectRead(const EncodingCase& given) {
    project::Problems problems;
    const Characters read = charactersOf(given.bytes, "page", problems);
    EXPECT_EQ(read.utf8, given.text);
    EXPECT_EQ(read.encoding, given.encoding) << given.bytes;
    EXPECT_TRUE(problems.empty()) << linesOf(problems);
}

// HTML § 13.2.3.2, "determining the character encoding", step by step.
TEST(Encoding, is_that_of_the_byte_order_mark_first) {
    expectRead({"\xEF\xBB\xBF<meta charset=windows-1252>\xC3\xA9", "<meta charset=windows-1252>é", "UTF-8"});
    expectRead({"\xFF\xFE\xE9\0"s, "é", "UTF-16LE"});
    expectRead({"\xFE\xFF\0\xE9"s, "é", "UTF-16BE"});
}

TEST(Encoding, is_that_of_a_meta_element) {
    for (const std::string meta :
         {"<meta charset=windows-1251>", "<META CharSet = 'cp1251' >", "<meta/charset=\"x-cp1251\">",
          "<!-- <meta charset=utf-8> --><meta charset=windows-1251>",
          "<a b='<meta charset=utf-8>'><meta charset=cp1251>",
          "<meta http-equiv=Content-Type content='text/html; charset=windows-1251'>",
          "<meta content='text/html;charset = \"windows-1251\"' http-equiv=content-type>"})
        expectRead({meta + "\xE9", meta + "й", "windows-1251"});
}

TEST(Encoding, ignores_meta_elements_after_1024_bytes_or_without_purpose) {
    const std::string far = std::string(1024, ' ') + "<meta charset=windows-1251>";
    expectRead({far + "\xE9", far + "é", "windows-1252"});
    const std::string aimless = "<meta content='text/html; charset=windows-1251'>";
    expectRead({aimless + "\xE9", aimless + "é", "windows-1252"});
}

// HTML § 13.2.3.2: a prescan that finds UTF-16 means UTF-8. Encoding § 4.2: latin1 is windows-1252.
TEST(Encoding, is_found_by_the_labels_that_browsers_know) {
    expectRead({"<meta charset=utf-16>\xC3\xA9", "<meta charset=utf-16>é", "UTF-8"});
    expectRead({"<meta charset=latin1>\x93tide\x94", "<meta charset=latin1>“tide”", "windows-1252"});
    expectRead({"<meta charset=gb2312>\xB3\xB1", "<meta charset=gb2312>潮", "GBK"});
    expectRead({"<meta charset=shift_jis>\x92\xAA", "<meta charset=shift_jis>潮", "Shift_JIS"});
    expectRead({"<meta charset=iso-8859-15>\xA4", "<meta charset=iso-8859-15>€", "ISO-8859-15"});
    expectRead({"<meta charset=koi8-r>\xCA", "<meta charset=koi8-r>й", "KOI8-R"});
}

TEST(Encoding, is_utf8_if_the_bytes_are_and_else_windows_1252) {
    expectRead({"gr\xC3\xBCn", "grün", "UTF-8"});
    expectRead({"gr\xFCn", "grün", "windows-1252"});
    expectRead({"", "", "UTF-8"});
}

// Encoding § 4.2 lists these; the bytes are those of "ab" in each.
TEST(Encoding, of_every_known_name_can_be_read) {
    for (const std::string name :
         {"ibm866",       "iso-8859-2",   "iso-8859-3",     "iso-8859-4",   "iso-8859-5",   "iso-8859-6",
          "iso-8859-7",   "iso-8859-8",   "iso-8859-8-i",   "iso-8859-10",  "iso-8859-13",  "iso-8859-14",
          "iso-8859-15",  "koi8-r",       "koi8-u",         "macintosh",    "windows-874",  "windows-1250",
          "windows-1251", "windows-1252", "windows-1253",   "windows-1254", "windows-1255", "windows-1256",
          "windows-1257", "windows-1258", "x-mac-cyrillic", "gbk",          "big5",         "euc-jp",
          "iso-2022-jp",  "shift_jis",    "euc-kr"}) {
        project::Problems problems;
        const std::string page = "<meta charset=" + name + ">ab";
        const Characters read = charactersOf(page, "page", problems);
        EXPECT_EQ(read.utf8, page);
        EXPECT_NE(read.encoding, "UTF-8") << name;
        EXPECT_TRUE(problems.empty());
    }
}

TEST(Encoding, that_is_not_known_is_a_problem_with_its_place) {
    project::Problems problems;
    EXPECT_EQ(charactersOf("<p>\n<meta charset=tidal-7>gr\xFCn", "page", problems).utf8,
              "<p>\n<meta charset=tidal-7>grün");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place, "2:15");
    EXPECT_NE(problems[0].what.find("tidal-7"), std::string::npos);
}

}  // namespace
}  // namespace tenter::markup
