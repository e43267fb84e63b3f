// Reading unusual, broken and hostile files.
#include "pictures/source.h"

#include <zlib.h>

#include "drawn.h"
#include "pictures/colour_profile.h"

namespace tenter::pictures {
namespace {

using test::bytesOf;
using test::drawn;
using test::expectNear;
using test::Pixel;
using test::pixelAt;
using test::samplePictures;
using test::writeBytes;

class Sources : public ::testing::Test {
protected:
    /// What is wrong with `file`, by its head and by its pixels.
    static void expectTrouble(const std::filesystem::path& file, const std::string& what) {
        const Read<Source> read = readSource(file);
        EXPECT_FALSE(read.value.has_value()) << file;
        EXPECT_NE(read.trouble.find(what), std::string::npos) << read.trouble;
        EXPECT_TRUE(read.fix.ends_with('.')) << read.fix;
    }
    static Source source(const std::filesystem::path& file) {
        Read<Source> read = readSource(file);
        EXPECT_EQ(read.trouble, "") << file;
        return read.value ? std::move(*read.value) : Source{};
    }
    static std::vector<std::string> notes(const std::filesystem::path& file) {
        const Read<SourceInfo> read = readInfo(file);
        EXPECT_EQ(read.trouble, "") << file;
        return read.value ? read.value->notes : std::vector<std::string>{};
    }

