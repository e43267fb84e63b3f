// libvips, loaded when the first picture is read: a program that reads none starts 20 ms earlier.
#pragma once

#include <vips/vips.h>

#include <memory>
#include <string>

namespace tenter::pictures {

/// The functions of libvips that are used, with their types.
#define TENTER_VIPS_FUNCTIONS(USE)       \
    USE(vips_init)                       \
    USE(vips_block_untrusted_set)        \
    USE(vips_cache_set_max)              \
    USE(vips_concurrency_set)            \
    USE(vips_error_buffer)               \
    USE(vips_error_clear)                \
    USE(vips_type_find)                  \
    USE(vips_foreign_find_load_buffer)   \
    USE(vips_image_new_from_file)        \
    USE(vips_image_new_from_buffer)      \
    USE(vips_image_new_from_memory_copy) \
    USE(vips_image_new_from_memory)      \
    USE(vips_image_write_to_memory)      \
    USE(vips_image_copy_memory)          \
    USE(vips_image_get_width)            \
    USE(vips_image_get_height)           \
    USE(vips_image_get_bands)            \
    USE(vips_image_get_format)           \
    USE(vips_image_get_interpretation)   \
    USE(vips_image_get_n_pages)          \
    USE(vips_image_get_page_height)      \
    USE(vips_image_get_orientation)      \
    USE(vips_image_get_orientation_swap) \
    USE(vips_image_get_typeof)           \
    USE(vips_image_get_blob)             \
    USE(vips_image_get_fields)           \
    USE(vips_image_hasalpha)             \
    USE(vips_image_remove)               \
    USE(vips_addalpha)                   \
    USE(vips_autorot)                    \
    USE(vips_bandjoin2)                  \
    USE(vips_cast)                       \
    USE(vips_cast_uchar)                 \
    USE(vips_colourspace)                \
    USE(vips_copy)                       \
    USE(vips_extract_area)               \
    USE(vips_extract_band)               \
    USE(vips_icc_transform)              \
    USE(vips_linear1)                    \
    USE(vips_maplut)                     \
    USE(vips_min)                        \
    USE(vips_premultiply)                \
    USE(vips_resize)                     \
    USE(vips_shrink)                     \
    USE(vips_unpremultiply)              \
    USE(vips_jpegsave_buffer)            \
    USE(vips_pngsave_buffer)             \
    USE(vips_webpsave_buffer)            \
    USE(vips_heifsave_buffer)            \
    USE(g_object_unref)                  \
    USE(g_strfreev)                      \
    USE(g_free)

struct ImageLibrary {
// NOLINTNEXTLINE(bugprone-macro-parentheses): a declaration cannot have them around its name.
#define TENTER_DECLARE(name) decltype(&::name) name = nullptr;
    TENTER_VIPS_FUNCTIONS(TENTER_DECLARE)
#undef TENTER_DECLARE
    std::string trouble;  ///< why the library cannot be used; empty: it can

    /// The library's message on the last failure in this process, on one line. Empties it.
    [[nodiscard]] std::string takeError() const;
};

/// The library, loaded and initialised. Thread-safe.
const ImageLibrary& imageLibrary();

struct ImageRelease {
    void operator()(VipsImage* image) const { imageLibrary().g_object_unref(image); }
};
/// An image, or an operation that makes one when it is asked for.
using ImagePtr = std::unique_ptr<VipsImage, ImageRelease>;

}  // namespace tenter::pictures
