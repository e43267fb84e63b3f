// Writes pictures in their file formats.
#pragma once

#include <optional>
#include <string>

#include "pictures/file_format.h"
#include "pictures/image_library.h"

namespace tenter::pictures {

/// A file of `image` (8 bits a component, sRGB) without metadata and without a profile: browsers read such
/// files as sRGB (CSS Color 4 § 4.2). Empty, with `trouble` set, on failure.
std::optional<std::string> encoded(const ImagePtr& image, Format format, int quality, std::string& trouble);

}  // namespace tenter::pictures
