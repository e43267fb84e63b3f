#include "pictures/encode.h"

#include <array>
#include <cmath>

#include "pictures/webp_chunks.h"

namespace tenter::pictures {

namespace {

struct FormatFacts {
    Format format;
    std::string_view name, title, ending, type;
    int quality;
    /// Bytes a pixel of a photograph at that quality, measured on drawn pictures with grain.
    double bytesPerPixel;
};

constexpr std::array<FormatFacts, 4> facts{{{Format::Jpeg, "jpeg", "JPEG", ".jpg", "image/jpeg", 80, 0.16},
                                            {Format::Png, "png", "PNG", ".png", "image/png", 100, 1.4},
                                            {Format::WebP, "webp", "WebP", ".webp", "image/webp", 78, 0.11},
                                            {Format::Avif, "avif", "AVIF", ".avif", "image/avif", 58, 0.08}}};

const FormatFacts& factsOf(Format format) {
    return facts[static_cast<std::size_t>(format)];
}

int save(VipsImage* image, Format format, int quality, void** bytes, std::size_t* size) {
    const ImageLibrary& vips = imageLibrary();
    switch (format) {
        case Format::Jpeg:
            return vips.vips_jpegsave_buffer(image, bytes, size, "Q", quality, "optimize_coding", TRUE,
                                             "strip", TRUE, nullptr);
        case Format::Png:
            return vips.vips_pngsave_buffer(image, bytes, size, "compression", 7, "strip", TRUE, nullptr);
        case Format::WebP:
            return vips.vips_webpsave_buffer(image, bytes, size, "Q", quality, "strip", TRUE, nullptr);
        case Format::Avif:
            return vips.vips_heifsave_buffer(image, bytes, size, "Q", quality, "compression",
                                             VIPS_FOREIGN_HEIF_COMPRESSION_AV1, "strip", TRUE, nullptr);
    }
    return -1;
}

/// The image without any metadata: not every writer of the library leaves all of it out.
ImagePtr bare(const ImagePtr& image) {
    const ImageLibrary& vips = imageLibrary();
    VipsImage* copy = nullptr;
    if (vips.vips_copy(image.get(), &copy, nullptr) != 0) return nullptr;
    gchar** fields = vips.vips_image_get_fields(copy);
    for (gchar** field = fields; field != nullptr && *field != nullptr; ++field)
        vips.vips_image_remove(copy, *field);
    vips.g_strfreev(fields);
    return ImagePtr(copy);
}

}  // namespace

std::string_view formatName(Format format) {
    return factsOf(format).name;
}
std::string_view formatTitle(Format format) {
    return factsOf(format).title;
}
std::string_view fileEnding(Format format) {
    return factsOf(format).ending;
}
std::string_view mediaType(Format format) {
    return factsOf(format).type;
}
int usualQuality(Format format) {
    return factsOf(format).quality;
}

std::optional<Format> formatNamed(std::string_view name) {
    for (const FormatFacts& one : facts)
        if (one.name == name || (one.format == Format::Jpeg && name == "jpg")) return one.format;
    return std::nullopt;
}

double estimatedBytes(Format format, int quality, double pixels) {
    // The size doubles about every 18 steps of quality.
    const double more = format == Format::Png ? 1 : std::exp2((quality - usualQuality(format)) / 18.0);
    return 400 + pixels * factsOf(format).bytesPerPixel * more;
}

std::optional<std::string> encoded(const ImagePtr& image, Format format, int quality, std::string& trouble) {
    const ImageLibrary& vips = imageLibrary();
    void* bytes = nullptr;
    std::size_t size = 0;
    const ImagePtr plain = bare(image);
    if (plain == nullptr || save(plain.get(), format, quality, &bytes, &size) != 0) {
        trouble = vips.takeError();
        return std::nullopt;
    }
    std::string file(static_cast<const char*>(bytes), size);
    vips.g_free(bytes);
    return format == Format::WebP ? withoutMetadata(file) : file;
}

}  // namespace tenter::pictures
