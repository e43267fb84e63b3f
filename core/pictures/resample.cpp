#include "pictures/resample.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

#include "pictures/colour_profile.h"

namespace tenter::pictures {

namespace {

constexpr double most16 = 65535;

/// A lookup table with one entry for each value of a component.
template <class Entry, class Function>
ImagePtr table(int count, double most, VipsBandFormat format, const Function& function) {
    std::vector<Entry> entries(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        entries[static_cast<std::size_t>(i)] =
            static_cast<Entry>(std::lround(most * function(static_cast<double>(i) / (count - 1))));
    return ImagePtr(imageLibrary().vips_image_new_from_memory_copy(
        entries.data(), entries.size() * sizeof(Entry), count, 1, 1, format));
}

/// Lookup tables between sRGB's components and 16 bits of light. Its darkest step is 20 of 65535.
struct Tables {
    ImagePtr light8 = table<std::uint16_t>(256, most16, VIPS_FORMAT_USHORT, linearOfSrgb);
    ImagePtr light16 = table<std::uint16_t>(65536, most16, VIPS_FORMAT_USHORT, linearOfSrgb);
    ImagePtr srgb = table<std::uint8_t>(65536, 255, VIPS_FORMAT_UCHAR, srgbOfLinear);
};

const Tables& tables() {
    static const Tables made;
    return made;
}

/// Calls operations of the library one after the other; after a failure the rest does nothing.
class Chain {
public:
    explicit Chain(VipsImage* image) {
        if (imageLibrary().vips_copy(image, &image_, nullptr) != 0) image_ = nullptr;
    }
    ~Chain() { release(image_); }
    Chain(const Chain&) = delete;
    Chain& operator=(const Chain&) = delete;

    template <class Operation>
    Chain& then(const Operation& operation) {
        VipsImage* out = nullptr;
        if (image_ != nullptr && operation(image_, &out) != 0) out = nullptr;
        release(image_);
        image_ = out;
        return *this;
    }
    /// The result; null after a failure.
    [[nodiscard]] ImagePtr take() { return ImagePtr(std::exchange(image_, nullptr)); }

private:
    static void release(VipsImage* image) {
        if (image != nullptr) imageLibrary().g_object_unref(image);
    }
    VipsImage* image_ = nullptr;
};

ImagePtr bands(VipsImage* image, int first, int count) {
    return Chain(image)
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_extract_band(in, out, first, "n", count, nullptr);
        })
        .take();
}

ImagePtr joined(const ImagePtr& colour, const ImagePtr& opacity, VipsInterpretation interpretation) {
    if (colour == nullptr || opacity == nullptr) return nullptr;
    return Chain(colour.get())
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_bandjoin2(in, opacity.get(), out, nullptr);
        })
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_copy(in, out, "interpretation", interpretation, nullptr);
        })
        .take();
}

ImagePtr mapped(const ImagePtr& image, const ImagePtr& table) {
    if (image == nullptr) return nullptr;
    return Chain(image.get())
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_maplut(in, out, table.get(), nullptr);
        })
        .take();
}

/// Multiplied by `factor` and rounded to `format`.
ImagePtr scaled(const ImagePtr& image, double factor, VipsBandFormat format) {
    if (image == nullptr) return nullptr;
    return Chain(image.get())
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_linear1(in, out, factor, 0.5, nullptr);
        })
        .then([&](VipsImage* in, VipsImage** out) {
            return imageLibrary().vips_cast(in, out, format, nullptr);
        })
        .take();
}

