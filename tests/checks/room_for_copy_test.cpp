// Room for text: the reported number fits, and is close to what fits.
#include "checks/room_for_copy.h"

#include <unicode/unistr.h>

#include <random>
#include <sstream>
#include <string>

#include "../sweep/sweeping.h"
#include "checking.h"
#include "project/role_wishes.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

/// A heading of 20 px in a face with characters of 1233/2048 em, alone in a card as wide as the viewport.
project::Project monospaced(const std::string& heading, int lines) {
    project::Project project = quiet(R"([{"parts": [{"role": "heading", "copy": ")" + heading + R"("}]}])");
    set(project, "text/heading/family", R"(["DejaVu Sans Mono"])");
    set(project, "text/heading/weight", "400");
    project::ownWishesOrNew(project, "heading", {}).lines = lines;
    return project;
}

RoomForCopy roomOf(const project::Project& project) {
    const std::vector<RoomForCopy> rooms = roomForCopy(project, 0, checkStore());
    EXPECT_EQ(rooms.size(), 1U);
    return rooms.empty() ? RoomForCopy() : rooms.front();
}

/// Adds `more` to the last run of the text.
void lengthen(project::Copy& copy, const std::string& more) {
    copy.back().text += more;
}

/// Up to `count` characters of random words of `copy`. The last word is cut to make exactly `count`, unless
/// letters join: a cut word would have other shapes.
std::string wordsLike(const project::Copy& copy, int count, bool lettersJoin, std::mt19937& random) {
    std::istringstream text(project::plainText(copy));
    std::vector<std::string> words;
    for (std::string word; text >> word;)
        words.push_back(word);
    icu::UnicodeString more;
    icu::UnicodeString whole;
    while (more.length() < count) {
        more += icu::UnicodeString::fromUTF8(" " + words[random() % words.size()]);
        if (more.length() <= count) whole = more;
    }
    std::string out;
    return (lettersJoin ? whole : more.tempSubString(0, count)).toUTF8String(out);
}

/// The length of the widths at which the part has more lines than wished under any profile, CSS px.
double brokenOver(const project::Project& project, std::size_t variant, const RoomForCopy& room) {
    double over = 0;
    const auto& text = std::get<project::TextPart>(project.part(room.place));
    for (const text::BreakProfile* profile : text::profiles()) {
        const layout::PreparedRow row(project, variant, checkStore(), *profile);
        const std::size_t forced = row.band(0).part(room.place).paragraph->forcedLines();
        const sweep::PartPieces part =
            sweep::partPieces(row, room.place, project.leastWidth, project.mostWidth);
        for (const auto& wish :
             project::wishRanges(project::effectiveWishes(project), text.role, &project::RoleWishes::lines))
            for (const sweep::Piece& piece : part.pieces)
                if (piece.lines > std::max(forced, static_cast<std::size_t>(wish.value)))
                    over += std::max(0.0, std::min(piece.to, wish.to) - std::max(piece.from, wish.from));
    }
    return over;
}

project::Copy& copyOf(project::Project& project, const RoomForCopy& room) {
    return std::get<project::TextPart>(project.part(room.place)).copy;
}

TEST(RoomForCopy, OfOneLineIsTheFreeSpaceOfTheNarrowestLine) {
    // At 320 px: 320 · (1 − 0.0025) / (20 · 1233/2048) = 26.5 characters.
    project::Project project = monospaced("Low tide", 1);
    const RoomForCopy room = roomOf(project);
    EXPECT_EQ(room.lines, 1);
    EXPECT_EQ(room.characters, 8);
    EXPECT_EQ(room.spare, 18);
    EXPECT_EQ(room.width, 320);
    project::Project longer = project;
    lengthen(copyOf(longer, room), " and high tide now");
    EXPECT_EQ(roomOf(longer).spare, 0);
    EXPECT_EQ(brokenOver(longer, 0, room), 0);
    lengthen(copyOf(longer, room), "s");
    EXPECT_GT(brokenOver(longer, 0, room), 0);
}

