// Glyphs as 8-bit coverage masks. Each is rasterised once per face, size and quarter-pixel position.
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

/// Size and position of a glyph's mask: `left` and `top` in device px from the pen and the baseline.
struct Coverage {
    std::int16_t left = 0;
    std::int16_t top = 0;  ///< first row, counted upwards from the baseline
    std::uint16_t width = 0;
    std::uint16_t height = 0;
    std::uint32_t offset = 0;  ///< of the first byte in the pool
};

/// Font sizes are rounded to 1/16 device px before rasterising. The edge of a glyph is then off by less than
/// 1/30 px, and most steps of a drag need no new glyphs. Positions are not rounded to this grid.
inline constexpr int sizesPerPixel = 16;
/// Number of horizontal positions within a pixel.
inline constexpr int phases = 4;

/// The rasterised glyphs of one face at one size.
class SizedFace {
public:
    /// `size` in device px. `leaning`: synthesise an oblique style, as browsers do if a family has none.
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

/// A cache of sized faces. The least recently used ones are dropped first.
class Glyphs {
public:
    /// `size` in device px.
    SizedFace& sized(const text::FacePtr& face, double size, bool leaning);
    /// Drops the least recently used faces if the cache is too large. Invalidates references.
    void trim();
    /// Drops everything; call it after fonts have changed.
    void clear();

private:
    using Key = std::tuple<const text::Face*, long, bool>;
    struct Kept {
        std::unique_ptr<SizedFace> face;
        std::list<Key>::iterator use;
    };
    std::map<const text::Face*, std::unique_ptr<Outlines>> outlines_;
    std::map<Key, Kept> kept_;
    std::list<Key> uses_;  // most recently used first
};

}  // namespace tenter::desktop::row