    test::TestFolder folder_;
};

/// Four quarters of different colours.
ImagePtr quarters(int width, int height) {
    return drawn(width, height, [&](int x, int y) -> Pixel {
        if (y < height / 2) return x < width / 2 ? Pixel{200, 30, 30} : Pixel{30, 200, 30};
        return x < width / 2 ? Pixel{30, 30, 200} : Pixel{200, 200, 30};
    });
}

TEST_F(Sources, HaveTheSizeOfTheFile) {
    const Read<SourceInfo> info = readInfo(samplePictures / "dunes.jpg");
    ASSERT_TRUE(info.value.has_value()) << info.trouble;
    EXPECT_EQ(info.value->size, (PixelSize{900, 1200}));
    EXPECT_TRUE(info.value->notes.empty());
    EXPECT_EQ(source(samplePictures / "dunes.jpg").size, info.value->size);
}

// Exif 2.32 § 4.6.4: in orientation 6 the first row of the file is the right side of the picture.
TEST_F(Sources, AreTurnedUpright) {
    const ImagePtr image = quarters(60, 40);
    vips_image_set_int(image.get(), "orientation", 6);
    const std::filesystem::path file = folder_.file("turned.jpg");
    ASSERT_EQ(vips_jpegsave(image.get(), file.c_str(), "Q", 100, nullptr), 0);
    const Source turned = source(file);
    EXPECT_EQ(turned.size, (PixelSize{40, 60}));
    EXPECT_EQ(readInfo(file).value->size, turned.size);
    expectNear(pixelAt(turned.image, 30, 10), {200, 30, 30}, 6);
    expectNear(pixelAt(turned.image, 30, 50), {30, 200, 30}, 6);
    expectNear(pixelAt(turned.image, 10, 10), {30, 30, 200}, 6);
}

// Twice the size of a thumbnail is enough for it; more than the file has is the whole file.
TEST_F(Sources, AreDecodedSmallerIfThatIsEnough) {
    const ImagePtr image = quarters(640, 400);
    vips_image_set_int(image.get(), "orientation", 6);
    const std::filesystem::path file = folder_.file("turned.jpg");
    ASSERT_EQ(vips_jpegsave(image.get(), file.c_str(), "Q", 100, nullptr), 0);
    struct Case {
        PixelSize enough, decoded;
    };
    for (const Case& one :
         {Case{{50, 80}, {50, 80}}, Case{{51, 80}, {100, 160}}, Case{{100, 161}, {200, 320}},
          Case{{320, 200}, {400, 640}}, Case{{900, 900}, {400, 640}}}) {
        const Read<Source> read = readSource(file, one.enough);
        ASSERT_TRUE(read.value.has_value()) << read.trouble;
        const Source& source = *read.value;
        EXPECT_EQ(source.size, one.decoded) << one.enough.width;
        EXPECT_EQ(source.isSmaller, one.decoded.width < 400);
        expectNear(pixelAt(source.image, source.size.width * 3 / 4, source.size.height / 4), {200, 30, 30},
                   6);
        expectNear(pixelAt(source.image, source.size.width / 4, source.size.height * 3 / 4), {200, 200, 30},
                   6);
    }
    const std::filesystem::path png = folder_.file("whole.png");
    test::writePng(image, png);
    EXPECT_EQ(readSource(png, PixelSize{10, 10}).value->isSmaller, false);
}

TEST_F(Sources, OfAWideColourSpaceKeepTheirColours) {
    const ImagePtr image = drawn(32, 32, [](int, int) { return Pixel{180, 90, 40}; });
    VipsImage* wide = nullptr;
    ASSERT_EQ(vips_icc_transform(image.get(), &wide, "p3", "input_profile", "srgb", nullptr), 0);
    const ImagePtr keeper(wide);
    const std::filesystem::path file = folder_.file("wide.png");
    test::writePng(keeper, file);
    EXPECT_GT(std::abs(pixelAt(keeper, 5, 5)[0] - 180), 3) << "the same numbers in both spaces";
    expectNear(pixelAt(source(file).image, 5, 5), {180, 90, 40}, 2);
    ASSERT_EQ(notes(file).size(), 1U);
    EXPECT_NE(notes(file)[0].find("colour space"), std::string::npos);
}

TEST_F(Sources, KnowProfilesOfSrgb) {
    std::size_t size = 0;
    for (const char* name : {"srgb", "p3"}) {
        VipsBlob* blob = nullptr;
        ASSERT_EQ(vips_profile_load(name, &blob, nullptr), 0);
        const void* bytes = vips_blob_get(blob, &size);
        EXPECT_EQ(isSrgbProfile({static_cast<const char*>(bytes), size}), std::string(name) == "srgb")
            << name;
        std::string cut(static_cast<const char*>(bytes), size / 2);
        (void)isSrgbProfile(cut);
        vips_area_unref(reinterpret_cast<VipsArea*>(blob));
    }
    EXPECT_FALSE(isSrgbProfile(""));
    EXPECT_FALSE(isSrgbProfile(std::string(200, '\xff')));
}

TEST_F(Sources, InCmykBecomeSrgb) {
    VipsImage* cmyk = nullptr;
    const ImagePtr image = quarters(64, 64);
    ASSERT_EQ(vips_icc_transform(image.get(), &cmyk, "cmyk", "input_profile", "srgb", nullptr), 0);
    const ImagePtr keeper(cmyk);
    const std::filesystem::path file = folder_.file("print.jpg");
    ASSERT_EQ(vips_jpegsave(cmyk, file.c_str(), "Q", 95, nullptr), 0);
    const Source read = source(file);
    EXPECT_EQ(vips_image_get_bands(read.image.get()), 3);
    const Pixel red = pixelAt(read.image, 10, 10);
    EXPECT_GT(red[0], red[1] + 80);
    EXPECT_GT(red[0], red[2] + 80);
    EXPECT_NE(notes(file).at(0).find("CMYK"), std::string::npos);
}

TEST_F(Sources, WithSixteenBitsAreRead) {
    VipsImage* deep = nullptr;
    const ImagePtr image = quarters(32, 32);
    ASSERT_EQ(vips_colourspace(image.get(), &deep, VIPS_INTERPRETATION_RGB16, nullptr), 0);
    const ImagePtr keeper(deep);
    const std::filesystem::path file = folder_.file("deep.png");
    test::writePng(keeper, file);
    const Source read = source(file);
    Resampler resampler(read, test::whole(read));
    expectNear(pixelAt(resampler.resized({16, 16}), 2, 2), {200, 30, 30}, 1);
    EXPECT_NE(notes(file).at(0).find("16 bits"), std::string::npos);
}

TEST_F(Sources, InGreyBecomeSrgb) {
    const std::filesystem::path file = folder_.file("grey.jpg");
    const ImagePtr image = drawn(32, 32, [](int, int) { return Pixel{90}; });
    ASSERT_EQ(vips_jpegsave(image.get(), file.c_str(), nullptr), 0);
    expectNear(pixelAt(source(file).image, 5, 5), {90, 90, 90}, 2);
}

TEST_F(Sources, ThatAreAnimatedShowTheirFirstFrame) {
    const ImagePtr frames = drawn(20, 60, [](int, int y) {
        return y < 20 ? Pixel{220, 20, 20} : Pixel{20, 20, 220};
    });
    vips_image_set_int(frames.get(), "page-height", 20);
    const std::filesystem::path file = folder_.file("moving.webp");
    ASSERT_EQ(vips_webpsave(frames.get(), file.c_str(), "lossless", TRUE, nullptr), 0);
    const Source read = source(file);
    EXPECT_EQ(read.size, (PixelSize{20, 20}));
    expectNear(pixelAt(read.image, 5, 5), {220, 20, 20}, 2);
    EXPECT_NE(notes(file).at(0).find("animated"), std::string::npos);
}

TEST_F(Sources, SayWhetherSomePartIsTransparent) {
    const std::filesystem::path opaque = folder_.file("opaque.png");
    const std::filesystem::path clear = folder_.file("clear.png");
    test::writePng(drawn(20, 20, [](int, int) { return Pixel{9, 99, 199, 255}; }), opaque);
    test::writePng(drawn(20, 20, [](int x, int) { return Pixel{9, 99, 199, x == 7 ? 254 : 255}; }), clear);
    EXPECT_FALSE(readInfo(opaque).value->hasAlpha);
    EXPECT_TRUE(readInfo(clear).value->hasAlpha);
    EXPECT_EQ(vips_image_get_bands(source(opaque).image.get()), 3);
    EXPECT_EQ(vips_image_get_bands(source(clear).image.get()), 4);
}

TEST_F(Sources, ThatAreTruncatedAreRefused) {
    const std::string bytes = bytesOf(samplePictures / "ferry.jpg");
    for (const std::size_t percent : {1, 30, 90}) {
        writeBytes(folder_.file("cut.jpg"), bytes.substr(0, bytes.size() * percent / 100));
        expectTrouble(folder_.file("cut.jpg"), "truncated");
    }
    const ImagePtr noise = drawn(64, 64, [](int x, int y) {
        return Pixel{x * 37 % 256, y * 91 % 256, x * y % 256};
    });
    test::writePng(noise, folder_.file("whole.png"));
    const std::string png = bytesOf(folder_.file("whole.png"));
    writeBytes(folder_.file("cut.png"), png.substr(0, png.size() / 2));
    expectTrouble(folder_.file("cut.png"), "truncated");
}

TEST_F(Sources, ThatAreNoPicturesAreRefused) {
    writeBytes(folder_.file("text.jpg"), "This is no picture, whatever its name says.");
    expectTrouble(folder_.file("text.jpg"), "not a picture");
    writeBytes(folder_.file("empty.jpg"), "");
    expectTrouble(folder_.file("empty.jpg"), "empty");
    expectTrouble(folder_.file("missing.jpg"), "does not exist");
    expectTrouble(folder_.path(), "does not exist");
    writeBytes(folder_.file("drawing.svg"), "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg'/>");
    EXPECT_TRUE(readInfo(folder_.file("drawing.svg")).value->isVector);
}

std::string bigEndian(std::uint32_t number) {
    std::string out;
    for (int shift = 24; shift >= 0; shift -= 8)
        out += static_cast<char>(number >> shift & 0xFF);
    return out;
}

std::string chunk(const std::string& content) {
    const auto sum =
        crc32(0, reinterpret_cast<const Bytef*>(content.data()), static_cast<uInt>(content.size()));
    return bigEndian(static_cast<std::uint32_t>(content.size() - 4)) + content +
           bigEndian(static_cast<std::uint32_t>(sum));
}

// PNG § 11.2.1: a file of a few bytes can claim any size.
TEST_F(Sources, ThatClaimAHugeSizeAreRefusedWithoutDecoding) {
    const std::string head =
        "IHDR" + bigEndian(60000) + bigEndian(60000) + std::string("\x08\x02\x00\x00\x00", 5);
    writeBytes(folder_.file("huge.png"), "\x89PNG\r\n\x1a\n" + chunk(head) + chunk("IDATx") + chunk("IEND"));
    expectTrouble(folder_.file("huge.png"), "60000 × 60000");
    EXPECT_NE(readInfo(folder_.file("huge.png")).trouble.find("megapixels"), std::string::npos);
}

// The library reads options from brackets in names of files.
TEST_F(Sources, MayHaveAnyName) {
    const std::filesystem::path file = folder_.file("a [page=9], ü 100%.jpg");
    std::filesystem::copy_file(samplePictures / "dunes.jpg", file);
    EXPECT_EQ(source(file).size, (PixelSize{900, 1200}));
}

}  // namespace
}  // namespace tenter::pictures
