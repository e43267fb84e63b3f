#include "text/lines.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

#include "preparing.h"

namespace tenter::text {
namespace {

using project::OverflowWrap;
using Texts = std::vector<std::string>;

const std::string tideText =
    "At low tide the sound empties to a mile of rippled sand, and the guide walks you out to the old beacon.";

double wide(const std::string& text, double size) {
    const ParagraphPtr paragraph = test::prepare(text);
    return maxContent(*paragraph, test::at(size, 0));
}

// CSS Text 3 § 4.1.2: a collapsible space at a line's end is removed, so it has no width.
TEST(Lines, SpacesAtALinesEndHaveNoWidth) {
    const ParagraphPtr paragraph = test::prepare("low tide");
    EXPECT_EQ(test::textsOf(*paragraph, test::at(20, wide("low", 20))), (Texts{"low", "tide"}));
    EXPECT_EQ(test::textsOf(*paragraph, test::at(20, wide("low tide", 20))), (Texts{"low tide"}));
    EXPECT_EQ(test::textsOf(*paragraph, test::at(20, wide("low tide", 20) - 0.001)), (Texts{"low", "tide"}));
}

// Measured in Chromium 156 and Firefox 153: a no-break space at a line's end counts for fit. UAX #14, class
// GL.
TEST(Lines, NoBreakSpacesHoldWordsTogetherAndCount) {
    const ParagraphPtr paragraph = test::prepare("at 6\u00A0am sharp");
    for (double width = 20; width < 200; width += 1)
        for (const std::string& line : test::textsOf(*paragraph, test::at(20, width)))
            EXPECT_EQ(line.find("6\u00A0am") == std::string::npos, line.find("am") == std::string::npos)
                << width;
}

/// Line starts by greedy breaking as UAX #14 § 2 and CSS Text 3 § 5 describe it: every opportunity is tried,
/// and widths are added cluster by cluster. Without stored sums and corrections; the copy breaks at spaces
/// only.
std::vector<std::uint32_t> plainGreedy(const Paragraph& paragraph, double size, double available) {
    std::vector<std::uint32_t> starts;
    std::uint32_t start = 0;
    const auto count = static_cast<std::uint32_t>(paragraph.clusters().size());
    while (start < count) {
        std::uint32_t chosen = 0;
        for (const Opportunity& end : paragraph.opportunities()) {
            if (end.cluster <= start) continue;
            double width = 0;
            for (std::uint32_t i = start; i < end.lineEnd; ++i)
                width += paragraph.clusters()[i].advance * size;
            if (chosen == 0 || width <= available) chosen = end.cluster;
            if (width > available) break;
        }
        start = chosen;
        starts.push_back(start);
    }
    return starts;
}

TEST(Lines, AreTheSameAsByTryingEveryWord) {
    std::mt19937 random(3);
    const ParagraphPtr paragraph = test::prepare(tideText);
    for (int round = 0; round < 2000; ++round) {
        const double size = test::between(10, 30, random);
        const double available = test::between(60, 760, random);
        std::vector<std::uint32_t> starts;
        for (const Line& line : test::linesOf(*paragraph, test::at(size, available)))
            starts.push_back(line.next);
        EXPECT_EQ(starts, plainGreedy(*paragraph, size, available)) << size << " px in " << available;
    }
}

// The meaning of slack: text scaled by less than the slack breaks the same, text scaled by slightly more
// breaks differently.
TEST(Lines, SlackIsTheScaleAtWhichALineBreaksDifferently) {
    std::mt19937 random(5);
    const ParagraphPtr paragraph = test::prepare(tideText);
    auto starts = [&](double size, double available) {
        std::vector<std::uint32_t> all;
        for (const Line& line : test::linesOf(*paragraph, test::at(size, available)))
            all.push_back(line.next);
        return all;
    };
    int changed = 0;
    for (int round = 0; round < 500; ++round) {
        const double size = test::between(12, 21, random);
        const double available = test::between(120, 520, random);
        double slack = 1;
        for (const Line& line : test::linesOf(*paragraph, test::at(size, available)))
            slack = std::min(slack, line.slack);
        const auto as = starts(size, available);
        const double less = std::max(0.0, slack - 1e-7);
        EXPECT_EQ(as, starts(size * (1 + less), available));
        EXPECT_EQ(as, starts(size * (1 - less), available));
        const double more = slack + 1e-5;
        changed +=
            as != starts(size * (1 + more), available) || as != starts(size * (1 - more), available) ? 1 : 0;
    }
    EXPECT_EQ(changed, 500);
}

// CSS Text 3 § 5.5: `break-word` and `anywhere` break a word that would overflow, between grapheme clusters,
// on a line of its own. Only with `anywhere` do these breaks count for min-content.
TEST(Lines, CutsAWordOnlyWhereItWouldOverflow) {
    const ParagraphPtr paragraph = test::prepare("the Wattwanderwegeverzeichnis e\u0301e\u0301e\u0301");
    LineQuery query = test::at(18, 120);
    EXPECT_EQ(test::textsOf(*paragraph, query).at(1), "Wattwanderwegeverzeichnis");
    const double whole = minContent(*paragraph, query);
    query.overflowWrap = OverflowWrap::BreakWord;
    const Texts cut = test::textsOf(*paragraph, query);
    EXPECT_EQ(cut.at(0), "the");
    EXPECT_EQ(std::accumulate(cut.begin() + 1, cut.end(), std::string()).substr(0, 25),
              "Wattwanderwegeverzeichnis");
    for (const Line& line : test::linesOf(*paragraph, query))
        EXPECT_LE(line.width, 120);
    EXPECT_DOUBLE_EQ(minContent(*paragraph, query), whole);
    query.overflowWrap = OverflowWrap::Anywhere;
    EXPECT_LT(minContent(*paragraph, query), whole / 4);
    query.available = 0;
    for (const std::string& line : test::textsOf(*paragraph, query))
        EXPECT_NE(line.substr(0, 2), "\u0301");
}

// Measured in Chromium 156 and Firefox 153: the hyphen of emphasised text is that of the italic face.
TEST(Lines, AHyphenIsOfTheFaceOfItsRun) {
    const project::Copy copy{{project::Run::Kind::Emphasis, "Fern\u00ADglas ", ""},
                             {project::Run::Kind::Plain, "Fern\u00ADglas", ""}};
    for (const BreakProfile* profile : profiles()) {
        const ParagraphPtr paragraph =
            Paragraph::prepare(copy, test::styleOf("Cabin"), test::fonts(), *profile);
        const auto hyphenOf = [&](bool italic) {
            const FacePtr face = test::fonts().find({"Cabin"}, 400, italic).front();
            hb_codepoint_t glyph = 0;
            EXPECT_TRUE(hb_font_get_nominal_glyph(face->font(), 0x2010, &glyph) != 0 ||
                        hb_font_get_nominal_glyph(face->font(), '-', &glyph) != 0);
            return hb_font_get_glyph_h_advance(face->font(), glyph) / face->scale();
        };
        ASSERT_NE(hyphenOf(true), hyphenOf(false));
        std::vector<double> hyphens;
        for (const Opportunity& end : paragraph->opportunities())
            if (end.kind == Opportunity::Kind::SoftHyphen)
                hyphens.push_back(paragraph->hyphenAdvanceBefore(end.cluster));
        ASSERT_EQ(hyphens.size(), 2U);
        EXPECT_NEAR(hyphens[0], hyphenOf(true), 1e-6);
        EXPECT_NEAR(hyphens[1], hyphenOf(false), 1e-6);
    }
}

// CSS Text 3 § 5.4, Unicode U+00AD: a soft hyphen draws a hyphen only where the line breaks at it.
TEST(Lines, SoftHyphensDrawAHyphenWhereTheyBreak) {
    const ParagraphPtr paragraph = test::prepare("Gezeiten\u00ADtabelle");
    LineQuery query = test::at(18, wide("Gezeiten\u2010", 18) + 0.5);
    const auto lines = test::linesOf(*paragraph, query);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_TRUE(lines[0].hyphen);
    EXPECT_FALSE(lines[1].hyphen);
    EXPECT_NEAR(lines[0].width, wide("Gezeiten", 18) + paragraph->runs()[0].hyphenAdvance * 18, 0.001);
    query.available = 1000;
    EXPECT_NEAR(test::linesOf(*paragraph, query).at(0).width, wide("Gezeitentabelle", 18), 0.001);
    ShapingStyle none = test::styleOf("Vollkorn");
    none.softHyphens = false;
    query.available = 60;
    EXPECT_EQ(test::linesOf(*test::prepare("Gezeiten\u00ADtabelle", none), query).size(), 1U);
}

/// Lines of `copy`, in Lato at 15 px by default, in which the hyphen is 5.58 px wide. `·` in `copy` is a soft
/// hyphen, which is left out of the lines. `-` at the end of a line is a soft hyphen that is drawn.
Texts cutLines(std::string copy, double available, const BreakProfile& profile,
               const ShapingStyle& style = test::styleOf("Lato"), double size = 15) {
    for (std::size_t at = copy.find("·"); at != std::string::npos; at = copy.find("·"))
        copy.replace(at, std::string("·").size(), "\u00AD");
    const ParagraphPtr paragraph =
        Paragraph::prepare({{project::Run::Kind::Plain, copy, ""}}, style, test::fonts(), profile);
    LineQuery query = test::at(size, available);
    query.overflowWrap = OverflowWrap::BreakWord;
    std::vector<Line> lines;
    breakLines(*paragraph, query, profile, lines);
    Texts texts;
    for (const Line& line : lines) {
        std::string text = paragraph->utf8(line.first, line.end);
        for (std::size_t at = text.find("\u00AD"); at != std::string::npos; at = text.find("\u00AD"))
            text.erase(at, std::string("\u00AD").size());
        texts.push_back(text + (line.hyphen ? "-" : ""));
    }
    return texts;
}

// Measured in both engines: a soft hyphen that does not fit does not end the line if more text fits without
// it.
TEST(Lines, GoOnPastASoftHyphenThatDoesNotFit) {
    for (const BreakProfile* profile : {&blink(), &gecko()}) {
        EXPECT_EQ(cutLines("xx aa i·mm", 66, *profile), (Texts{"xx aa imm"}));
        EXPECT_EQ(cutLines("Will·mm", 28.5, *profile), (Texts{"Wil", "lmm"}));
    }
}

// "xx aa i·i" is wider with the hyphen of its soft hyphen than whole: where all of it fits decides the slack.
TEST(Lines, MeasureSlackToWhereTheTextAfterASoftHyphenFits) {
    const ParagraphPtr paragraph = test::prepare("xx aa i\u00ADi", test::styleOf("Lato"));
    LineQuery query = test::at(15, 1000);
    const double whole = test::linesOf(*paragraph, query).at(0).width;
    query.available = whole - 0.01;
    ASSERT_EQ(test::linesOf(*paragraph, query).size(), 2U);
    EXPECT_NEAR(test::linesOf(*paragraph, query).at(0).slack, 0.01 / whole, 1e-6);
}

// Measured in Chromium 156: if the text before a soft hyphen fits, but not with the hyphen, the line is
// broken again in the available width less that of the hyphen; a letter and its soft hyphen may then be
// parted. Firefox 153 breaks as if the soft hyphen were not there, but never parts the two.
TEST(Lines, MakeRoomForAHyphenThatDoesNotFit) {
    EXPECT_EQ(cutLines("xx aa-i·mm", 25, blink()), (Texts{"xx", "aa", "-i-", "mm"}));
    EXPECT_EQ(cutLines("xx aa-i·mm", 25, gecko()), (Texts{"xx", "aa-", "i-", "mm"}));
    EXPECT_EQ(cutLines("Will·mm", 11, blink()), (Texts{"W", "i", "l", "l-", "m", "m"}));
    EXPECT_EQ(cutLines("Will·mm", 11, gecko()), (Texts{"W", "il", "l-", "m", "m"}));
    EXPECT_EQ(cutLines("i·i·mm", 4, blink()), (Texts{"i", "-", "i", "-", "m", "m"}));
    EXPECT_EQ(cutLines("i·i·mm", 4, gecko()), (Texts{"i-", "i-", "m", "m"}));
}

// Measured in Chromium 156 with the kerned letters `AT`: the last letter that fits is found in the unbroken
// text, in which `AT` is 16.905 px wide; alone it is 17.955 px wide.
TEST(Lines, FindACutInTheUnbrokenText) {
    EXPECT_EQ(cutLines("AVAVATATA", 17.5, blink()), (Texts{"A", "V", "A", "V", "AT", "AT", "A"}));
}

// Measured in Chromium 156: the letters `WAWAW` fit as part of the unbroken text, but not alone. The line
// that they fill is too wide, so it is cut once more, at least 1 px narrower.
TEST(Lines, CutALineOnceMoreThatIsTooWideWhenReshaped) {
    EXPECT_EQ(cutLines("AVAVAVATATATAWAWAWA", 57.988, blink(), test::styleOf("Cabin", 600), 14.5008),
              (Texts{"AVAVAV", "ATATATA", "WAWA", "WA"}));
}

// Measured with the ligature `ti` of Lato. Firefox 153 counts all of it for a line that is cut inside it.
TEST(Lines, CountAWholeLigatureThatIsCut) {
    EXPECT_EQ(cutLines("kişiliktir", 16.9, gecko()), (Texts{"ki", "şil", "ik", "tir"}));
}

// Measured: Chromium 156 does not look at text before the line, and so does not break after a hyphen that the
// line starts with. Firefox 153 breaks after any hyphen before a digit in a word that is wider than its line.
TEST(Lines, JudgeAHyphenBeforeADigitFromTheStartOfTheLine) {
    EXPECT_EQ(cutLines("under-12s", 14.5, blink()), (Texts{"u", "n", "d", "er", "-1", "2", "s"}));
    EXPECT_EQ(cutLines("under-12s", 18, blink()), (Texts{"un", "de", "r-", "12", "s"}));
}

// Measured in Chromium 156: a line that ends without a space is reshaped, so kerning across its break is
// lost.
TEST(Lines, LoseKerningAcrossABreakWithoutASpace) {
    const ParagraphPtr paragraph = test::prepare("AT\u200BVA");
    const auto lines = test::linesOf(*paragraph, test::at(100, wide("AT", 100) + 1));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_NEAR(lines[0].width, wide("AT", 100), 0.01);
    EXPECT_NEAR(lines[1].width, wide("VA", 100), 0.01);
}

// CSS Text 3 § 8.1, 8.2: letter spacing is added after each character, including the last of a line; word
// spacing at each word separator.
TEST(Lines, AddLetterAndWordSpacing) {
    ShapingStyle style = test::styleOf("Vollkorn");
    style.ligatures = false;
    const ParagraphPtr paragraph = test::prepare("tide at six", style);
    LineQuery query = test::at(20, 1000);
    const double bare = test::linesOf(*paragraph, query).at(0).width;
    query.letterSpacing = 1.5;
    EXPECT_NEAR(test::linesOf(*paragraph, query).at(0).width, bare + 11 * 1.5, 1e-9);
    query.wordSpacing = -2;
    EXPECT_NEAR(test::linesOf(*paragraph, query).at(0).width, bare + 11 * 1.5 - 2 * 2, 1e-9);
}

// Measured in Firefox 153 and Chromium 156: `ij` is one glyph of Vollkorn Italic in Dutch, even without
// optional ligatures, and letter spacing is added once after it.
TEST(Lines, ALigatureHasLetterSpacingOnce) {
    ShapingStyle style = test::styleOf("Vollkorn");
    style.italic = true;
    style.ligatures = false;
    style.language = "nl";
    for (const BreakProfile* profile : profiles()) {
        const ParagraphPtr paragraph = Paragraph::prepare(test::plain("ijs"), style, test::fonts(), *profile);
        LineQuery query = test::at(20, 1000);
        const double bare = test::linesOf(*paragraph, query).at(0).width;
        query.letterSpacing = 1.5;
        EXPECT_NEAR(test::linesOf(*paragraph, query).at(0).width, bare + 2 * 1.5, 1e-9);
    }
}

TEST(Lines, EndAtForcedBreaks) {
    const ParagraphPtr paragraph = Paragraph::prepare({{project::Run::Kind::Plain, "one", ""},
                                                       {project::Run::Kind::Break, "", ""},
                                                       {project::Run::Kind::Break, "", ""},
                                                       {project::Run::Kind::Plain, "three", ""},
                                                       {project::Run::Kind::Break, "", ""}},
                                                      test::styleOf("Vollkorn"), test::fonts(), blink());
    EXPECT_EQ(test::textsOf(*paragraph, test::at(16, 500)), (Texts{"one", "", "three"}));
    EXPECT_TRUE(test::linesOf(*test::prepare(""), test::at(16, 500)).empty());
}

// CSS Text 4 § 5.2 leaves the rule to the engine. The rule by width takes the narrowest width that needs no
// more lines.
TEST(Lines, BalanceNeedsNoMoreLinesAndIsNoWiderThanGreedy) {
    std::mt19937 random(9);
    const ParagraphPtr paragraph =
        test::prepare("Walk the drowned road to the beacon before the tide comes home");
    for (int round = 0; round < 300; ++round) {
        LineQuery query = test::at(24, test::between(170, 670, random));
        const auto greedy = test::linesOf(*paragraph, query);
        query.balance = true;
        const auto balanced = test::linesOf(*paragraph, query);
        double uneven = 0;
        double unevenGreedy = 0;
        for (const Line& line : balanced) {
            EXPECT_LE(line.width, query.available + 1e-6);
            uneven += std::pow(query.available - line.width, 2);
        }
        for (const Line& line : greedy)
            unevenGreedy += std::pow(query.available - line.width, 2);
        if (balanced.size() == greedy.size() && greedy.size() <= 6) {
            EXPECT_LE(uneven, unevenGreedy + 10000 + 1e-6);
        }
    }
}

// Measured in Chromium 156 in Lato at 16 px: at 120 px, `we all go to` and `observatory` would be the most
// even lines, but the last word alone on a line costs more, with and without soft hyphens in it.
TEST(Lines, BalanceKeepsTheLastWordFromStandingAloneEvenWithSoftHyphens) {
    LineQuery query = test::at(16, 120);
    query.balance = true;
    for (const std::string word : {"observatory", "ob\u00ADser\u00ADva\u00ADtory"})
        EXPECT_EQ(test::textsOf(*test::prepare("we all go to " + word, test::styleOf("Lato")), query),
                  (Texts{"we all go", "to " + word}));
}

// Measured in Chromium 156 in Vollkorn at 100 px: `half` is 173.5 px wide, and 183.5 px before a space, with
// which its `f` is kerned. Where the end of a line is visible, the word must fit in both ways.
TEST(Lines, ChromiumFindsTheEndOfALineInTheUnbrokenText) {
    ShapingStyle style = test::styleOf("Vollkorn");
    style.alignsEnds = true;
    const ParagraphPtr paragraph = test::prepare("half a", style);
    LineQuery query = test::at(100, 178);
    query.overflowWrap = OverflowWrap::BreakWord;
    EXPECT_EQ(test::textsOf(*paragraph, query), (Texts{"hal", "f a"}));
    query.available = 184;
    EXPECT_EQ(test::textsOf(*paragraph, query), (Texts{"half", "a"}));
    EXPECT_NEAR(test::linesOf(*paragraph, query).front().width, 173.5, 0.1);
}

// Measured in Firefox 153: the width of `harbourmasters` is the narrowest that needs no more lines. A
// narrower one would cut the word, which balancing does not do.
TEST(Lines, BalanceByWidthCutsNoWord) {
    const ParagraphPtr paragraph = test::prepare("a quay the harbourmasters keep a lamp at");
    LineQuery query = test::at(20, wide("a quay the harbourmasters", 20) - 1);
    query.overflowWrap = OverflowWrap::BreakWord;
    query.balance = true;
    std::vector<Line> lines;
    breakLines(*paragraph, query, gecko(), lines);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(paragraph->utf8(lines[1].first, lines[1].end), "harbourmasters");
    for (const Line& line : lines)
        EXPECT_LE(line.width, wide("harbourmasters", 20) + 1e-6);
}

/// Width at 100 px of the first line of `copy` in Lato, in which it breaks at its first space.
double firstLine(const project::Copy& copy, const ShapingStyle& style, const BreakProfile& profile) {
    const ParagraphPtr paragraph = Paragraph::prepare(copy, style, test::fonts(), profile);
    std::vector<Line> lines;
    breakLines(*paragraph, test::at(100, 300), profile, lines);
    EXPECT_GE(lines.size(), 2U);
    return lines.front().width;
}

// Measured in Chromium 156: Lato kerns `r` with a space. At a line's end the `r` of `after rain` loses that
// if the text is not aligned to its start, is underlined, or is directly in a box with a border or a
// background; it keeps it otherwise, as in Firefox 153, and with word spacing, too.
TEST(Lines, ChromiumDropsKerningWithTheSpaceAtALinesEndIfItsPlaceMatters) {
    using Kind = project::Run::Kind;
    const project::Copy plain = test::plain("after rain");
    const project::Copy endsLink = {{Kind::Link, "after", "#"}, {Kind::Plain, " rain", ""}};
    const project::Copy linked = {{Kind::Link, "after rain", "#"}};
    const project::Copy emphasised = {{Kind::Strong, "after rain", ""}};
    const project::Copy later = {{Kind::Plain, "after rain ", ""}, {Kind::Link, "falls", "#"}};
    const ShapingStyle start = test::styleOf("Lato");
    ShapingStyle centred = start;
    centred.alignsEnds = true;
    ShapingStyle boxed = start;
    boxed.decorated = true;
    const double unkerned = maxContent(*test::prepare("after", start), test::at(100, 0));
    EXPECT_NEAR(firstLine(plain, start, blink()), unkerned - 2, 0.2);
    EXPECT_NEAR(firstLine(plain, centred, blink()), unkerned, 1e-4);
    EXPECT_NEAR(firstLine(plain, boxed, blink()), unkerned, 1e-4);
    EXPECT_NEAR(firstLine(linked, start, blink()), unkerned, 1e-4);
    EXPECT_NEAR(firstLine(later, centred, blink()), unkerned, 1e-4);
    EXPECT_NEAR(firstLine(later, boxed, blink()), unkerned, 1e-4);
    EXPECT_NEAR(firstLine(endsLink, centred, blink()), unkerned - 2, 0.2);
    EXPECT_NEAR(firstLine(emphasised, centred, blink()) - firstLine(emphasised, boxed, blink()), 2, 0.4);
    EXPECT_NEAR(firstLine(plain, centred, gecko()), unkerned - 2, 0.2);
    EXPECT_NEAR(firstLine(linked, start, gecko()), unkerned - 2, 0.2);
}

// Measured in Chromium 156 and Firefox 153: Lato has a hyphen and no no-break hyphen.
TEST(Lines, AFaceWithAHyphenDrawsTheNoBreakHyphen) {
    for (const BreakProfile* profile : profiles()) {
        const ParagraphPtr paragraph = Paragraph::prepare(test::plain("well\u2011known"),
                                                          test::styleOf("Lato"), test::fonts(), *profile);
        ASSERT_EQ(paragraph->runs().size(), 1U) << profile->name();
        EXPECT_EQ(paragraph->runs().front().face->family(), "Lato") << profile->name();
        EXPECT_TRUE(paragraph->notes().empty()) << profile->name();
    }
}

// Measured in Firefox 153: Noto Rashi Hebrew has neither hyphen; its hyphen-minus, 31 px wide at 100 px,
// draws both. Chromium 156 takes a hyphen from the next family.
TEST(Lines, FirefoxDrawsHyphensThatAFaceLacksWithItsHyphenMinus) {
    for (const char* sign : {"\u2010", "\u2011"}) {
        ShapingStyle style = test::styleOf("Noto Rashi Hebrew");
        style.family = {"Noto Rashi Hebrew", "Inter"};
        const auto prepared = [&](const BreakProfile& profile) {
            return Paragraph::prepare(test::plain(sign), style, test::fonts(), profile);
        };
        EXPECT_NEAR(maxContent(*prepared(gecko()), test::at(100, 0)), 31, 0.1);
        EXPECT_EQ(prepared(gecko())->runs().front().face->family(), "Noto Rashi Hebrew");
        EXPECT_EQ(prepared(blink())->runs().front().face->family(), "Inter");
    }
}

// Measured in Firefox 153 and Chromium 156 at 100 px in EB Garamond: `AV` is 110.6 px wide, without kerning
// 120.6 px.
TEST(Lines, FirefoxKernsNotAcrossAWordJoiner) {
    const auto width = [](const std::string& copy, const BreakProfile& profile) {
        return maxContent(
            *Paragraph::prepare(test::plain(copy), test::styleOf("EB Garamond"), test::fonts(), profile),
            test::at(100, 0));
    };
    for (const char* between : {"\u2060", "\uFEFF", "\u200B"}) {
        EXPECT_NEAR(width(std::string("A") + between + "V", gecko()), 120.6, 0.1);
        EXPECT_NEAR(width(std::string("A") + between + "V", blink()), 110.6, 0.1);
    }
    for (const char* between : {"\u200C", "\u200D", "\u00AD"})
        EXPECT_NEAR(width(std::string("A") + between + "V", gecko()), 110.6, 0.1);
}

// Measured in Chromium 156 and Firefox 153 in Manrope, which has no italic face, at 100 px: `AV` is 114.3 px
// wide, also with a link in it, and 121.3 px with a slanted `A`.
TEST(Lines, TextInTwoStylesOfOneFaceIsNotKerned) {
    using Kind = project::Run::Kind;
    for (const BreakProfile* profile : profiles()) {
        const auto width = [&](Kind kind) {
            const project::Copy copy = {{kind, "A", "#"}, {Kind::Plain, "V", ""}};
            return maxContent(
                *Paragraph::prepare(copy, test::styleOf("Manrope", 300), test::fonts(), *profile),
                test::at(100, 0));
        };
        EXPECT_NEAR(width(Kind::Plain), 114.3, 0.1) << profile->name();
        EXPECT_NEAR(width(Kind::Link), 114.3, 0.1) << profile->name();
        EXPECT_NEAR(width(Kind::Emphasis), 121.3, 0.1) << profile->name();
    }
}

// Measured in Firefox 153 with a letter spacing of 10 px: inside a text a zero-width space has none after it,
// at an end and where the direction changes it has.
TEST(Lines, FirefoxSpacesAZeroWidthSpaceAtAnEndOfAPiece) {
    const auto spacings = [](const std::string& copy) {
        ShapingStyle style = test::styleOf("Lato");
        style.ligatures = false;
        const ParagraphPtr paragraph = Paragraph::prepare(test::plain(copy), style, test::fonts(), gecko());
        return paragraph->letters(0, static_cast<std::uint32_t>(paragraph->clusters().size()));
    };
    EXPECT_EQ(spacings("AB\u200BCD"), 4U);
    EXPECT_EQ(spacings("AB \u2060CD"), 5U);
    EXPECT_EQ(spacings("\u200BAB"), 3U);
    EXPECT_EQ(spacings("AB\u200B"), 3U);
    EXPECT_EQ(spacings("عرب\u200Bab"), 3U);
    EXPECT_EQ(spacings("عرب \u200Bعرب"), 1U);
}

// Measured in Firefox 153 with a body of 15.8464 px in 283.633 px: a narrower width has five lines, too, but
// fewer with bold text, whose face makes a line taller. So the text stays as it is.
TEST(Lines, BalanceInFirefoxKeepsTheHeight) {
    using Kind = project::Run::Kind;
    ShapingStyle style = test::styleOf("EB Garamond", 500);
    style.family = {"EB Garamond"};
    style.letterCase = project::LetterCase::Uppercase;
    style.ligatures = false;
    style.language = "ru";
    const project::Copy copy = {{Kind::Plain, "В группе не больше двенадцати человек — ", ""},
                                {Kind::Strong, "так тише. Дети до", ""},
                                {Kind::Plain, " восьми лет приходят ", ""},
                                {Kind::Strong, "только со взрослыми.", ""}};
    const ParagraphPtr paragraph = Paragraph::prepare(copy, style, test::fonts(), gecko());
    LineQuery query = test::at(15.8464, 283.633);
    query.letterSpacing = 0.18;
    query.balance = true;
    const auto secondLine = [&] {
        std::vector<Line> lines;
        breakLines(*paragraph, query, gecko(), lines);
        EXPECT_EQ(lines.size(), 5U);
        return paragraph->utf8(lines[1].first, lines[1].end);
    };
    EXPECT_EQ(secondLine(), "ДВЕНАДЦАТИ ЧЕЛОВЕК —");
    query.heightSize = 15.8464;
    query.lineHeight = 1.5 * query.heightSize;
    EXPECT_EQ(secondLine(), "ДВЕНАДЦАТИ ЧЕЛОВЕК — ТАК");
}

// Measured in Chromium 156: `एक-एक` in Noto Serif Devanagari at 15.848 px, 14.45 px wide.
TEST(Lines, ChromiumSeesNoLetterBeforeAHyphenThatStartsALine) {
    ShapingStyle style = test::styleOf("Noto Serif Devanagari");
    style.language = "hi";
    LineQuery query = test::at(15.84, 14.45);
    query.overflowWrap = OverflowWrap::BreakWord;
    EXPECT_EQ(test::textsOf(*test::prepare("एक-एक", style), query), (Texts{"ए", "क", "-ए", "क"}));
}

// Measured in Chromium 156, in italics of Lato at 16.33256 px, 14.0722 px wide: the Hebrew letter that keeps
// the maqaf together with the digits is on the line before, so the line that starts with the maqaf breaks
// after it, although the first digit fits.
TEST(Lines, ChromiumBreaksAfterAMaqafThatStartsALine) {
    ShapingStyle style = test::styleOf("Lato");
    style.family = {"Lato", "Noto Sans Hebrew"};
    style.italic = true;
    EXPECT_EQ(cutLines("ב־6:30", 14.0722, blink(), style, 16.33256), (Texts{"ב", "־", "6:", "3", "0"}));
    EXPECT_FALSE(blink().breaks(u"ב־6:30", "en")[2]);
}

// Measured at 100 px in Noto Sans Hebrew and Lato: `era` with a soft hyphen before the `a` is 138.9 px wide
// in Chromium 156, which shapes the soft hyphen in the first face, and 138.1 px in Firefox 153, as without.
// `er` with a hyphen of the first face is 121.3 and 120.5 px wide.
TEST(Lines, FirefoxKernsAcrossASoftHyphenInAFallbackFace) {
    ShapingStyle style = test::styleOf("Lato");
    style.family = {"Noto Sans Hebrew", "Lato"};
    const auto widths = [&](const BreakProfile& profile, double available) {
        const ParagraphPtr paragraph =
            Paragraph::prepare(test::plain("er\u00ADa"), style, test::fonts(), profile);
        std::vector<Line> lines;
        breakLines(*paragraph, test::at(100, available), profile, lines);
        return lines;
    };
    EXPECT_NEAR(widths(blink(), 200).at(0).width, 138.9, 0.01);
    EXPECT_NEAR(widths(gecko(), 200).at(0).width, 138.1, 0.01);
    EXPECT_NEAR(widths(blink(), 130).at(0).width, 121.3, 0.01);
    EXPECT_NEAR(widths(gecko(), 130).at(0).width, 120.5, 0.01);
}

// Measured in Firefox 153: `->` is one glyph of Manrope, which counts as a whole for a line that ends between
// its two characters.
TEST(Lines, FirefoxCountsAWholeLigatureAtABreakInsideIt) {
    const ParagraphPtr paragraph = Paragraph::prepare(test::plain("tuổi ab-12-cd phải left->right đi"),
                                                      test::styleOf("Manrope"), test::fonts(), gecko());
    std::vector<Line> lines;
    breakLines(*paragraph, test::at(15.637872, 90.049), gecko(), lines);
    Texts texts;
    for (const Line& line : lines)
        texts.push_back(paragraph->utf8(line.first, line.end));
    EXPECT_EQ(texts, (Texts{"tuổi ab-12-", "cd phải", "left->right", "đi"}));
}

// A soft hyphen that does not fit by a hair, then a letter that is far too wide: the hyphen decides the
// slack.
TEST(Lines, SlackOfACutIsThatOfTheNarrowestTextThatDoesNotFit) {
    const ParagraphPtr paragraph =
        Paragraph::prepare(test::plain("Will\u00ADW"), test::styleOf("Lato"), test::fonts(), gecko());
    const Opportunity& hyphen = paragraph->opportunities().front();
    ASSERT_EQ(hyphen.kind, Opportunity::Kind::SoftHyphen);
    LineQuery query = test::at(15, 1000);
    query.overflowWrap = OverflowWrap::Anywhere;
    const double hyphenated = lineWidth(*paragraph, query, 0, 0, hyphen);
    query.available = hyphenated - 0.01;
    std::vector<Line> lines;
    breakLines(*paragraph, query, gecko(), lines);
    EXPECT_NEAR(lines.at(0).slack, 0.01 / hyphenated, 1e-5);
}

}  // namespace
}  // namespace tenter::text
