// Resampling in linear light, and what is written. tests/engines compares with another implementation.
#include "pictures/resample.h"

#include <cmath>

#include "drawn.h"
#include "pictures/colour_profile.h"
#include "pictures/encode.h"
#include "pictures/webp_chunks.h"

namespace tenter::pictures {
namespace {

using test::drawn;
using test::expectNear;
using test::Pixel;
using test::pixelAt;

Source sourceOf(ImagePtr image, bool hasAlpha = false) {
    Source source;
    source.size = {vips_image_get_width(image.get()), vips_image_get_height(image.get())};
    source.image = std::move(image);
    source.hasAlpha = hasAlpha;
    return source;
}

ImagePtr resized(const Source& source, const PixelSize& size) {
    ImagePtr image = Resampler(source, test::whole(source)).resized(size);
    EXPECT_NE(image, nullptr) << vips_error_buffer();
    EXPECT_EQ(vips_image_get_width(image.get()), size.width);
    EXPECT_EQ(vips_image_get_height(image.get()), size.height);
    return image;
}

// Half of the light of white is sRGB 188, not 128. IEC 61966-2-1.
TEST(Resampling, KeepsTheBrightnessOfFinePatterns) {
    const Source pattern = sourceOf(drawn(128, 128, [](int x, int y) {
        return (x + y) % 2 == 0 ? Pixel{255, 255, 255} : Pixel{0, 0, 0};
    }));
    const int half = static_cast<int>(std::lround(255 * srgbOfLinear(0.5)));
    EXPECT_EQ(half, 188);
    for (const int size : {64, 50, 30, 16})
        expectNear(pixelAt(resized(pattern, {size, size}), size / 2, size / 2), {half, half, half}, 1);
}

TEST(Resampling, KeepsEveryPlainColour) {
    for (int grey = 0; grey < 256; ++grey) {
        const Source plain = sourceOf(drawn(24, 24, [&](int, int) {
            return Pixel{grey, 255 - grey, grey / 2};
        }));
        const ImagePtr small = resized(plain, {7, 9});
        ASSERT_EQ(pixelAt(small, 3, 4), (Pixel{grey, 255 - grey, grey / 2}));
        ASSERT_EQ(pixelAt(resized(plain, {5, 5}), 0, 0), (Pixel{grey, 255 - grey, grey / 2}));
    }
}

TEST(Resampling, AtTheSameSizeChangesNothing) {
    const Source noise = sourceOf(drawn(40, 30, [](int x, int y) {
        return Pixel{x * 6 % 256, y * 8 % 256, (x * y) % 256};
    }));
    const ImagePtr same = resized(noise, {40, 30});
    for (int y = 0; y < 30; ++y)
        for (int x = 0; x < 40; ++x)
            ASSERT_EQ(pixelAt(same, x, y), pixelAt(noise.image, x, y));
}

// What is cut off does not shine in.
TEST(Resampling, StaysWithinThePart) {
    const Source source = sourceOf(drawn(60, 20, [](int x, int) {
        return x < 30 ? Pixel{10, 20, 200} : Pixel{250, 20, 10};
    }));
    const ImagePtr part = Resampler(source, {30, 0, 30, 20}).resized({9, 6});
    for (int x = 0; x < 9; ++x)
        expectNear(pixelAt(part, x, 3), {250, 20, 10}, 1);
}

// Colours are weighted by opacity: what is transparent gives its colour to nothing.
TEST(Resampling, DoesNotMixColoursOfTransparentParts) {
    const Source source = sourceOf(drawn(64, 64,
                                         [](int x, int) {
                                             return x < 32 ? Pixel{0, 255, 0, 255} : Pixel{255, 0, 0, 0};
                                         }),
                                   true);
    const ImagePtr small = resized(source, {9, 9});
    expectNear(pixelAt(small, 1, 4), {0, 255, 0, 255}, 1);
    const Pixel edge = pixelAt(small, 4, 4);
    EXPECT_GT(edge[3], 60);
    EXPECT_LT(edge[3], 200);
    EXPECT_LE(edge[0], 4) << "red of the transparent half";
    EXPECT_EQ(pixelAt(small, 8, 4)[3], 0);
}

// A ramp of light stays a ramp: the filter weighs both sides alike and sums to one.
TEST(Resampling, PutsPixelsWhereTheyBelong) {
    const Source ramp = sourceOf(drawn(256, 16, [](int x, int) {
        const int value = static_cast<int>(std::lround(255 * srgbOfLinear((x + 0.5) / 256)));
        return Pixel{value, value, value};
    }));
    const ImagePtr small = resized(ramp, {32, 4});
    for (int x = 3; x < 29; ++x) {
        const int wanted = static_cast<int>(std::lround(255 * srgbOfLinear((x + 0.5) / 32)));
        expectNear(pixelAt(small, x, 2), {wanted, wanted, wanted}, 1);
    }
}

struct Kind {
    Format format;
    int within;
};

TEST(Encoding, WritesEachFormatWithoutMetadata) {
    const ImagePtr image = drawn(64, 48, [](int x, int y) { return Pixel{2 * x + 40, 3 * y + 30, 120}; });
    vips_image_set_string(image.get(), "exif-ifd0-Artist", "Nobody");
    vips_image_set_int(image.get(), "orientation", 3);
    for (const Kind& kind :
         {Kind{Format::Jpeg, 8}, {Format::Png, 0}, {Format::WebP, 10}, {Format::Avif, 10}}) {
        std::string trouble;
        const auto bytes = encoded(image, kind.format, 90, trouble);
        ASSERT_TRUE(bytes.has_value()) << trouble;
        VipsImage* read = vips_image_new_from_buffer(bytes->data(), bytes->size(), "", nullptr);
        ASSERT_NE(read, nullptr) << vips_error_buffer();
        const ImagePtr keeper(read);
        for (const char* field : {"exif-data", "xmp-data", "iptc-data", "icc-profile-data", "orientation"})
            EXPECT_EQ(vips_image_get_typeof(read, field), 0U) << formatName(kind.format) << " has " << field;
        EXPECT_EQ(bytes->find("Nobody"), std::string::npos);
        expectNear(pixelAt(keeper, 30, 20), {100, 90, 120}, kind.within);
    }
}

TEST(Encoding, LeavesBrokenContainersAsTheyAre) {
    using namespace std::string_literals;
    for (const std::string& file : {""s, "RIFF"s, "RIFF\x10\0\0\0WEBPVP8 \xff\xff\xff\x7f"s,
                                    "RIFF\x10\0\0\0WEBPVP8"s, std::string(40, '\xff')})
        EXPECT_EQ(withoutMetadata(file), file);
}

TEST(Encoding, MakesSmallerFilesAtLowerQuality) {
    const ImagePtr image = drawn(200, 200, [](int x, int y) {
        return Pixel{x * 7 % 256, y * 11 % 256, x * y % 256};
    });
    for (const Format format : {Format::Jpeg, Format::WebP, Format::Avif}) {
        std::string trouble;
        EXPECT_LT(encoded(image, format, 30, trouble)->size(), encoded(image, format, 90, trouble)->size());
        EXPECT_LT(estimatedBytes(format, 30, 1e6), estimatedBytes(format, 90, 1e6));
    }
}

TEST(Encoding, KnowsFormatsByName) {
    for (const Format format : {Format::Jpeg, Format::Png, Format::WebP, Format::Avif})
        EXPECT_EQ(formatNamed(formatName(format)), format);
    EXPECT_FALSE(formatNamed("tiff").has_value());
    EXPECT_FALSE(formatNamed("").has_value());
}

}  // namespace
}  // namespace tenter::pictures
