// Reading picture files, every one of which may be broken or hostile.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "pictures/image_library.h"
#include "pictures/slots.h"

namespace tenter::pictures {

/// Pictures with more pixels are refused: decoded, one of this size takes 900 MB.
inline constexpr double mostMegapixels = 300;

/// What a file says about itself, without its pixels.
struct SourceInfo {
    PixelSize size;         ///< after its orientation has been applied
    bool hasAlpha = false;  ///< some part is transparent
    bool isVector = false;  ///< SVG: sharp at every size, nothing to cut; other members are not set
    /// Sentences on how an unusual file is handled: animated, CMYK, 16 bits, another colour space.
    std::vector<std::string> notes;
};

/// The decoded picture.
struct Source {
    /// In memory, upright, sRGB with 8 or 16 bits a component (the gamma of sRGB, not linear), three bands,
    /// or four if some part is transparent.
    ImagePtr image;
    PixelSize size;
    bool hasAlpha = false;
    bool isSmaller = false;  ///< decoded at a fraction of the size of the file
};

/// A value, or why there is none: `is truncated or damaged`, without subject and full stop.
template <class Value>
struct Read {
    std::optional<Value> value;
    std::string trouble;  ///< empty: there is a value
    std::string fix;      ///< what to do about it, as a sentence
};

/// Reads what `file` says about itself: JPEG, PNG, WebP, AVIF, GIF, TIFF or SVG.
Read<SourceInfo> readInfo(const std::filesystem::path& file);

/// Width and height of a picture file, image pixels, after its orientation has been applied; empty if it
/// cannot be read or has none (SVG).
std::optional<std::pair<int, int>> sizeOfFile(const std::filesystem::path& file);

/// Decodes `file`: orientation applied, converted to sRGB by its embedded profile. Of an animation the first
/// frame. A truncated file is an error. With `enough`, a JPEG is decoded at a half, a quarter or an eighth of
/// its size if that still has so many pixels on both sides, which takes a fraction of the time and memory.
Read<Source> readSource(const std::filesystem::path& file, const std::optional<PixelSize>& enough = {});

}  // namespace tenter::pictures
