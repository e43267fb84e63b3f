// Font files as sfnt bytes: TrueType and OpenType as they are, WOFF and WOFF2 decoded.
#pragma once

#include <optional>
#include <string>

namespace tenter::text {

/// The sfnt bytes of a font file's content, or nothing if it is not a font that can be read. Treats its input
/// as hostile: a decoded font is at most 64 MB. WOFF File Format 1.0; WOFF File Format 2.0.
std::optional<std::string> sfntBytes(std::string content);

}  // namespace tenter::text