TEST(RoomForCopy, SubtractsAWidestWordForEachFurtherLine) {
    // A line holds 26.5 characters, minus 8 for another "mudflats" that may not fit: 18.5 on each further
    // line.
    EXPECT_EQ(roomOf(monospaced("Mudflats now", 1)).spare, 14);
    EXPECT_EQ(roomOf(monospaced("Mudflats now", 2)).spare, 14 + 19);
    EXPECT_EQ(roomOf(monospaced("Mudflats now", 3)).spare, 14 + 2 * 18 + 1);
}

TEST(RoomForCopy, IsNegativeByTheCharactersTooMany) {
    // "Up the creek at dusk with" is a line of 25 characters at 320 px, " lamps" the rest.
    project::Project project = monospaced("Up the creek at dusk with lamps", 1);
    const RoomForCopy room = roomOf(project);
    EXPECT_EQ(room.spare, -6);
    project.row().cards[0].parts[0] = project::TextPart{
        "heading", {{project::Run::Kind::Plain, "Up the creek at dusk with", ""}}, "", "", {}};
    EXPECT_EQ(roomOf(project).spare, 1);
}

TEST(RoomForCopy, DependsOnTheFullestLineBeforeAForcedBreak) {
    project::Project project = monospaced("Low tide", 1);
    project::Copy& copy = std::get<project::TextPart>(project.row().cards[0].parts[0]).copy;
    copy.push_back({project::Run::Kind::Break, "", ""});
    copy.push_back({project::Run::Kind::Plain, "and", ""});
    const RoomForCopy room = roomOf(project);
    EXPECT_EQ(room.lines, 2);
    EXPECT_EQ(room.spare, 18);
}

TEST(RoomForCopy, FollowsTheWidthsOfAWish) {
    project::Project project = monospaced("Low tide", 1);
    project.row().wishes->roles[0].from = 600;
    // Past 600 px a line holds 600 · 0.9975 / 12.041 = 49.7 characters. Below, the default wish of three
    // lines holds, and each further line holds 26.5 − 4 characters.
    EXPECT_EQ(roomOf(project).spare, 41);
    EXPECT_EQ(roomOf(project).width, 601);
    project.row().wishes->roles[0].upTo = 601;
    project.row().wishes->roles[0].from.reset();
    EXPECT_EQ(roomOf(project).spare, 18);
}

TEST(RoomForCopy, IsListedForTextsWithAWishOnLines) {
    project::Project project = quiet();
    EXPECT_EQ(roomForCopy(project, 0, checkStore()).size(), 2U);  // heading and button
    std::get<project::TextPart>(project.row().cards[0].parts[0]).copy.clear();
    EXPECT_EQ(roomForCopy(project, 0, checkStore()).size(), 1U);
    project::ownWishesOrNew(project, "body", {}).lines = 8;
    EXPECT_EQ(roomForCopy(project, 0, checkStore()).size(), 2U);
}

// Each text grows by the reported number in its own words, in random order, and has not much more room.
TEST(RoomForCopy, FitsAndIsCloseToWhatFits) {
    std::mt19937 random(20261126);
    int reported = 0;
    int fitting = 0;
    const auto expectRoom = [&](const Swept& swept) {
        if (swept.row.profile().name() != text::blink().name()) return;
        for (const RoomForCopy& room : roomForCopy(swept.project, swept.variant, checkStore())) {
            if (room.spare < 0) continue;
            project::Project longer = swept.project;
            project::Copy& copy = copyOf(longer, room);
            const project::Copy own = copy;
            const auto fits = [&](int more) {
                copy = own;
                lengthen(copy, wordsLike(own, more, swept.project.rightToLeft, random));
                return brokenOver(longer, swept.variant, room) == 0;
            };
            for (int i = 0; i < 6; ++i)
                EXPECT_TRUE(fits(room.spare))
                    << swept.name << ": " << project::plainText(copy) << ", " << room.spare;
            reported += room.spare;
            int most = room.spare;
            while (fits(most + 4))
                most += 4;
            fitting += most;
        }
    };
    forEachSample(expectRoom);
    EXPECT_GT(reported, 1000);
    EXPECT_GT(reported, fitting * 0.6);
}

}  // namespace
}  // namespace tenter::checks
