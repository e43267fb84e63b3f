// How narrow copy can be set: its lines at their most even, its words.
#pragma once

#include <vector>

#include "solve/stretches.h"
#include "text/paragraph.h"

namespace tenter::solve {

/// A line's width apart: at size s, `ems · s` and spacings for each letter and word unit.
struct LineShape {
    double ems = 0;
    double letters = 0;
    double words = 0;
    std::uint32_t first = 0, end = 0;  ///< clusters that count
    std::uint32_t word = 0;            ///< first cluster of its last word

    /// Of `stretch`'s spacings: what follows the size …
    [[nodiscard]] double perSize(const Stretch& stretch) const {
        return ems + letters * stretch.emLetter + words * stretch.emWord;
    }
    /// … and what does not, CSS px at viewport width `width`.
    [[nodiscard]] double fixed(const Stretch& stretch, double width) const {
        return letters * stretch.at(stretch.letter, width) + words * stretch.at(stretch.word, width);
    }
};

/// Copy to be set narrower than it is: from cluster `word` on `ems` less, as if letters of that word were
/// gone. None by itself.
struct Shortened {
    std::uint32_t word = 0;
    double ems = 0;
};

/// The paragraph in at most `lines` lines (no fewer than are forced), the widest of them as narrow as greedy
/// breaking gets it at spacings as at the start of `stretch` and size `size` (CSS px). Empty if it is empty.
std::vector<LineShape> narrowest(const text::Paragraph& paragraph, std::size_t lines, const Stretch& stretch,
                                 double size, const Shortened& shortened = {});

/// Each piece between two places where lines may break.
std::vector<LineShape> wordsOf(const text::Paragraph& paragraph, const Shortened& shortened = {});

}  // namespace tenter::solve
