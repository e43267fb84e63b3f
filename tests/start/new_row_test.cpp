// New rows: sound for every look, column count, script and text.
#include "start/new_row.h"

#include <gtest/gtest.h>

#include "checks/checks.h"
#include "checks/registry.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/validate.h"
#include "start/example_text.h"
#include "start/language.h"
#include "start/looks.h"

namespace tenter::start {
namespace {

/// What the checks report as an error, and what keeps the project from being opened again.
std::vector<std::string> faultsOf(const project::Project& project, text::ParagraphStore& store) {
    std::vector<std::string> faults;
    for (const project::Problem& problem : project::validate(project))
        faults.push_back(problem.line());
    project::Problems problems;
    const std::string text = project::write(project);
    const auto again = project::parse(text, "new", {}, problems, checks::isCheckName);
    if (!again || project::write(*again) != text)
        faults.emplace_back("The project differs after it was written and read.");
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant)
        for (const checks::Finding& finding : checks::check(project, variant, store))
            if (finding.severity == checks::Severity::Error)
                faults.push_back(finding.check + ": " + finding.says);
    return faults;
}

class NewRowTest : public ::testing::Test {
protected:
    MadeRow make(const NewRow& row) { return newRow(row, store_); }
    void expectSound(const NewRow& row, const std::string& about) {
        const MadeRow made = make(row);
        const auto faults = faultsOf(made.project, store_);
        EXPECT_TRUE(faults.empty()) << about << ": " << (faults.empty() ? "" : faults.front());
        EXPECT_FALSE(made.project.name.empty());
    }
    static NewRow with(const std::string& text, int columns = 3, const std::string& look = {}) {
        NewRow row;
        row.text = readPasted(text);
        row.columns = columns;
        row.look = look;
        return row;
    }
    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
};

TEST_F(NewRowTest, IsSoundForEveryLookAndColumnCount) {
    ASSERT_GE(looks().size(), 3U);
    for (const Look& look : looks())
        for (int columns = 1; columns <= mostNewColumns; ++columns)
            expectSound(with("", columns, look.name), look.name + ", " + std::to_string(columns));
}

TEST_F(NewRowTest, IsSoundForOtherScriptsAndUnusualTexts) {
    std::string twelve;
    for (int i = 1; i <= 12; ++i)
        twelve += "Walk " + std::to_string(i) + "\nWhat to bring along every week.\nBook it\n\n";
    std::string longText = "Heading\n";
    for (int i = 0; i < 60; ++i)
        longText += "Überwachungsaufgabenübertragung ";
    for (const std::string& text :
         {std::string("نزهة\nميلان على مهل فوق الرمل.\nاحجز\n"),
          std::string("הליכה\nעל החול, כשהים רחוק.\nהזמינו\n"),
          std::string("เดิน\nเดินช้า ๆ สองไมล์บนผืนทรายขณะที่น้ำทะเลลดลง\nจอง\n"),
          std::string("散歩\n砂の上を歩きます。\n予約\n"), twelve, longText, std::string("Alone"),
          "A\n" + std::string(400, 'x') + "\n" + std::string(60, 'y'),
          std::string("## Low\n\nTwo [slow](/a) **miles**\n\n## Geese\n\nLight\n"),
          std::string("Title,Text,Price\nLow,Two,£5\nGeese,First,£3\n")})
        for (const Look& look : looks())
            for (const int columns : {1, 3, 6})
                expectSound(with(text, columns, look.name), look.name + ": " + text.substr(0, 40));
}

TEST_F(NewRowTest, NamesTheProjectAndItsClasses) {
    project::Project made = make(with("Die Gänse im Winter\nAm Deich, bei Sonnenaufgang.\nMehr\n")).project;
    EXPECT_EQ(made.name, "Die Gänse im Winter");
    EXPECT_EQ(made.row().name, "die-ganse-im-winter");
    EXPECT_EQ(made.row().variants[0].className, "die-ganse-im-winter-trio");
    made = make(with("# Around the sound\n\n## Low\n\nTwo\n\n## Geese\n\nFirst\n")).project;
    EXPECT_EQ(made.name, "Around the sound");
    EXPECT_EQ(rowNameOf("نزهة"), "cards");
    EXPECT_EQ(rowNameOf("3 walks!"), "walks");
    EXPECT_EQ(rowNameOf("A very long name of a project that has no end"), "a-very-long-name-of-a");
}

TEST_F(NewRowTest, SetsLanguageDirectionAndFonts) {
    const project::Project hebrew = make(with("הליכה\nעל החול, כשהים רחוק.\nהזמינו\n")).project;
    EXPECT_EQ(hebrew.language, "he");
    EXPECT_TRUE(hebrew.rightToLeft);
    EXPECT_EQ(hebrew.row().style.text.find("heading")->family->front(), "Noto Serif Hebrew");
    NewRow row = with("Low\nTwo miles of sand.\nBook\n");
    row.language = "pt-BR";
    EXPECT_EQ(make(row).project.language, "pt-BR");
    EXPECT_FALSE(make(row).project.rightToLeft);
    row.rightToLeft = true;
    EXPECT_TRUE(make(row).project.rightToLeft);
    const project::Project russian = make(with("Гуси\nНа рассвете, у берега.\nПрийти\n")).project;
    const auto& families = *russian.row().style.text.find("heading")->family;
    EXPECT_EQ(families.front(), "Vollkorn");
    EXPECT_EQ(families[families.size() - 2], "Noto Serif");
}

TEST_F(NewRowTest, HasABandForEachStepOfColumns) {
    const project::Project four = make(with("", 4)).project;
    ASSERT_EQ(four.row().variants.size(), 1U);
    const project::Variant& variant = four.row().variants[0];
    std::vector<int> columns;
    for (std::size_t band = 0; band < variant.bands.size(); ++band)
        columns.push_back(*project::resolve(four, variant, band).row.columns);
    EXPECT_EQ(columns, (std::vector<int>{1, 2, 4}));
    EXPECT_EQ(four.row().cards.size(), 4U);
    // The size of the heading grows inside a band.
    const auto settings = project::resolve(four, variant, 1);
    EXPECT_FALSE(settings.text.find("heading")->size->isFlat());
}

TEST_F(NewRowTest, UsesExampleTextOfTheLanguage) {
    NewRow row;
    row.language = "ar";
    const MadeRow arabic = make(row);
    EXPECT_TRUE(arabic.project.rightToLeft);
    EXPECT_EQ(languageOfScript(project::plainText(
                  std::get<project::TextPart>(arabic.project.row().cards[0].parts[0]).copy)),
              "ar");
    ASSERT_FALSE(arabic.notes.empty());
    EXPECT_NE(arabic.notes[0].find("example"), std::string::npos);
    EXPECT_EQ(exampleText(12, "en").cards.size(), 12U);
}

TEST_F(NewRowTest, PutsPicturesIntoCardsInTheirOrder) {
    NewRow row = with("Title,Text,Alt\nLow,Two,Sand\nGeese,First,Bank\n");
    for (const char* file : {"a.jpg", "b.jpg", "c.jpg"})
        row.pictures.emplace_back().file = file;
    const MadeRow made = make(row);
    const auto& second = std::get<project::PicturePart>(made.project.row().cards[1].parts[0]);
    EXPECT_EQ(second.file, "b.jpg");
    EXPECT_EQ(second.alt, "Bank");
    ASSERT_FALSE(made.notes.empty());
    EXPECT_NE(made.notes.back().find("1 of the pictures"), std::string::npos);
    NewRow pictures;
    pictures.pictures.resize(5);
    EXPECT_EQ(make(pictures).project.row().cards.size(), 5U);
}

TEST_F(NewRowTest, RelaxesWishesThatTheTextMakesImpossible) {
    const MadeRow made =
        make(with("Low tide\nTwo miles of sand and weed.\nButton: Register now for each of the morning walks "
                  "of this winter "
                  "season and the next\n"));
    ASSERT_FALSE(made.notes.empty());
    EXPECT_NE(made.notes[0].find("button"), std::string::npos) << made.notes[0];
    EXPECT_TRUE(made.project.row().wishes.has_value());
}

TEST_F(NewRowTest, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    EXPECT_TRUE(newRow(with(""), store_, source.get_token()).isCancelled);
}

}  // namespace
}  // namespace tenter::start
