// Finding the bounds of one wish, one linear range after the other.
#pragma once

#include <optional>
#include <vector>

#include "solve/model.h"

namespace tenter::solve {

/// Stands for "no upper bound", CSS px; larger than any font size.
inline constexpr double unlimitedSize = 1e4;
/// Font size at which spacing in px is converted to em when lines are chosen, CSS px.
inline constexpr double referenceSize = 16;

/// Collects the bounds that `Constraint::addBounds` finds in each linear range of the wish's role.
class BoundFinder {
public:
    /// With `shortened`, the text at `shortenedAt` is measured with that word shorter.
    BoundFinder(const Model& model, const VariantGeometry& geometry, std::uint32_t role, const Wish& wish,
                const ShortenedWord* shortened, const LimitingText* shortenedAt);

    std::vector<SizeBound> run();

    // For `Constraint::addBounds`

    [[nodiscard]] const Wish& wish() const { return wish_; }
    /// The linear range at hand.
    [[nodiscard]] const LinearRange& range() const { return *range_; }
    [[nodiscard]] const Margins& margins() const;
    /// Factor of every line's width that leaves the slack and the wish's tolerance free.
    [[nodiscard]] double widening() const { return widening_; }

    /// Adds a bound that no text sets: `size`, CSS px.
    void addFigure(bool upper, double size);

    /// A text of the role.
    struct Text {
        std::size_t card = 0, part = 0;
        const text::Paragraph& paragraph;
        const std::vector<LineShape>& shapes;  ///< of its lines or words, at least one
    };
    /// Calls `add(Text)` for each text of the role. `shapesOf(paragraph, shortenedWord)` gives the lines or
    /// words that must fit; a text without any is left out. They are chosen once per band: only spacing in
    /// px makes the choice depend on the width.
    template <class ShapesOf, class Add>
    void forEachText(ShapesOf&& shapesOf, Add&& add) {
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const text::Paragraph& paragraph = paragraphOf(parts_[i]);
            if (paragraph.empty()) continue;
            if (!shapes_[i]) shapes_[i] = shapesOf(paragraph, shortenedIn(parts_[i]));
            if (!shapes_[i]->empty()) add(Text{parts_[i].card, parts_[i].part, paragraph, *shapes_[i]});
        }
    }

    /// The largest size at which the shapes of `text`, widened by `factor`, fit at viewport width `width`.
    [[nodiscard]] Bound upperBound(const Text& text, double factor, double width) const;

    /// Adds a bound over the viewport widths from `from` to `to`, within the range at hand.
    void add(bool upper, double from, double to, const Bound& start, const Bound& end);

private:
    struct Part {
        std::size_t card = 0, part = 0;
    };
    [[nodiscard]] const text::Paragraph& paragraphOf(const Part& part) const;
    [[nodiscard]] ShortenedWord shortenedIn(const Part& part) const;

    const Model& model_;
    const VariantGeometry& geometry_;
    std::uint32_t role_;
    const Wish& wish_;
    const ShortenedWord* shortened_;
    const LimitingText* shortenedAt_;
    std::vector<Part> parts_;
    std::size_t rangeIndex_ = 0;
    const LinearRange* range_ = nullptr;
    double widening_ = 1;
    std::vector<std::optional<std::vector<LineShape>>> shapes_;  // by part, for the band at hand
    std::vector<SizeBound> bounds_;
};

}  // namespace tenter::solve
