// The fonts of a measurement, so that a page is laid out with the same files.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// What precedes the name of a family that a page uses only for characters which earlier families lack: of a
/// family that the role names, and of another one.
inline constexpr std::string_view namedFallback = "Tenter family ";
inline constexpr std::string_view otherFallback = "Tenter fallback ";

/// One `@font-face` rule. CSS Fonts 4 § 4.
struct FaceRule {
    std::string family;
    text::FacePtr face;
    /// The characters that the rule is for; empty: all characters of the font.
    std::set<char32_t> characters;
    /// True if the page has its own name for the font: it was found for a generic family or for missing
    /// characters.
    bool renamed = false;
    /// The rule with the font embedded.
    [[nodiscard]] std::string css() const;
    /// The rule with `source` as its `src`, and with further `descriptors`, such as `  font-display:
    /// swap;\n`.
    [[nodiscard]] std::string css(const std::string& source, const std::string& descriptors = {}) const;
};

/// A font as a file that browsers read. CSS Fonts 4 § 4.3.1.
struct FontFile {
    std::string bytes;
    std::string extension;  ///< `ttf`, `otf`, `woff` or `woff2`
    std::string format;     ///< for `format()`: `truetype`, `opentype`, `woff` or `woff2`
};

/// The face as a file of its own. A WOFF or WOFF2 file stays as it is.
FontFile fontFile(const text::Face& face);

/// A project whose family lists name only fonts of `faces`. Fonts found by their names keep them; fonts used
/// for a generic family or for missing characters get new names.
struct PageFonts {
    project::Project project;
    std::vector<FaceRule> faces;
};

/// The faces of all paragraphs of variant `variant` in all bands.
PageFonts pageFonts(const project::Project& project, std::size_t variant, text::ParagraphStore& store);

/// The characters as a `unicode-range`: `U+41-5A, U+20AC`. CSS Fonts 4 § 4.5.
std::string unicodeRange(const std::set<char32_t>& characters);

}  // namespace tenter::emit
