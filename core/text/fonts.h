// Fonts: which file serves a family, weight and style, and what HarfBuzz needs of it.
#pragma once

#include <hb.h>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::text {

/// One face at one set of axis values: shapes text in font units.
class Face {
public:
    ~Face();
    Face(const Face&) = delete;
    Face& operator=(const Face&) = delete;

    [[nodiscard]] const std::string& family() const { return family_; }
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    [[nodiscard]] unsigned index() const { return index_; }
    [[nodiscard]] double weight() const { return weight_; }            ///< the weight asked for and served
    [[nodiscard]] double minWeight() const { return minWeight_; }  ///< of the file's axis, or its own
    [[nodiscard]] double maxWeight() const { return maxWeight_; }
    [[nodiscard]] bool italic() const { return italic_; }
    /// sfnt bytes (WOFF and WOFF2 decoded), for drawing and for the exported page.
    [[nodiscard]] const std::string& bytes() const { return *bytes_; }
    /// HarfBuzz font, scaled to `unitsPerEm` × 64, axes set.
    [[nodiscard]] hb_font_t* font() const { return font_; }
    [[nodiscard]] double scale() const { return scale_; }  ///< HarfBuzz units to one em
    [[nodiscard]] double unitsPerEm() const { return scale_ / 64; }
    [[nodiscard]] double ascent() const { return ascent_; }    ///< em, above the baseline
    [[nodiscard]] double descent() const { return descent_; }  ///< em, below it, positive
    /// True if the face asks neither for its typographic metrics (OS/2 fsSelection bit 7) nor for whole sizes
    /// (head flags bit 3): FreeType then rounds ascent and descent up instead of to the nearest px.
    [[nodiscard]] bool roundsUp() const { return roundsUp_; }
    [[nodiscard]] bool has(char32_t character) const;

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
    bool roundsUp_ = false;
};

using FacePtr = std::shared_ptr<const Face>;

/// What was asked of a family and what it had: a family not found, a weight or slant served by a neighbour.
struct FontNote {
    std::string family;
    std::string says;
    bool changesLines = true;  ///< false for letters that are only leaned, which widens none of them
    friend bool operator==(const FontNote&, const FontNote&) = default;
};

/// Finds faces: in the project's own font files first, then among the system's by fontconfig. Faces found
/// once are kept.
class Fonts {
public:
    Fonts();
    ~Fonts();
    /// Looks for the project's files in `folder`; forgets the faces of an earlier project.
    void use(const std::vector<project::FontEntry>& entries, const std::filesystem::path& folder);
    /// Every face of the family list that exists, in order, the nearest weight and slant of each, ending in a
    /// default. CSS Fonts 4 § 5.2. Notes what was not found or had to be served by a neighbour, where that
    /// changes what is drawn.
    std::vector<FacePtr> find(const std::vector<std::string>& families, double weight, bool italic,
                              std::vector<FontNote>* notes = nullptr);
    /// A system face that has `character`, for text none of the families can draw; null if none has.
    FacePtr fallback(char32_t character, const std::string& language, double weight, bool italic);
    /// Families that can be chosen, sorted: the project's, then the system's.
    [[nodiscard]] std::vector<std::string> families() const;

private:
    struct Kept;
    std::unique_ptr<Kept> kept_;
};

}  // namespace tenter::text
