#include "draw/picture_source.h"

#include <algorithm>
#include <cmath>

#include "pictures/image_library.h"

namespace tenter::draw {

namespace {

// A file may claim any size. A picture of more px than this is not read.
constexpr double mostPixels = 4e8;
constexpr int jpegQuality = 88;

using Image = pictures::ImagePtr;

const pictures::ImageLibrary& library() {
    return pictures::imageLibrary();
}

/// What a function of libvips has made: it writes `image` while the first argument is computed.
Image owned(int failed, VipsImage*& image) {
    if (failed == 0) return Image(image);
    library().vips_error_clear();
    return nullptr;
}

std::unique_ptr<CutPicture> pixelsOf(VipsImage* image) {
    VipsImage* next = nullptr;
    const bool hasAlpha = library().vips_image_hasalpha(image) != 0;
    Image rgb = owned(library().vips_colourspace(image, &next, VIPS_INTERPRETATION_sRGB, nullptr), next);
    if (!rgb) return nullptr;
    if (!hasAlpha) {
        next = nullptr;
        rgb = owned(library().vips_addalpha(rgb.get(), &next, nullptr), next);
        if (!rgb) return nullptr;
    }
    next = nullptr;
    const Image bytes = owned(library().vips_cast_uchar(rgb.get(), &next, nullptr), next);
    if (!bytes || library().vips_image_get_bands(bytes.get()) != 4) return nullptr;
    std::size_t size = 0;
    void* const memory = library().vips_image_write_to_memory(bytes.get(), &size);
    if (memory == nullptr) {
        library().vips_error_clear();
        return nullptr;
    }
    auto cut = std::make_unique<CutPicture>();
    cut->width = library().vips_image_get_width(bytes.get());
    cut->height = library().vips_image_get_height(bytes.get());
    const auto* const first = static_cast<const std::uint8_t*>(memory);
    cut->pixels.assign(first, first + size);
    library().g_free(memory);
    cut->opaque = true;
    for (std::size_t i = 3; hasAlpha && i < size; i += 4)
        cut->opaque = cut->opaque && cut->pixels[i] == 255;
    return cut;
}

std::unique_ptr<CutPicture> readCut(const std::filesystem::path& file, int width, int height, double focusX,
                                    double focusY) {
    if (!library().trouble.empty()) return nullptr;
    const Image head(library().vips_image_new_from_file(file.c_str(), nullptr));
    if (!head) {
        library().vips_error_clear();
        return nullptr;
    }
    double fileWidth = library().vips_image_get_width(head.get());
    double fileHeight = library().vips_image_get_page_height(head.get());
    if (library().vips_image_get_orientation_swap(head.get()) != 0) std::swap(fileWidth, fileHeight);
    if (fileWidth * fileHeight > mostPixels) return nullptr;
    const Crop crop = coverCrop(fileWidth, fileHeight, width, height, focusX, focusY);
    const double factor = width / crop.width;
    const auto scaled = [factor](double length) {
        return std::max(1, static_cast<int>(std::lround(length * factor)));
    };
    const int wholeWidth = std::max(width, scaled(fileWidth));
    const int wholeHeight = std::max(height, scaled(fileHeight));
    VipsImage* next = nullptr;
    const Image whole =
        owned(library().vips_thumbnail(file.c_str(), &next, wholeWidth, "height", wholeHeight, "size",
                                       VIPS_SIZE_FORCE, "export_profile", "srgb", nullptr),
              next);
    if (!whole) return nullptr;
    const auto place = [factor](double at, int room) {
        return std::clamp(static_cast<int>(std::lround(at * factor)), 0, std::max(0, room));
    };
    next = nullptr;
    const Image cut = owned(
        library().vips_extract_area(
            whole.get(), &next, place(crop.x, library().vips_image_get_width(whole.get()) - width),
            place(crop.y, library().vips_image_get_height(whole.get()) - height), width, height, nullptr),
        next);
    return cut ? pixelsOf(cut.get()) : nullptr;
}

std::unique_ptr<EncodedPicture> encode(const CutPicture& cut) {
    const Image image(library().vips_image_new_from_memory(cut.pixels.data(), cut.pixels.size(), cut.width,
                                                           cut.height, 4, VIPS_FORMAT_UCHAR));
    if (!image) return nullptr;
    image->Type = VIPS_INTERPRETATION_sRGB;
    void* bytes = nullptr;
    std::size_t size = 0;
    int failed = 0;
    auto made = std::make_unique<EncodedPicture>();
    if (cut.opaque) {
        VipsImage* next = nullptr;
        const Image rgb = owned(library().vips_extract_band(image.get(), &next, 0, "n", 3, nullptr), next);
        if (!rgb) return nullptr;
        made->type = "image/jpeg";
        failed = library().vips_jpegsave_buffer(rgb.get(), &bytes, &size, "Q", jpegQuality, "strip", TRUE,
                                                "optimize_coding", TRUE, nullptr);
    } else {
        made->type = "image/png";
        failed = library().vips_pngsave_buffer(image.get(), &bytes, &size, "strip", TRUE, nullptr);
    }
    if (failed != 0) {
        library().vips_error_clear();
        return nullptr;
    }
    made->bytes.assign(static_cast<const char*>(bytes), size);
    library().g_free(bytes);
    return made;
}

}  // namespace

Crop coverCrop(double width, double height, double slotWidth, double slotHeight, double focusX,
               double focusY) {
    if (!(width > 0) || !(height > 0) || !(slotWidth > 0) || !(slotHeight > 0)) return {0, 0, width, height};
    const double factor = std::max(slotWidth / width, slotHeight / height);
    const double shownWidth = slotWidth / factor;
    const double shownHeight = slotHeight / factor;
    return {(width - shownWidth) * focusX, (height - shownHeight) * focusY, shownWidth, shownHeight};
}

const CutPicture* PictureSource::cut(const std::string& file, int width, int height, double focusX,
                                     double focusY) {
    if (file.empty() || width <= 0 || height <= 0) return nullptr;
    const auto [kept, isNew] = kept_.try_emplace({file, width, height, focusX, focusY});
    if (isNew) kept->second.cut = readCut(folder_ / file, width, height, focusX, focusY);
    return kept->second.cut.get();
}

const EncodedPicture* PictureSource::encoded(const std::string& file, int width, int height, double focusX,
                                             double focusY) {
    const CutPicture* const picture = cut(file, width, height, focusX, focusY);
    if (picture == nullptr) return nullptr;
    Kept& kept = kept_.at({file, width, height, focusX, focusY});
    if (!kept.encoded) kept.encoded = encode(*picture);
    return kept.encoded.get();
}

std::vector<std::string> PictureSource::missing() const {
    std::vector<std::string> files;
    for (const auto& [key, kept] : kept_)
        if (!kept.cut && (files.empty() || files.back() != std::get<0>(key)))
            files.push_back(std::get<0>(key));
    return files;
}

}  // namespace tenter::draw
