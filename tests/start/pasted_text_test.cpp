// Pasted text in every format, in several scripts, and bytes that are no text.
#include "start/pasted_text.h"

#include <gtest/gtest.h>

#include <random>

#include "project/rules.h"
#include "project/utf8.h"
#include "start/language.h"

namespace tenter::start {
namespace {

/// `Low tide | Two miles. | [Book](#)`: the parts of a card; buttons with their address.
std::string summary(const PastedCard& card) {
    std::string out = card.alt.empty() ? "" : "{" + card.alt + "}";
    for (const project::TextPart& part : card.parts) {
        if (!out.empty()) out += " | ";
        const std::string text = project::plainText(part.copy);
        if (part.role == "button")
            out += "[" + text + "](" + part.link + ")";
        else if (part.role == "heading")
            out += "# " + text;
        else
            out += (part.role == "body" ? "" : part.role + ": ") + text;
    }
    return out;
}

std::vector<std::string> cardsIn(std::string_view text, std::optional<TextFormat> format = {}) {
    std::vector<std::string> cards;
    for (const PastedCard& card : readPasted(text, format).cards)
        cards.push_back(summary(card));
    return cards;
}

using Cards = std::vector<std::string>;

const Cards walks{"# Low tide walk | Two slow miles across the sand while the sea is out. | [Book a walk](#)",
                  "# Winter geese | Stand on the bank at first light, with a flask. | [Join a count](#)"};

TEST(PlainText, DividesCardsAtEmptyLines) {
    EXPECT_EQ(
        cardsIn("Low tide walk\nTwo slow miles across the sand while the sea is out.\nBook a walk\n\n"
                "Winter geese\r\nStand on the bank at first light,\r\nwith a flask.\r\nJoin a count\r\n"),
        walks);
}

TEST(PlainText, DividesCardsWhereEachLineStandsAlone) {
    const std::string lines =
        "Low tide walk\n\nTwo slow miles across the sand while the sea is out.\n\nBook a walk\n\n"
        "Winter geese\n\nStand on the bank at first light, with a flask.\n\nJoin a count\n";
    EXPECT_EQ(cardsIn(lines), walks);
    std::string close = lines;
    for (std::size_t at = 0; (at = close.find("\n\n", at)) != std::string::npos;)
        close.erase(at, 1);
    EXPECT_EQ(cardsIn(close), walks);
    const PastedText titled = readPasted("Around the sound\n\n" + lines);
    EXPECT_EQ(titled.title, "Around the sound");
    EXPECT_EQ(titled.cards.size(), 2U);
}

TEST(PlainText, AcceptsMissingFields) {
    EXPECT_EQ(cardsIn("Alpha\nBeta\nGamma"), (Cards{"# Alpha", "# Beta", "# Gamma"}));
    EXPECT_EQ(cardsIn("Low tide\nTwo miles of sand and weed.\n\nGeese\nAt first light, on the bank."),
              (Cards{"# Low tide | Two miles of sand and weed.", "# Geese | At first light, on the bank."}));
    EXPECT_EQ(cardsIn("Only a sentence, which is a text and not a heading at all, as it ends like one."),
              (Cards{"Only a sentence, which is a text and not a heading at all, as it ends like one."}));
    EXPECT_EQ(cardsIn(""), Cards{});
    EXPECT_EQ(cardsIn(" \n\t\n\u00A0\n"), Cards{});
}

TEST(PlainText, KeepsTextThatContinuesACard) {
    EXPECT_EQ(cardsIn("Low tide\nTwo miles of sand and weed.\n\nThe second paragraph is a long one, which "
                      "therefore starts no card of its own.\n\nGeese\nAt first light, on the bank."),
              (Cards{"# Low tide | Two miles of sand and weed. | The second paragraph is a long one, which "
                     "therefore starts no card of its own.",
                     "# Geese | At first light, on the bank."}));
}

TEST(PlainText, ReadsStatedRolesAndAddresses) {
    EXPECT_EQ(cardsIn("Title: Low tide\nText: Two miles.\nButton: Book\nLink: https://example.org/a\n\n"
                      "Title: Geese\nText: First light.\nPrice: £5\n"),
              (Cards{"# Low tide | Two miles. | [Book](https://example.org/a)",
                     "# Geese | First light. | price: £5"}));
    EXPECT_EQ(cardsIn("Low tide\nTwo miles of sand.\nBook https://example.org/b\n\nGeese\nAt first "
                      "light.\n→ Join a count\n\nFerry\nIn the morning.\n[See times]\nwww.example.org/f"),
              (Cards{"# Low tide | Two miles of sand. | [Book](https://example.org/b)",
                     "# Geese | At first light. | [Join a count](#)",
                     "# Ferry | In the morning. | [See times](https://www.example.org/f)"}));
    EXPECT_EQ(cardsIn("- Low tide: two miles\n- Geese – at first light\n"),
              (Cards{"# Low tide | two miles", "# Geese | at first light"}));
}

TEST(PlainText, ReadsOtherScripts) {
    const std::vector<std::pair<std::string, std::string>> texts{
        {"ar",
         "نزهة وقت الجزر\nميلان على مهل فوق الرمل ما دام البحر بعيدًا.\nاحجز نزهة\n\nعدّ الإوزّ\nمع أول "
         "الضوء.\nشارك"},
        {"he", "הליכה בשפל\nשני מיילים איטיים על החול.\nהזמינו\n\nספירת אווזים\nעם אור ראשון.\nהצטרפו"},
        {"th", "เดินชายหาด\nเดินช้า ๆ สองไมล์บนผืนทรายขณะที่น้ำทะเลลดลง\nจอง\n\nนับห่าน\nยืนบนฝั่งตั้งแต่แสงแรก\nร่วมนับ"},
        {"ja",
         "干潮の散歩\n砂の上をゆっくり歩きます。\n予約する\n\n冬の雁\n夜明けに土手に立ちます。\n参加する"},
        {"zh", "退潮散步\n在沙滩上慢慢走两英里。\n预订\n\n数大雁\n天亮时站在岸边。\n参加"},
        {"ru", "Прогулка\nДве мили по песку.\nЗаписаться\n\nГуси\nНа рассвете.\nПрийти"},
        {"hi", "भाटे की सैर\nरेत पर धीमे दो मील।\nबुक करें\n\nहंस\nपहली रोशनी में।\nजुड़ें"}};
    for (const auto& [language, text] : texts) {
        const PastedText read = readPasted(text);
        ASSERT_EQ(read.cards.size(), 2U) << language;
        for (const PastedCard& card : read.cards) {
            ASSERT_EQ(card.parts.size(), 3U) << language;
            EXPECT_EQ(card.parts[0].role + card.parts[1].role + card.parts[2].role, "headingbodybutton");
        }
        EXPECT_EQ(languageOf(read), language);
        EXPECT_EQ(runsRightToLeft(language), language == "ar" || language == "he");
    }
}

TEST(Markdown, StartsACardAtEachHeadingOfTheMostFrequentLevel) {
    const PastedText read = readPasted(
        "# Around the sound\n\n## Low tide\n\nTwo **slow** miles across the [sand](/sand).\n\n[Book](/b)\n\n"
        "## Geese\n\nFirst light.\n\nJoin\n");
    EXPECT_EQ(read.format, TextFormat::Markdown);
    EXPECT_EQ(read.title, "Around the sound");
    ASSERT_EQ(read.cards.size(), 2U);
    EXPECT_EQ(summary(read.cards[0]), "# Low tide | Two slow miles across the sand. | [Book](/b)");
    EXPECT_EQ(summary(read.cards[1]), "# Geese | First light. | [Join](#)");
    const project::Copy& body = read.cards[0].parts[1].copy;
    ASSERT_EQ(body.size(), 5U);
    EXPECT_EQ(body[1].kind, project::Run::Kind::Strong);
    EXPECT_EQ(body[3].kind, project::Run::Kind::Link);
    EXPECT_EQ(body[3].to, "/sand");
}

TEST(Markdown, ReadsListsRulesAndTables) {
    EXPECT_EQ(cardsIn("* **Low tide** Two miles. [Book](/b)\n* **Geese** – first light [Join](/j)\n"),
              (Cards{"# Low tide | Two miles. | [Book](/b)", "# Geese | first light | [Join](/j)"}));
    EXPECT_EQ(cardsIn("**Low tide**\n\nTwo miles.\n\n---\n\n**Geese**\n\nFirst light.\n"),
              (Cards{"# Low tide | Two miles.", "# Geese | First light."}));
    EXPECT_EQ(cardsIn("| Heading | Text |\n|---|:--|\n| Low | Two |\n| Geese | First |\n"),
              (Cards{"# Low | Two", "# Geese | First"}));
}

TEST(Markdown, SaysWhatIsInNoCard) {
    const PastedText read =
        readPasted("An introduction to all of this.\n\n## Low\n\nTwo\n\n## Geese\n\nFirst\n");
    EXPECT_EQ(read.cards.size(), 2U);
    ASSERT_EQ(read.notes.size(), 1U);
    EXPECT_NE(read.notes[0].find("An introduction"), std::string::npos);
}

TEST(Html, ReadsTextAndRowsOfCards) {
    EXPECT_EQ(cardsIn("<h2>Low</h2><p>Two <b>miles</b></p><p><a href='/x'>Book</a></p><h2>Geese</h2>"
                      "<p>First<br>light</p><p>Join</p>"),
              (Cards{"# Low | Two miles | [Book](/x)", "# Geese | First\nlight | [Join](#)"}));
    EXPECT_EQ(
        cardsIn("<div><div class=walk><img src=a.jpg alt=Sand><h3>Low</h3><p>Two miles of sand and weed"
                "</p><a class=btn href=/x>Book</a></div><div class=walk><h3>Geese</h3><p>First light on "
                "the bank</p><a class=btn href=/y>Join</a></div></div>"),
        (Cards{"{Sand} | # Low | Two miles of sand and weed | [Book](/x)",
               "# Geese | First light on the bank | [Join](/y)"}));
    EXPECT_EQ(cardsIn("<table><tr><td>Low</td><td>Two miles</td></tr><tr><td>Geese</td><td>First light</td>"
                      "</tr></table>"),
              (Cards{"# Low | Two miles", "# Geese | First light"}));
    EXPECT_EQ(readPasted("<html lang=pt-BR><p>Areia</p></html>").language, "pt-BR");
}

TEST(Html, DropsWhatRuns) {
    const PastedText read = readPasted(
        "<h2>Low</h2><script>alert(1)</script><p onclick='x()'>Two</p><p><a href='javascript:x()'>Go</a></p>"
        "<h2>Geese</h2><p>First</p>");
    ASSERT_EQ(read.cards.size(), 2U);
    for (const PastedCard& card : read.cards)
        for (const project::TextPart& part : card.parts) {
            EXPECT_EQ(part.link.find("javascript"), std::string::npos);
            EXPECT_EQ(project::plainText(part.copy).find("alert"), std::string::npos);
        }
}

TEST(Table, ReadsTheRowsOfASpreadsheet) {
    EXPECT_EQ(cardsIn("Low tide\tTwo, slow miles\tBook\thttps://example.org\nGeese\tFirst light\tJoin\t\n"),
              (Cards{"# Low tide | Two, slow miles | [Book](https://example.org)",
                     "# Geese | First light | [Join](#)"}));
    EXPECT_EQ(
        cardsIn("Title,Description,Price,CTA,URL,Alt text\n\"Low, \"\"tide\"\"\",\"Two\nmiles\",£5,Book,/b,"
                "Sand\nGeese,First,£3,,,\n"),
        (Cards{"{Sand} | # Low, \"tide\" | Two\nmiles | price: £5 | [Book](/b)",
               "# Geese | First | price: £3"}));
    EXPECT_EQ(cardsIn("Heading;Text;Opening hours\nLow;Two miles;8 to 10\nGeese;First light;6 to 8\n"),
              (Cards{"# Low | Two miles | opening-hours: 8 to 10",
                     "# Geese | First light | opening-hours: 6 to 8"}));
    EXPECT_EQ(cardsIn("Low\tTwo\t\tjavascript:x()", TextFormat::Table), (Cards{"# Low | Two"}));
}

TEST(Table, DoesNotTakeProseForATable) {
    EXPECT_EQ(guessedFormat("Walk, swim, rest\nEat, sleep, rest\n"), TextFormat::Plain);
    EXPECT_EQ(guessedFormat("Low tide, 6 am"), TextFormat::Plain);
}

TEST(PastedText, TurnsIntoMarkdownAndBack) {
    for (const char* text : {"Low tide walk\nTwo slow miles * and a _half_ [sic] <b>.\nBook "
                             "https://example.org/a_b_c\n\nGeese\n1. "
                             "First light.\nJoin",
                             "# Around\n\n## Low\n\nTwo **slow** *long* miles\\\nof "
                             "[sand](/sand)\n\n[Book](/b)\n\n## Geese\n\nFirst\n",
                             "Title,Text,Alt\nLow,Two,Sand\nGeese,First,Bank\n", "Alpha\nBeta\nGamma\n"}) {
        PastedText read = readPasted(text);
        PastedText again = readPasted(markdownOf(read), TextFormat::Markdown);
        EXPECT_EQ(again.title, read.title);
        EXPECT_EQ(again.cards, read.cards) << markdownOf(read);
    }
}

TEST(PastedText, BoundsItsInput) {
    std::string many;
    for (int i = 0; i < 300; ++i)
        many += "Walk " + std::to_string(i) + "\nSome text about it.\n\n";
    const PastedText read = readPasted(many);
    EXPECT_EQ(read.cards.size(), mostPastedCards);
    EXPECT_EQ(read.notes.size(), 1U);
    const PastedText large = readPasted(std::string(longestPaste, 'x') + "\nend\n");
    ASSERT_FALSE(large.notes.empty());
    EXPECT_NE(large.notes.back().find("1 MB"), std::string::npos);
    ASSERT_EQ(large.cards.size(), 1U);
    EXPECT_EQ(project::plainText(large.cards[0].parts[0].copy), std::string(project::longestText, 'x'));
    std::string much;
    for (int i = 0; i < 90; ++i)
        much += "Heading: Walk\nText: " + std::string(9000, 'x') + "\n\n";
    std::size_t characters = 0;
    for (const PastedCard& card : readPasted(much).cards)
        for (const project::TextPart& part : card.parts)
            characters += project::plainText(part.copy).size();
    EXPECT_EQ(characters, project::longestTexts);
    std::string lines = "Heading\n";
    for (int i = 0; i < 500; ++i)
        lines += "Text: line\n";
    ASSERT_EQ(readPasted(lines).cards.size(), 1U);
    EXPECT_LE(readPasted(lines).cards[0].parts.size(), 20U);
    // Deeply nested elements are read within the limits of stack and time.
    std::string deep;
    for (int i = 0; i < 20000; ++i)
        deep += "<div>";
    EXPECT_LE(readPasted(deep + "text").cards.size(), 1U);
    std::string bold;
    for (int i = 0; i < 20000; ++i)
        bold += "<b>";
    EXPECT_LE(readPasted("<p>" + bold + "text").cards.size(), 1U);
    std::string quotes;
    for (int i = 0; i < 20000; ++i)
        quotes += "> ";
    EXPECT_LE(readPasted(quotes + "text", TextFormat::Markdown).cards.size(), 1U);
}

// Every format must read any bytes, and give text that a project can hold.
TEST(PastedText, ReadsAnyBytes) {
    std::mt19937 random(20);
    const std::string pieces[] = {"\n",    "\t",     ",",      "\"",   "<p>",   "</p>",  "<h2>", "# ",
                                  "* ",    "[a](b)", "\xff",   "\0x",  "word ", "מים",   "→",    "|",
                                  "---\n", ": ",     "Title:", "<li>", "&amp;", "\u2028"};
    for (int i = 0; i < 600; ++i) {
        std::string text;
        for (int part = 0; part < 40; ++part)
            text += pieces[random() % std::size(pieces)];
        for (std::size_t format = 0; format <= textFormatNames().size(); ++format) {
            const PastedText read = format == textFormatNames().size()
                                        ? readPasted(text)
                                        : readPasted(text, static_cast<TextFormat>(format));
            for (const PastedCard& card : read.cards)
                for (const project::TextPart& part : card.parts) {
                    EXPECT_FALSE(part.role.empty()) << text;
                    const std::string plain = project::plainText(part.copy);
                    EXPECT_FALSE(project::firstBadByte(plain)) << text;
                    EXPECT_NE(plain.find_first_not_of(" \n"), std::string::npos) << text;
                }
        }
    }
}

}  // namespace
}  // namespace tenter::start
