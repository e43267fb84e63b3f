// Glyph outlines, from the same font objects that the text was measured with.
#pragma once

#include <ft2build.h>
#include FT_OUTLINE_H

#include <cstdint>
#include <memory>
#include <unordered_map>
#include <vector>

#include "text/fonts.h"

namespace tenter::desktop::row {

/// The contours of one glyph in HarfBuzz units (`Face::scale()` per em), y upwards.
struct Outline {
    std::vector<FT_Vector> points;
    std::vector<char> tags;
    std::vector<short> contours;
};

/// The outlines of one face. Each is read once and kept.
class Outlines {
public:
    explicit Outlines(text::FacePtr face) : face_(std::move(face)) {}
    const Outline& of(std::uint32_t glyph);
    [[nodiscard]] const text::Face& face() const { return *face_; }

private:
    text::FacePtr face_;
    std::unordered_map<std::uint32_t, std::unique_ptr<Outline>> kept_;
};

}  // namespace tenter::desktop::row
