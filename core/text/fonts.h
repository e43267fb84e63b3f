// Fonts: the file for a family, weight and style, opened for HarfBuzz.
#pragma once

#include <hb.h>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::text {

/// One face of a font file at one set of axis values. Text is shaped with it in font units.
class Face {
public:
    ~Face();
    Face(const Face&) = delete;
    Face& operator=(const Face&) = delete;

    [[nodiscard]] const std::string& family() const { return family_; }
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    /// Index of the face in its file (a collection holds several).
    [[nodiscard]] unsigned index() const { return index_; }
    [[nodiscard]] double weight() const {
        return weight_;
    }  ///< weight in use: the requested one, or the nearest
    [[nodiscard]] double minWeight() const {
        return minWeight_;
    }  ///< of the weight axis, or the file's own weight
    [[nodiscard]] double maxWeight() const { return maxWeight_; }
    [[nodiscard]] bool italic() const { return italic_; }
    /// The font as sfnt bytes (WOFF and WOFF2 decoded), for drawing and for the exported page.
    [[nodiscard]] const std::string& bytes() const { return *bytes_; }
    /// The HarfBuzz font, scaled to `unitsPerEm` × 64, with its axes set.
    [[nodiscard]] hb_font_t* font() const { return font_; }
    [[nodiscard]] double scale() const { return scale_; }  ///< HarfBuzz units in one em
    [[nodiscard]] double unitsPerEm() const { return scale_ / 64; }
    [[nodiscard]] double ascent() const { return ascent_; }    ///< em, above the baseline
    [[nodiscard]] double descent() const { return descent_; }  ///< em, below it, positive
    /// True if FreeType rounds ascent and descent up instead of to the nearest px: the face sets neither
    /// USE_TYPO_METRICS (OS/2 fsSelection bit 7) nor integer sizes (head flags bit 3).
    [[nodiscard]] bool roundsUp() const { return roundsUp_; }
    /// True if its outlines are PostScript's (a table `CFF ` or `CFF2`), not TrueType's.
    [[nodiscard]] bool isPostScript() const { return isPostScript_; }
    /// The PostScript name of the font, UTF-8; empty if it has none.
    [[nodiscard]] std::string postScriptName() const;
    /// True if the face has a glyph for `character`.
    [[nodiscard]] bool has(char32_t character) const;
    /// True if the face has the letter and the marks from which HarfBuzz composes `character`.
    [[nodiscard]] bool composes(char32_t character) const;

private:
    friend class Fonts;
    Face() = default;
    std::string family_;
    std::filesystem::path file_;
    unsigned index_ = 0;
    double weight_ = 400, minWeight_ = 400, maxWeight_ = 400;
    bool italic_ = false;
    std::shared_ptr<const std::string> bytes_;
    hb_font_t* font_ = nullptr;
    double scale_ = 1, ascent_ = 0.8, descent_ = 0.2;
    bool roundsUp_ = false, isPostScript_ = false;
};

using FacePtr = std::shared_ptr<const Face>;

/// A difference between a requested font and the font in use: a family that was not found, or another weight
/// or slant of it.
struct FontNote {
    std::string family;
    std::string says;          ///< a sentence about the family, without full stop: `Karla was not found`
    std::string missing;       ///< what a font file must have to change that, such as `this style`
    bool changesLines = true;  ///< false if letters are only slanted, which changes no width
    friend bool operator==(const FontNote&, const FontNote&) = default;
};

/// Finds faces, first in the project's font files, then in the system's through fontconfig. Caches what it
/// finds.
class Fonts {
public:
    Fonts();
    ~Fonts();
    /// Sets the project's font files, relative to `folder`, and drops the faces of an earlier project.
    void use(const std::vector<project::FontEntry>& entries, const std::filesystem::path& folder);
    /// The faces of the families that exist, in list order, each in the nearest weight and slant; the last is
    /// a default. CSS Fonts 4 § 5.2. Adds a note to `notes` for each missing family, weight or slant that
    /// changes what is drawn.
    std::vector<FacePtr> find(const std::vector<std::string>& families, double weight, bool italic,
                              std::vector<FontNote>* notes = nullptr);
    /// A system face with a glyph for `character`, for text that no family of the list can draw; null if
    /// there is none.
    FacePtr fallback(char32_t character, const std::string& language, double weight, bool italic);
    /// Names of the project's and the system's families, sorted.
    [[nodiscard]] std::vector<std::string> families() const;

private:
    struct Cache;
    std::unique_ptr<Cache> cache_;
};

}  // namespace tenter::text
