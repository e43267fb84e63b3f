#include "solve/size_bounds.h"

#include "layout/prepared.h"
#include "solve/bound_finder.h"
#include "solve/cancellation.h"
#include "solve/constraint.h"

namespace tenter::solve {

namespace {

/// Widths closer than this are the same, CSS px.
constexpr double sameWidth = 1e-6;

}  // namespace

BoundFinder::BoundFinder(const Model& model, const VariantGeometry& geometry, std::uint32_t role,
                         const Wish& wish, const ShortenedWord* shortened, const LimitingText* shortenedAt)
    : model_(model),
      geometry_(geometry),
      role_(role),
      wish_(wish),
      shortened_(shortened),
      shortenedAt_(shortenedAt) {
    const std::vector<layout::CardPlan>& cards = geometry.row->band(0).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        if (model.ignoredCards()[card]) continue;
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part)
            if (!cards[card].parts[part].picture && cards[card].parts[part].role == role)
                parts_.push_back({card, part});
    }
}

std::vector<SizeBound> BoundFinder::run() {
    const std::vector<LinearRange>& ranges = geometry_.roles[role_];
    auto band = static_cast<std::size_t>(-1);
    for (rangeIndex_ = 0; rangeIndex_ < ranges.size(); ++rangeIndex_) {
        range_ = &ranges[rangeIndex_];
        // Ranges are cut at the ends of every wish, so each lies inside or outside.
        if (range_->from < wish_.widths.from - sameWidth || range_->to > wish_.widths.to + sameWidth)
            continue;
        throwIfStopped(model_.cancellation());
        if (range_->band != band) shapes_.assign(parts_.size(), std::nullopt);
        band = range_->band;
        const bool narrow = range_->to <= narrowWidths;
        widening_ = 1 + (narrow ? margins().narrowSlack : margins().slack) + wish_.tolerance;
        wish_.kind->addBounds(*this);
    }
    return std::move(bounds_);
}

const Margins& BoundFinder::margins() const {
    return model_.margins();
}

const text::Paragraph& BoundFinder::paragraphOf(const Part& part) const {
    return *geometry_.row->band(range_->band).cards[part.card].parts[part.part].paragraph;
}

ShortenedWord BoundFinder::shortenedIn(const Part& part) const {
    const bool here =
        shortened_ != nullptr && shortenedAt_->card == part.card && shortenedAt_->part == part.part;
    return here ? *shortened_ : ShortenedWord();
}

void BoundFinder::addFigure(bool upper, double size) {
    const Bound bound{size, {}};
    bounds_.push_back({upper, rangeIndex_, {range_->from, range_->to}, bound, bound});
}

Bound BoundFinder::upperBound(const Text& text, double factor, double width) const {
    Bound tightest{unlimitedSize, {text.card, text.part, {}, true}};
    const double available = range_->at(range_->available, width);
    for (const LineShape& shape : text.shapes) {
        const double remaining = available - factor * shape.fixedWidth(*range_, width);
        const double perSize = factor * shape.widthPerSize(*range_) + range_->emEdges;
        const double most = perSize > 0 ? remaining / perSize : remaining >= 0 ? unlimitedSize : 0;
        if (most >= tightest.size) continue;
        tightest.size = most;
        tightest.text.line = shape;
    }
    return tightest;
}

void BoundFinder::add(bool upper, double from, double to, const Bound& start, const Bound& end) {
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

std::vector<SizeBound> sizeBounds(const Model& model, const VariantGeometry& geometry, std::uint32_t role,
                                  const Wish& wish, const ShortenedWord* shortened,
                                  const LimitingText* shortenedAt) {
    return BoundFinder(model, geometry, role, wish, shortened, shortenedAt).run();
}

}  // namespace tenter::solve
