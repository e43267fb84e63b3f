#include "pictures/source.h"

#include <array>
#include <fstream>
#include <iterator>
#include <string_view>
#include <system_error>
#include <utility>

#include "pictures/colour_profile.h"

namespace tenter::pictures {

namespace {

constexpr std::uintmax_t mostBytes = std::uintmax_t{400} * 1000 * 1000;

constexpr const char* formatsFix = "Use a JPEG, PNG, WebP, AVIF, GIF or TIFF file.";
constexpr const char* againFix = "Export or copy the picture again.";

/// Where and why reading stopped. Thrown only within this file.
struct Trouble {
    std::string what;
    std::string fix;
};

std::string contentOf(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error))
        throw Trouble{"does not exist", "Put the file there, or choose another."};
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error || size > mostBytes) throw Trouble{"is larger than 400 MB", "Use a smaller file."};
    std::ifstream in(file, std::ios::binary);
    std::string bytes(size, '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(size));
    if (!in.is_open() || in.bad() || static_cast<std::uintmax_t>(in.gcount()) != size)
        throw Trouble{"cannot be read", "Check its permissions."};
    if (bytes.empty()) throw Trouble{"is empty", againFix};
    return bytes;
}

bool isVector(std::string_view bytes) {
    const std::string_view start = bytes.substr(0, 4096);
    return start.find('\0') == std::string_view::npos && start.find("<svg") != std::string_view::npos;
}

/// Only these loaders of the library are used: formats that browsers know, and TIFF.
bool isAllowed(const char* loader) {
    if (loader == nullptr) return false;
    constexpr std::array<std::string_view, 6> allowed{"VipsForeignLoadJpeg",  "VipsForeignLoadPng",
                                                      "VipsForeignLoadWebp",  "VipsForeignLoadHeif",
                                                      "VipsForeignLoadNsgif", "VipsForeignLoadTiff"};
    const std::string_view name(loader);
    for (const std::string_view one : allowed)
        if (name.starts_with(one)) return true;
    return false;
}

/// A file whose header has been read. The bytes must live as long as the image.
struct Opened {
    std::string bytes;
    ImagePtr image;
    bool isJpeg = false;
};

void checkSize(VipsImage* image) {
    const ImageLibrary& vips = imageLibrary();
    const double megapixels = 1e-6 * vips.vips_image_get_width(image) * vips.vips_image_get_height(image);
    if (megapixels > mostMegapixels)
        throw Trouble{"claims " + std::to_string(vips.vips_image_get_width(image)) + " × " +
                          std::to_string(vips.vips_image_get_height(image)) + " pixels, more than " +
                          std::to_string(static_cast<int>(mostMegapixels)) + " megapixels",
                      "Make it smaller first."};
}

Opened open(std::string bytes) {
    const ImageLibrary& vips = imageLibrary();
    if (!vips.trouble.empty())
        throw Trouble{"cannot be read. " + vips.trouble, "Install the package libvips42."};
    Opened opened{std::move(bytes), nullptr, false};
    const char* const loader = vips.vips_foreign_find_load_buffer(opened.bytes.data(), opened.bytes.size());
    if (!isAllowed(loader)) {
        vips.vips_error_clear();
        throw Trouble{"is not a picture of a known format", formatsFix};
    }
    opened.isJpeg = std::string_view(loader).starts_with("VipsForeignLoadJpeg");
    opened.image.reset(vips.vips_image_new_from_buffer(opened.bytes.data(), opened.bytes.size(), "", "access",
                                                       VIPS_ACCESS_SEQUENTIAL, "fail_on", VIPS_FAIL_ON_ERROR,
                                                       nullptr));
    if (opened.image == nullptr)
        throw Trouble{"is truncated or damaged (" + vips.takeError() + ")", againFix};
    checkSize(opened.image.get());
    return opened;
}

bool has(VipsImage* image, const char* name) {
    return imageLibrary().vips_image_get_typeof(image, name) != 0;
}

