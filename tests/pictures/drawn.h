// Pictures made for tests.
#pragma once

#include <gtest/gtest.h>
#include <vips/vips.h>

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

#include "pictures/resample.h"

namespace tenter::test {

/// The pictures of the sample projects.
inline const std::filesystem::path samplePictures = TENTER_SOURCE_DIR "/sample-projects/pictures";

/// A folder that is removed with its content.
class TestFolder {
public:
    TestFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "tenter-pictures-XXXXXX").string();
        path_ = mkdtemp(name.data());
    }
    ~TestFolder() { std::filesystem::remove_all(path_); }
    TestFolder(const TestFolder&) = delete;
    TestFolder& operator=(const TestFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path file(const std::string& name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

inline std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void writeBytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream(file, std::ios::binary) << bytes;
}

/// A pixel: components from 0 to 255.
using Pixel = std::vector<int>;

/// An image of `width` × `height` pixels; `at(x, y)` gives as many components for each.
inline pictures::ImagePtr drawn(int width, int height, const std::function<Pixel(int, int)>& at) {
    std::vector<std::uint8_t> bytes;
    const auto bands = static_cast<int>(at(0, 0).size());
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            for (const int component : at(x, y))
                bytes.push_back(static_cast<std::uint8_t>(component));
    EXPECT_EQ(pictures::imageLibrary().trouble, "");
    VipsImage* image =
        vips_image_new_from_memory_copy(bytes.data(), bytes.size(), width, height, bands, VIPS_FORMAT_UCHAR);
    const pictures::ImagePtr plain(image);
    VipsImage* out = nullptr;
    EXPECT_EQ(vips_copy(image, &out, "interpretation",
                        bands < 3 ? VIPS_INTERPRETATION_B_W : VIPS_INTERPRETATION_sRGB, nullptr),
              0);
    return pictures::ImagePtr(out);
}

inline Pixel pixelAt(const pictures::ImagePtr& image, int x, int y) {
    double* values = nullptr;
    int count = 0;
    EXPECT_EQ(vips_getpoint(image.get(), &values, &count, x, y, nullptr), 0);
    Pixel pixel;
    for (int i = 0; i < count; ++i)
        pixel.push_back(static_cast<int>(values[i] + 0.5));
    g_free(values);
    return pixel;
}

inline void expectNear(const Pixel& is, const Pixel& wanted, int within) {
    ASSERT_EQ(is.size(), wanted.size());
    for (std::size_t i = 0; i < is.size(); ++i)
        EXPECT_NEAR(is[i], wanted[i], within) << "component " << i;
}

/// Writes an image as PNG.
inline void writePng(const pictures::ImagePtr& image, const std::filesystem::path& file) {
    ASSERT_EQ(vips_pngsave(image.get(), file.c_str(), nullptr), 0) << vips_error_buffer();
}

/// A picture of one source, without cropping.
inline pictures::Crop whole(const pictures::Source& source) {
    return {0, 0, source.size.width, source.size.height};
}

}  // namespace tenter::test
