#include "solve/size_bounds.h"

#include <algorithm>

#include "layout/prepared.h"

namespace tenter::solve {

namespace {

/// Stands for "no upper bound", CSS px; larger than any font size.
constexpr double unlimitedSize = 1e4;
/// Font size at which spacing in px is converted to em when lines are chosen, CSS px.
constexpr double referenceSize = 16;
/// Widths closer than this are the same, CSS px.
constexpr double sameWidth = 1e-6;

struct PartIndex {
    std::size_t card = 0;
    std::size_t part = 0;
};

class BoundFinder {
public:
    BoundFinder(const VariantGeometry& geometry, std::uint32_t role, const Wish& wish, const Margins& margins,
                const ShortenedWord* shortened, const LimitingText* shortenedAt)
        : geometry_(geometry),
          role_(role),
          wish_(wish),
          margins_(margins),
          shortened_(shortened),
          shortenedAt_(shortenedAt) {}

    std::vector<SizeBound> over(const std::vector<PartIndex>& parts) {
        const std::vector<LinearRange>& ranges = geometry_.roles[role_];
        for (rangeIndex_ = 0; rangeIndex_ < ranges.size(); ++rangeIndex_) {
            range_ = &ranges[rangeIndex_];
            // Ranges are cut at the ends of every wish, so each lies inside or outside.
            if (range_->from < wish_.widths.from - sameWidth || range_->to > wish_.widths.to + sameWidth)
                continue;
            if (range_->band != band_) shapes_.assign(parts.size(), std::nullopt);
            band_ = range_->band;
            const bool narrow = range_->to <= narrowWidths;
            factor_ = 1 + (narrow ? margins_.narrowSlack : margins_.slack) + wish_.tolerance;
            if (wish_.kind == WishKind::LeastSize || wish_.kind == WishKind::MostSize)
                addFigure();
            else
                for (std::size_t i = 0; i < parts.size(); ++i)
                    addPart(parts[i], i);
        }
        return std::move(bounds_);
    }

private:
    const text::Paragraph& paragraphOf(const PartIndex& part) const {
        return *geometry_.row->band(range_->band).cards[part.card].parts[part.part].paragraph;
    }
    ShortenedWord shortenedIn(const PartIndex& part) const {
        const bool here =
            shortened_ != nullptr && shortenedAt_->card == part.card && shortenedAt_->part == part.part;
        return here ? *shortened_ : ShortenedWord();
    }

    void addFigure() {
        const bool upper = wish_.kind == WishKind::MostSize;
        const Bound bound{wish_.value + (upper ? -wish_.tolerance : wish_.tolerance), {}};
        bounds_.push_back({upper, rangeIndex_, {range_->from, range_->to}, bound, bound});
    }

    void addPart(const PartIndex& part, std::size_t index) {
        const text::Paragraph& paragraph = paragraphOf(part);
        if (paragraph.empty()) return;
        // The lines are chosen once per band: only spacing in px makes the choice depend on the width.
        if (!shapes_[index]) shapes_[index] = shapesOf(paragraph, shortenedIn(part));
        const std::vector<LineShape>& shapes = *shapes_[index];
        if (shapes.empty()) return;
        const double from = range_->from;
        const double to = range_->to;
        if (wish_.kind == WishKind::Lines || wish_.kind == WishKind::Words) {
            const double factor = wish_.kind == WishKind::Lines ? factor_ * (1 + margins_.reserve) : factor_;
            put(true, from, to, upperBound(part, shapes, factor, from), upperBound(part, shapes, factor, to));
        } else {
            addMeasure(part, paragraph, shapes);
        }
    }

    std::vector<LineShape> shapesOf(const text::Paragraph& paragraph, const ShortenedWord& shortened) const {
        if (wish_.kind == WishKind::Words) return wordsOf(paragraph, shortened);
        const std::size_t lines = wish_.kind == WishKind::Lines
                                      ? static_cast<std::size_t>(wish_.value)
                                      : static_cast<std::size_t>(project::measuredLines - 1);
        // With as many lines as there are words, only the wish on words remains.
        if (wish_.kind == WishKind::Lines && lines >= paragraph.opportunities().size()) return {};
        return narrowestLines(paragraph, lines, *range_, referenceSize, shortened);
    }

    /// The largest size at which `shapes`, widened by `factor`, fit at viewport width `width`.
    Bound upperBound(const PartIndex& part, const std::vector<LineShape>& shapes, double factor,
                     double width) const {
        Bound tightest{unlimitedSize, {part.card, part.part, {}, true}};
        const double available = range_->at(range_->available, width);
        for (const LineShape& shape : shapes) {
            const double remaining = available - factor * shape.fixedWidth(*range_, width);
            const double perSize = factor * shape.widthPerSize(*range_) + range_->emEdges;
            const double most = perSize > 0 ? remaining / perSize : remaining >= 0 ? unlimitedSize : 0;
            if (most >= tightest.size) continue;
            tightest.size = most;
            tightest.text.line = shape;
        }
        return tightest;
    }

