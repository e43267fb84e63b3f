// Files from which everything but the picture is removed.
#include "pictures/personal_data.h"

#include <algorithm>
#include <filesystem>

#include "drawn.h"

namespace tenter::pictures {
namespace {

using test::bytesOf;
using test::samplePictures;

std::string bigEndian(std::size_t number, int bytes) {
    std::string out;
    for (int i = bytes; i-- > 0;)
        out += static_cast<char>(number >> (8 * i) & 0xFFU);
    return out;
}

std::string segment(char marker, const std::string& content) {
    return std::string("\xFF") + marker + bigEndian(content.size() + 2, 2) + content;
}

/// Exif of a camera, with that orientation.
std::string exif(int orientation) {
    using namespace std::string_literals;
    return "Exif\0\0MM\0*\0\0\0\x08\0\x02"s + "\x01\x0F\0\x02\0\0\0\x0E\0\0\0\x26"s +
           "\x01\x12\0\x03\0\0\0\x01\0"s + static_cast<char>(orientation) + "\0\0\0\0\0\0secret camera\0"s;
}

/// The sample with `more` after its start.
std::string jpegWith(const std::string& more) {
    const std::string jpeg = bytesOf(samplePictures / "dunes.jpg");
    return jpeg.substr(0, 2) + more + jpeg.substr(2);
}

TEST(PersonalData, IsRemovedFromJpegs) {
    const std::string plain = withoutPersonalData(jpegWith(""));
    EXPECT_GT(plain.size(), 1000U);
    const std::string said =
        jpegWith(segment('\xE1', exif(1)) + segment('\xE1', "http://ns.adobe.com/xap/1.0/ secret author") +
                 segment('\xED', "Photoshop secret place") + segment('\xFE', "secret comment")) +
        "secret film";
    EXPECT_EQ(withoutPersonalData(said), plain);
}

TEST(PersonalData, LeavesColourProfileAndOrientationOfJpegs) {
    const std::string profile = segment('\xE2', std::string("ICC_PROFILE\0\x01\x01profile", 21));
    const std::string kept = withoutPersonalData(jpegWith(profile + segment('\xE1', exif(6))));
    EXPECT_NE(kept.find(profile), std::string::npos);
    EXPECT_NE(kept.find(std::string("\x01\x12\0\x03\0\0\0\x01\0\x06", 10)), std::string::npos);
    EXPECT_EQ(kept.find("secret"), std::string::npos);
    // What is removed once is not there a second time.
    EXPECT_EQ(withoutPersonalData(kept), kept);
}

TEST(PersonalData, IsRemovedFromPngs) {
    using namespace std::string_literals;
    const auto chunk = [](const std::string& name, const std::string& content) {
        return bigEndian(content.size(), 4) + name + content + "\1\2\3\4";
    };
    const std::string start =
        "\x89PNG\r\n\x1A\n"s + chunk("IHDR", std::string(13, 'h')) + chunk("iCCP", "profile");
    const std::string end = chunk("IDAT", "pixels") + chunk("IEND", "");
    const std::string said = chunk("tEXt", "Author\0secret"s) + chunk("iTXt", "secret") +
                             chunk("zTXt", "secret") + chunk("tIME", "secret!") + chunk("eXIf", "secret");
    EXPECT_EQ(withoutPersonalData(start + said + end + "secret"), start + end);
}

TEST(PersonalData, IsRemovedFromWebpFiles) {
    using namespace std::string_literals;
    const auto chunk = [](const std::string& name, const std::string& content) {
        return name + static_cast<char>(content.size()) + "\0\0\0"s + content;
    };
    const auto file = [&](char flags, const std::string& chunks) {
        const std::string content = "WEBP" + chunk("VP8X", flags + std::string(9, '\0')) + chunks;
        return "RIFF"s + static_cast<char>(content.size()) + "\0\0\0"s + content;
    };
    EXPECT_EQ(withoutPersonalData(file('\x2C', chunk("ICCP", "profile.") + chunk("VP8 ", "pixels") +
                                                   chunk("EXIF", "secret") + chunk("XMP ", "secret"))),
              file('\x20', chunk("ICCP", "profile.") + chunk("VP8 ", "pixels")));
}

TEST(PersonalData, OfFilesThatAreCutStaysInsteadOfDamage) {
    const std::string jpeg = jpegWith(segment('\xE1', exif(6)));
    for (std::size_t length = 0; length < 600; ++length)
        EXPECT_LE(withoutPersonalData(jpeg.substr(0, length)).size(), std::max<std::size_t>(length, 40));
    EXPECT_EQ(withoutPersonalData("<svg/>"), "<svg/>");
    EXPECT_EQ(withoutPersonalData(""), "");
}

}  // namespace
}  // namespace tenter::pictures
