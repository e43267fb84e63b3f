// The fonts of a measurement, so that a page is laid out with the same files.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// One `@font-face` rule. CSS Fonts 4 § 4.
struct FaceRule {
    std::string family;
    text::FacePtr face;
    /// The characters that the rule is for; empty: all characters of the font.
    std::set<char32_t> characters;
    [[nodiscard]] std::string css() const;
};

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
