// Decoding font files to sfnt bytes.
#pragma once

#include <optional>
#include <string>

namespace tenter::text {

/// The sfnt bytes of a font file: TrueType and OpenType unchanged, WOFF and WOFF2 decoded. Empty if the
/// content is not a readable font. The input may be hostile; a decoded font has at most 64 MB. WOFF File
/// Format 1.0; WOFF File Format 2.0.
std::optional<std::string> sfntBytes(std::string content);

}  // namespace tenter::text
