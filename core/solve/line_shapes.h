// How narrow a text can be set: its narrowest lines for a number of lines, and its words.
#pragma once

#include <vector>

#include "solve/linear_ranges.h"
#include "text/paragraph.h"

namespace tenter::solve {

/// The width of a line or word as a function of size and spacing: at size s, CSS px, it is `ems · s` plus
/// `letters` letter spacings and `words` word spacings.
struct LineShape {
    double ems = 0;
    double letters = 0;
    double words = 0;
    std::uint32_t first = 0, end = 0;  ///< its clusters: first, and one past the last
    std::uint32_t word = 0;            ///< first cluster of its last word

    /// Width per px of font size, with spacing in em.
    [[nodiscard]] double widthPerSize(const LinearRange& range) const {
        return ems + letters * range.emLetter + words * range.emWord;
    }
    /// Width that does not depend on the size, CSS px, at viewport width `width`.
    [[nodiscard]] double fixedWidth(const LinearRange& range, double width) const {
        return letters * range.at(range.letter, width) + words * range.at(range.word, width);
    }
};

/// A text measured as if the word that starts at cluster `word` were shorter by `ems` (em). The default
/// changes nothing.
struct ShortenedWord {
    std::uint32_t word = 0;
    double ems = 0;
};

/// The paragraph's lines when it is set as narrow as greedy line breaking allows with at most `lines` lines
/// (or as many as forced breaks require). Spacing is that at the start of `range`, with font size `size`, CSS
/// px. Empty for an empty paragraph.
std::vector<LineShape> narrowestLines(const text::Paragraph& paragraph, std::size_t lines,
                                      const LinearRange& range, double size,
                                      const ShortenedWord& shortened = {});

/// The pieces between break opportunities.
std::vector<LineShape> wordsOf(const text::Paragraph& paragraph, const ShortenedWord& shortened = {});

}  // namespace tenter::solve
