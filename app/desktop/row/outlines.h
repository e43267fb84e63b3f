// Glyph outlines, read from the same font objects that measured the text.
#pragma once

#include <ft2build.h>
#include FT_OUTLINE_H

#include <cstdint>
#include <memory>
#include <unordered_map>
#include <vector>

#include "text/fonts.h"

namespace tenter::desktop::row {

/// One glyph's contours in HarfBuzz units (`Face::scale()` to an em), y up.
struct Outline {
    std::vector<FT_Vector> points;
    std::vector<char> tags;
    std::vector<short> contours;
};

/// The outlines of one face, each read once.
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
