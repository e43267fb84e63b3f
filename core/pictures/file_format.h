// File formats of cut pictures.
#pragma once

#include <optional>
#include <string_view>

namespace tenter::pictures {

enum class Format { Jpeg, Png, WebP, Avif };

/// `jpeg`, `png`, `webp`, `avif`: as on the command line.
std::string_view formatName(Format format);
/// `JPEG`, `PNG`, `WebP`, `AVIF`: as the window shows it.
std::string_view formatTitle(Format format);
/// The format of that name; empty if there is none.
std::optional<Format> formatNamed(std::string_view name);
/// `.jpg`, `.png`, `.webp`, `.avif`.
std::string_view fileEnding(Format format);
/// `image/jpeg` and so on. IANA's registry of media types.
std::string_view mediaType(Format format);
/// The quality, 1 to 100, that is used if none is chosen: about the same visible quality in each format.
/// Common practice, no source. PNG has none.
int usualQuality(Format format);
/// A rough size in bytes of a photograph with `pixels` pixels at `quality`.
double estimatedBytes(Format format, int quality, double pixels);

}  // namespace tenter::pictures