bool isCmyk(VipsImage* image) {
    return imageLibrary().vips_image_get_interpretation(image) == VIPS_INTERPRETATION_CMYK;
}

bool hasSixteenBits(VipsImage* image) {
    return imageLibrary().vips_image_get_format(image) == VIPS_FORMAT_USHORT;
}

/// The embedded profile; empty if there is none.
std::string_view profileOf(VipsImage* image) {
    const void* data = nullptr;
    std::size_t size = 0;
    if (!has(image, VIPS_META_ICC_NAME) ||
        imageLibrary().vips_image_get_blob(image, VIPS_META_ICC_NAME, &data, &size) != 0)
        return {};
    return {static_cast<const char*>(data), size};
}

bool needsConversion(VipsImage* image) {
    const std::string_view profile = profileOf(image);
    return isCmyk(image) || (!profile.empty() && !isSrgbProfile(profile));
}

/// Calls an operation of the library and returns its result.
template <class Operation>
ImagePtr made(const Operation& operation) {
    VipsImage* out = nullptr;
    if (operation(&out) != 0)
        throw Trouble{"is truncated or damaged (" + imageLibrary().takeError() + ")", againFix};
    return ImagePtr(out);
}

ImagePtr inMemory(const ImagePtr& image) {
    VipsImage* out = imageLibrary().vips_image_copy_memory(image.get());
    if (out == nullptr)
        throw Trouble{"is truncated or damaged (" + imageLibrary().takeError() + ")", againFix};
    return ImagePtr(out);
}

/// In sRGB by the embedded profile; a profile that cannot be used counts as sRGB, or as a common one for
/// print. Relative colorimetric: what sRGB has keeps its colour, the rest is moved to its edge.
ImagePtr inSrgb(ImagePtr image) {
    const ImageLibrary& vips = imageLibrary();
    const bool isDeep = hasSixteenBits(image.get());
    if (needsConversion(image.get())) {
        const char* fallback = isCmyk(image.get()) ? "cmyk" : "srgb";
        image = made([&](VipsImage** out) {
            return vips.vips_icc_transform(
                image.get(), out, "srgb", "embedded", TRUE, "input_profile", fallback, "intent",
                VIPS_INTENT_RELATIVE, "black_point_compensation", TRUE, "depth", isDeep ? 16 : 8, nullptr);
        });
    }
    const VipsInterpretation wanted = isDeep ? VIPS_INTERPRETATION_RGB16 : VIPS_INTERPRETATION_sRGB;
    return made([&](VipsImage** out) { return vips.vips_colourspace(image.get(), out, wanted, nullptr); });
}

ImagePtr upright(ImagePtr image) {
    const ImageLibrary& vips = imageLibrary();
    if (vips.vips_image_get_orientation(image.get()) <= 1) return image;
    image = made([&](VipsImage** out) { return vips.vips_autorot(image.get(), out, nullptr); });
    return inMemory(image);
}

/// True if some pixel of the last band is not opaque.
bool isTransparent(const ImagePtr& image) {
    const ImageLibrary& vips = imageLibrary();
    if (vips.vips_image_hasalpha(image.get()) == FALSE) return false;
    const ImagePtr alpha = made([&](VipsImage** out) {
        return vips.vips_extract_band(image.get(), out, vips.vips_image_get_bands(image.get()) - 1, nullptr);
    });
    double least = 0;
    if (vips.vips_min(alpha.get(), &least, nullptr) != 0) return true;
    return least < (hasSixteenBits(image.get()) ? 65535 : 255);
}

ImagePtr withBands(const ImagePtr& image, int count) {
    return made([&](VipsImage** out) {
        return imageLibrary().vips_extract_band(image.get(), out, 0, "n", count, nullptr);
    });
}

