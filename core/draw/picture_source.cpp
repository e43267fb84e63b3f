#include "draw/picture_source.h"

#include <algorithm>
#include <cmath>

#include "pictures/source.h"

namespace tenter::draw {

namespace {

// Pixels of all decoded files that are kept.
constexpr double mostPixelsKept = 64e6;
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

double pixelsOf(VipsImage* image) {
    return static_cast<double>(library().vips_image_get_width(image)) *
           library().vips_image_get_height(image);
}

/// `image` with 8 bits, colours multiplied by opacity: the mean of transparent and opaque pixels is then
/// right.
Image prepared(const pictures::Source& source) {
    VipsImage* next = nullptr;
    Image image =
        owned(library().vips_colourspace(source.image.get(), &next, VIPS_INTERPRETATION_sRGB, nullptr), next);
    if (!image) return nullptr;
    if (source.hasAlpha) {
        next = nullptr;
        image = owned(library().vips_premultiply(image.get(), &next, nullptr), next);
        if (!image) return nullptr;
    }
    next = nullptr;
    const Image bytes = owned(library().vips_cast_uchar(image.get(), &next, nullptr), next);
    return bytes ? Image(library().vips_image_copy_memory(bytes.get())) : nullptr;
}

/// The rows of `image`, which has three bands or four.
std::unique_ptr<CutPicture> cutOf(const Image& image) {
    const bool hasAlpha = library().vips_image_get_bands(image.get()) == 4;
    VipsImage* next = nullptr;
    Image rgba = hasAlpha ? owned(library().vips_unpremultiply(image.get(), &next, nullptr), next)
                          : owned(library().vips_addalpha(image.get(), &next, nullptr), next);
    if (!rgba) return nullptr;
    next = nullptr;
    rgba = owned(library().vips_cast_uchar(rgba.get(), &next, nullptr), next);
    if (!rgba || library().vips_image_get_bands(rgba.get()) != 4) return nullptr;
    std::size_t size = 0;
    void* const memory = library().vips_image_write_to_memory(rgba.get(), &size);
    if (memory == nullptr) {
        library().vips_error_clear();
        return nullptr;
    }
    auto cut = std::make_unique<CutPicture>();
    cut->width = library().vips_image_get_width(rgba.get());
    cut->height = library().vips_image_get_height(rgba.get());
    const auto* const first = static_cast<const std::uint8_t*>(memory);
    cut->pixels.assign(first, first + size);
    library().g_free(memory);
    cut->opaque = true;
    for (std::size_t i = 3; hasAlpha && i < size; i += 4)
        cut->opaque = cut->opaque && cut->pixels[i] == 255;
    return cut;
}

/// Start and length of the whole pixels of a side of `whole` that are nearest to those from `start` on.
std::pair<int, int> wholePixels(double start, double length, int whole) {
    const int first = std::clamp(static_cast<int>(std::lround(start)), 0, whole - 1);
    const int end = std::clamp(static_cast<int>(std::lround(start + length)), first + 1, whole);
    return {first, end - first};
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

/// The file at a size from which a cover of `width` × `height` px can be cut. Null if it cannot be read.
VipsImage* PictureSource::decoded(const std::string& file, int width, int height) {
    const auto [at, isNew] = decoded_.try_emplace(file);
    Decoded& kept = at->second;
    kept.lastUse = ++uses_;
    // Twice the size, so that what the decoder has left out is not missed.
    const pictures::PixelSize enough{2 * width, 2 * height};
    const bool isTooSmall = kept.isSmaller && kept.image &&
                            (library().vips_image_get_width(kept.image.get()) < enough.width ||
                             library().vips_image_get_height(kept.image.get()) < enough.height);
    if (isNew || isTooSmall) {
        kept.image.reset();
        const pictures::Read<pictures::Source> read = pictures::readSource(folder_ / file, enough);
        if (read.value) {
            kept.image = prepared(*read.value);
            kept.isSmaller = read.value->isSmaller;
            makeRoom();
        }
    }
    return kept.image.get();
}

/// Forgets the decoded files that have not been used for longest.
void PictureSource::makeRoom() {
    const auto pixels = [this] {
        double sum = 0;
        for (const auto& [file, kept] : decoded_)
            if (kept.image) sum += pixelsOf(kept.image.get());
        return sum;
    };
    while (pixels() > mostPixelsKept) {
        auto oldest = decoded_.end();
        for (auto at = decoded_.begin(); at != decoded_.end(); ++at)
            if (at->second.image && at->second.lastUse != uses_ &&
                (oldest == decoded_.end() || at->second.lastUse < oldest->second.lastUse))
                oldest = at;
        if (oldest == decoded_.end()) return;
        decoded_.erase(oldest);
    }
}

std::unique_ptr<CutPicture> PictureSource::readCut(const std::string& file, int width, int height,
                                                   double focusX, double focusY) {
    if (!library().trouble.empty()) return nullptr;
    VipsImage* const image = decoded(file, width, height);
    if (image == nullptr) return nullptr;
    const int wholeWidth = library().vips_image_get_width(image);
    const int wholeHeight = library().vips_image_get_height(image);
    const Crop crop = coverCrop(wholeWidth, wholeHeight, width, height, focusX, focusY);
    const auto [left, across] = wholePixels(crop.x, crop.width, wholeWidth);
    const auto [top, down] = wholePixels(crop.y, crop.height, wholeHeight);
    VipsImage* next = nullptr;
    const Image area =
        owned(library().vips_extract_area(image, &next, left, top, across, down, nullptr), next);
    if (!area) return nullptr;
    next = nullptr;
    const Image cut = owned(library().vips_resize(area.get(), &next, static_cast<double>(width) / across,
                                                  "vscale", static_cast<double>(height) / down, nullptr),
                            next);
    return cut ? cutOf(cut) : nullptr;
}

const CutPicture* PictureSource::cut(const std::string& file, int width, int height, double focusX,
                                     double focusY) {
    if (file.empty() || width <= 0 || height <= 0) return nullptr;
    const auto [kept, isNew] = kept_.try_emplace({file, width, height, focusX, focusY});
    if (isNew) kept->second.cut = readCut(file, width, height, focusX, focusY);
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
