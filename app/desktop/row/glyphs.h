// Glyphs as 8-bit coverage, each rasterised once per face, size and quarter-pixel phase.
#pragma once

#include <array>
#include <cstdint>
#include <list>
#include <map>
#include <memory>
#include <tuple>
#include <vector>

#include "row/outlines.h"

namespace tenter::desktop::row {

/// Where a glyph's coverage lies: `left` and `top` in device px from the pen and the baseline.
struct Coverage {
    std::int16_t left = 0;
    std::int16_t top = 0;  ///< rows above the baseline
    std::uint16_t width = 0;
    std::uint16_t height = 0;
    std::uint32_t offset = 0;
};

/// Sizes are rasterised on a grid this fine, in parts of a device px: a glyph's edge is off by less than a
/// thirtieth of a pixel, and most steps of a drag need no rasterising at all. Positions are not rounded so.
inline constexpr int sizesPerPixel = 16;
inline constexpr int phases = 4;

/// One face at one size: its rasterised glyphs.
class SizedFace {
public:
    /// `leaning`: made to lean, as browsers make a slant that the family lacks.
    SizedFace(Outlines& outlines, double size, bool leaning);
    const Coverage& of(std::uint32_t glyph, unsigned phase);
    [[nodiscard]] const std::uint8_t* pixels(const Coverage& coverage) const {
        return pool_.data() + coverage.offset;
    }
    [[nodiscard]] std::size_t bytes() const { return pool_.size() + pages_.size() * sizeof(Page); }

private:
    static constexpr std::uint32_t glyphsPerPage = 64;
    static constexpr std::uint32_t absent = 0xffffffff;
    using Page = std::array<std::uint32_t, std::size_t{glyphsPerPage} * phases>;
    std::uint32_t rasterise(std::uint32_t glyph, unsigned phase);
    Outlines& outlines_;
    double size_;
    bool leaning_;
    std::vector<std::unique_ptr<Page>> pages_;
    std::vector<Coverage> coverages_;
    std::vector<std::uint8_t> pool_;
};

/// Sized faces, the longest unused dropped first.
class Glyphs {
public:
    /// `size` in device px.
    SizedFace& sized(const text::FacePtr& face, double size, bool leaning);
    /// Drops what has not been used lately, if there is too much. Invalidates references.
    void trim();
    /// After fonts changed.
    void clear();

private:
    using Key = std::tuple<const text::Face*, long, bool>;
    struct Kept {
        std::unique_ptr<SizedFace> face;
        std::list<Key>::iterator use;
    };
    std::map<const text::Face*, std::unique_ptr<Outlines>> outlines_;
    std::map<Key, Kept> kept_;
    std::list<Key> uses_;  // latest first
};

}  // namespace tenter::desktop::row