SourceInfo infoOf(const std::filesystem::path& file) {
    const ImageLibrary& vips = imageLibrary();
    std::string bytes = contentOf(file);
    SourceInfo info;
    if (isVector(bytes)) {
        info.isVector = true;
        return info;
    }
    const Opened opened = open(std::move(bytes));
    VipsImage* image = opened.image.get();
    info.size = {vips.vips_image_get_width(image), vips.vips_image_get_height(image)};
    // Orientations 5 to 8 exchange the sides. Exif 2.32 § 4.6.4.
    if (vips.vips_image_get_orientation(image) >= 5) std::swap(info.size.width, info.size.height);
    info.hasAlpha = isTransparent(opened.image);
    if (vips.vips_image_get_n_pages(image) > 1)
        info.notes.emplace_back("It is animated; only its first frame is used.");
    if (isCmyk(image))
        info.notes.emplace_back("Its colours are CMYK; they are converted to sRGB.");
    else if (needsConversion(image))
        info.notes.emplace_back(
            "It has another colour space than sRGB; colours that sRGB lacks become the nearest ones.");
    if (hasSixteenBits(image)) info.notes.emplace_back("It has 16 bits for each component; 8 are written.");
    return info;
}

/// The largest of 8, 4, 2 and 1 by which the decoder can divide the sides of `image` and keep `enough`.
int divisorFor(VipsImage* image, PixelSize enough) {
    const ImageLibrary& vips = imageLibrary();
    if (vips.vips_image_get_orientation(image) >= 5) std::swap(enough.width, enough.height);
    for (const int divisor : {8, 4, 2})
        if (vips.vips_image_get_width(image) / divisor >= enough.width &&
            vips.vips_image_get_height(image) / divisor >= enough.height)
            return divisor;
    return 1;
}

Source decode(const std::filesystem::path& file, const std::optional<PixelSize>& enough) {
    const ImageLibrary& vips = imageLibrary();
    std::string bytes = contentOf(file);
    if (isVector(bytes)) throw Trouble{"is a vector drawing, which needs no cutting", "Use it as it is."};
    Opened opened = open(std::move(bytes));
    Source source;
    const int divisor = enough && opened.isJpeg ? divisorFor(opened.image.get(), *enough) : 1;
    if (divisor > 1) {
        opened.image.reset(vips.vips_image_new_from_buffer(opened.bytes.data(), opened.bytes.size(), "",
                                                           "access", VIPS_ACCESS_SEQUENTIAL, "fail_on",
                                                           VIPS_FAIL_ON_ERROR, "shrink", divisor, nullptr));
        if (opened.image == nullptr)
            throw Trouble{"is truncated or damaged (" + vips.takeError() + ")", againFix};
        source.isSmaller = true;
    }
    source.image = upright(inMemory(inSrgb(std::move(opened.image))));
    source.size = {vips.vips_image_get_width(source.image.get()),
                   vips.vips_image_get_height(source.image.get())};
    source.hasAlpha = isTransparent(source.image);
    const int bands = source.hasAlpha ? 4 : 3;
    if (vips.vips_image_get_bands(source.image.get()) > bands) source.image = withBands(source.image, bands);
    return source;
}

template <class Value, class Reader>
Read<Value> guarded(const Reader& reader) {
    Read<Value> read;
    try {
        read.value = reader();
    } catch (const Trouble& trouble) {
        read.trouble = trouble.what;
        read.fix = trouble.fix;
    } catch (const std::bad_alloc&) {
        read.trouble = "does not fit into memory";
        read.fix = "Make it smaller first.";
    }
    return read;
}

}  // namespace

Read<SourceInfo> readInfo(const std::filesystem::path& file) {
    return guarded<SourceInfo>([&] { return infoOf(file); });
}

std::optional<std::pair<int, int>> sizeOfFile(const std::filesystem::path& file) {
    const Read<SourceInfo> info = readInfo(file);
    if (!info.value || info.value->isVector) return std::nullopt;
    return std::pair(info.value->size.width, info.value->size.height);
}

Read<Source> readSource(const std::filesystem::path& file, const std::optional<PixelSize>& enough) {
    return guarded<Source>([&] { return decode(file, enough); });
}

}  // namespace tenter::pictures