/// Light of `source`, and its opacity, both with 16 bits; colours are multiplied by opacity.
ImagePtr lightOf(const Source& source) {
    const ImageLibrary& vips = imageLibrary();
    VipsImage* image = source.image.get();
    const bool isDeep = vips.vips_image_get_format(image) == VIPS_FORMAT_USHORT;
    const ImagePtr colour = mapped(bands(image, 0, 3), isDeep ? tables().light16 : tables().light8);
    if (!source.hasAlpha || colour == nullptr) return colour == nullptr ? nullptr : bands(colour.get(), 0, 3);
    const ImagePtr opacity = scaled(bands(image, 3, 1), isDeep ? 1 : most16 / 255, VIPS_FORMAT_USHORT);
    const ImagePtr both = joined(colour, opacity, VIPS_INTERPRETATION_RGB16);
    if (both == nullptr) return nullptr;
    return Chain(both.get())
        .then([&](VipsImage* in, VipsImage** out) {
            return vips.vips_premultiply(in, out, "max_alpha", most16, nullptr);
        })
        .take();
}

/// The inverse: sRGB with 8 bits.
ImagePtr srgbOf(const ImagePtr& light, bool hasAlpha) {
    const ImageLibrary& vips = imageLibrary();
    if (light == nullptr) return nullptr;
    const auto asSrgb = [&](VipsImage* in, VipsImage** out) {
        return vips.vips_copy(in, out, "interpretation", VIPS_INTERPRETATION_sRGB, nullptr);
    };
    if (!hasAlpha) {
        const ImagePtr colour = mapped(light, tables().srgb);
        return colour == nullptr ? nullptr : Chain(colour.get()).then(asSrgb).take();
    }
    const ImagePtr plain = Chain(light.get())
                               .then([&](VipsImage* in, VipsImage** out) {
                                   return vips.vips_unpremultiply(in, out, "max_alpha", most16, nullptr);
                               })
                               .take();
    if (plain == nullptr) return nullptr;
    const ImagePtr colour = mapped(scaled(bands(plain.get(), 0, 3), 1, VIPS_FORMAT_USHORT), tables().srgb);
    const ImagePtr opacity = scaled(bands(plain.get(), 3, 1), 255 / most16, VIPS_FORMAT_UCHAR);
    return joined(colour, opacity, VIPS_INTERPRETATION_sRGB);
}

/// Computed, in memory.
ImagePtr rendered(const ImagePtr& image) {
    return image == nullptr ? nullptr : ImagePtr(imageLibrary().vips_image_copy_memory(image.get()));
}

}  // namespace

Resampler::Resampler(const Source& source, const Crop& crop) : hasAlpha_(source.hasAlpha), crop_(crop) {
    const ImagePtr whole = lightOf(source);
    if (whole == nullptr) return;
    light_ = Chain(whole.get())
                 .then([&](VipsImage* in, VipsImage** out) {
                     return imageLibrary().vips_extract_area(in, out, crop.left, crop.top, crop.width,
                                                             crop.height, nullptr);
                 })
                 .take();
}

/// The mean of four pixels is a good start for a picture of at most a quarter of the size: the library itself
/// begins with such means. The full size is computed from the source each time, because 16 bits of it would
/// take twice the memory.
const ImagePtr& Resampler::lightFor(double scale) {
    if (scale > 0.25 || light_ == nullptr || crop_.width % 2 != 0 || crop_.height % 2 != 0) return light_;
    if (half_ == nullptr)
        half_ = rendered(Chain(light_.get())
                             .then([](VipsImage* in, VipsImage** out) {
                                 return imageLibrary().vips_shrink(in, out, 2, 2, nullptr);
                             })
                             .take());
    return half_ == nullptr ? light_ : half_;
}

ImagePtr Resampler::resized(const PixelSize& size) {
    const double across = static_cast<double>(size.width) / crop_.width;
    const double down = static_cast<double>(size.height) / crop_.height;
    const ImagePtr& from = lightFor(std::max(across, down));
    if (from == nullptr) return nullptr;
    const double factor = from == light_ ? 1 : 2;
    const ImagePtr light =
        Chain(from.get())
            .then([&](VipsImage* in, VipsImage** out) {
                return imageLibrary().vips_resize(in, out, across * factor, "vscale", down * factor, "kernel",
                                                  VIPS_KERNEL_LANCZOS3, nullptr);
            })
            .take();
    return rendered(srgbOf(light, hasAlpha_));
}

}  // namespace tenter::pictures
