#include "pictures/image_library.h"

#include <dlfcn.h>
#include <malloc.h>

#include <algorithm>
#include <cstdlib>

namespace tenter::pictures {

namespace {

/// The name under which Debian's package libvips42 installs the library.
constexpr const char* libraryFile = "libvips.so.42";

ImageLibrary load() {
    ImageLibrary library;
    void* handle = dlopen(libraryFile, RTLD_NOW | RTLD_LOCAL);
    if (handle == nullptr) {
        library.trouble = "The library for pictures, libvips, is not installed.";
        return library;
    }
#define TENTER_FIND(name)                                                          \
    library.name = reinterpret_cast<decltype(library.name)>(dlsym(handle, #name)); \
    if (library.name == nullptr) {                                                 \
        library.trouble = "The installed libvips is too old: it lacks " #name "."; \
        return library;                                                            \
    }
    TENTER_VIPS_FUNCTIONS(TENTER_FIND)
#undef TENTER_FIND
    // Its warnings would go to standard error; failures are reported as problems.
    setenv("VIPS_WARNING", "0", 1);  // NOLINT(concurrency-mt-unsafe): before any thread of the library
    if (library.vips_init("tenter") != 0) {
        library.trouble = "The library for pictures, libvips, cannot start: " + library.takeError() + ".";
        return library;
    }
    library.vips_block_untrusted_set(TRUE);
    // Large blocks go back to the system at once. Otherwise the allocator learns to keep them, and twelve
    // pictures of 24 megapixels take 500 MB in place of 330 MB.
    mallopt(M_MMAP_THRESHOLD, 256 * 1024);
    // Every operation is used once; a cache would only hold memory.
    library.vips_cache_set_max(0);
    return library;
}

}  // namespace

std::string ImageLibrary::takeError() const {
    std::string error = vips_error_buffer();
    vips_error_clear();
    while (!error.empty() && (error.back() == '\n' || error.back() == '.'))
        error.pop_back();
    std::ranges::replace(error, '\n', ' ');
    return error;
}

const ImageLibrary& imageLibrary() {
    static const ImageLibrary library = load();
    return library;
}

}  // namespace tenter::pictures
