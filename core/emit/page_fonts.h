// The fonts of a measurement, for a page that is to be laid out with the very same files.
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
    /// The characters it is for; empty: all it has.
    std::set<char32_t> characters;
    [[nodiscard]] std::string css() const;
};

/// A project whose family lists name only fonts that are declared with it: what the lists found keeps its
/// name, what stood in for a generic family or for missing characters gets a name of its own.
struct PageFonts {
    project::Project project;
    std::vector<FaceRule> faces;
};

/// Faces of every paragraph of variant `variant` in every band.
PageFonts pageFonts(const project::Project& project, std::size_t variant, text::ParagraphStore& store);

/// Characters as a `unicode-range`: `U+41-5A, U+20AC`. CSS Fonts 4 § 4.5.
std::string unicodeRange(const std::set<char32_t>& characters);

}  // namespace tenter::emit