    /// The size at which a full line has exactly the wished number of characters.
    Bound boundByMeasure(const PartIndex& part, const text::Paragraph& paragraph, double width) const {
        const auto clusters = static_cast<std::uint32_t>(paragraph.clusters().size());
        LineShape whole;
        whole.ems = paragraph.ems(0, clusters);
        whole.letters = paragraph.letters(0, clusters);
        whole.words = paragraph.words(0, clusters);
        whole.end = clusters;
        const double letters = paragraph.graphemes(0, clusters);
        // The measure is compared strictly, so the tolerance applies to the wished figure.
        const double factor =
            wish_.kind == WishKind::LeastMeasure ? 1 + wish_.tolerance : 1 - wish_.tolerance;
        const double value = wish_.value * factor;
        const bool lower = wish_.kind == WishKind::MostMeasure;
        const double available = range_->at(lower ? range_->mostAvailable : range_->available, width);
        const double remaining = letters * available - value * whole.fixedWidth(*range_, width);
        const double perSize =
            value * whole.widthPerSize(*range_) + letters * (lower ? range_->leastEmEdges : range_->emEdges);
        Bound bound{perSize > 0 ? remaining / perSize : unlimitedSize, {part.card, part.part, whole, true}};
        return bound;
    }

    /// Text of fewer than `project::measuredLines` lines has no measure. So an upper bound by measure is at
    /// least the size at which the text has two lines, and a lower bound below that size does not apply.
    void addMeasure(const PartIndex& part, const text::Paragraph& paragraph,
                    const std::vector<LineShape>& twoLines) {
        const bool upper = wish_.kind == WishKind::LeastMeasure;
        const double from = range_->from;
        const double to = range_->to;
        const Bound first = boundByMeasure(part, paragraph, from);
        const Bound last = boundByMeasure(part, paragraph, to);
        const Bound firstTwo = upperBound(part, twoLines, factor_, from);
        const Bound lastTwo = upperBound(part, twoLines, factor_, to);
        const double startExcess = first.size - firstTwo.size;
        const double endExcess = last.size - lastTwo.size;
        const auto add = [&](double a, double b, bool byMeasure) {
            const auto at = [&](const Bound& start, const Bound& stop, double width) {
                Bound bound = start;
                bound.size += (stop.size - start.size) * (width - from) / (to - from);
                return bound;
            };
            if (byMeasure)
                put(upper, a, b, at(first, last, a), at(first, last, b));
            else if (upper)
                put(upper, a, b, at(firstTwo, lastTwo, a), at(firstTwo, lastTwo, b));
        };
        if ((startExcess < 0) == (endExcess < 0)) return add(from, to, startExcess >= 0);
        const double crossing = from + (to - from) * startExcess / (startExcess - endExcess);
        add(from, crossing, startExcess >= 0);
        add(crossing, to, endExcess >= 0);
    }

    void put(bool upper, double from, double to, const Bound& start, const Bound& end) {
        // Bounds over the same widths are merged by their ends, which is safe and keeps the program small.
        for (SizeBound& same : bounds_) {
            if (same.range != rangeIndex_ || same.upper != upper || same.widths != sweep::Interval{from, to})
                continue;
            const auto tighten = [&](Bound& kept, const Bound& other) {
                if (upper ? other.size < kept.size : other.size > kept.size) kept = other;
            };
            tighten(same.start, start);
            tighten(same.end, end);
            return;
        }
        bounds_.push_back({upper, rangeIndex_, {from, to}, start, end});
    }

    const VariantGeometry& geometry_;
    std::uint32_t role_;
    const Wish& wish_;
    const Margins& margins_;
    const ShortenedWord* shortened_;
    const LimitingText* shortenedAt_;
    std::size_t rangeIndex_ = 0;
    const LinearRange* range_ = nullptr;
    double factor_ = 1;
    std::size_t band_ = static_cast<std::size_t>(-1);
    std::vector<std::optional<std::vector<LineShape>>> shapes_;  // by part, for this band
    std::vector<SizeBound> bounds_;
};

}  // namespace

std::vector<SizeBound> sizeBounds(const VariantGeometry& geometry, std::uint32_t role, const Wish& wish,
                                  const Margins& margins, const std::vector<bool>& ignoredCards,
                                  const ShortenedWord* shortened, const LimitingText* shortenedAt) {
    std::vector<PartIndex> parts;
    const std::vector<layout::CardPlan>& cards = geometry.row->band(0).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        if (ignoredCards[card]) continue;
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part)
            if (!cards[card].parts[part].picture && cards[card].parts[part].role == role)
                parts.push_back({card, part});
    }
    return BoundFinder(geometry, role, wish, margins, shortened, shortenedAt).over(parts);
}

}  // namespace tenter::solve
