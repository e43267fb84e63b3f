// Adding the rows of one wish to the linear program.
#pragma once

#include "solve/model.h"

namespace tenter::solve {

/// Adds the rows of `wish` to `model`.
class RowAdder {
public:
    RowAdder(Model& to, std::size_t wishIndex, const Wish& added)
        : model(to), wish(added), to_(to), index_(wishIndex) {}

    const Model& model;
    const Wish& wish;

    /// A row without expression and bounds, about the size of the wish's role at viewport width `width`
    /// (CSS px) of `range`. Its origin is complete.
    [[nodiscard]] ConstraintRow rowAt(const VariantGeometry& geometry, const LinearRange& range,
                                      double width) const {
        ConstraintRow row;
        row.origin = {geometry.variant,
                      range.band,
                      width,
                      wish.role,
                      &geometry.row->profile(),
                      {},
                      size(geometry, range, width)};
        return row;
    }
    /// The size of the wish's role there.
    [[nodiscard]] LinearExpression size(const VariantGeometry& geometry, const LinearRange& range,
                                        double width) const {
        return model.sizeAt(geometry, range, wish.role, width);
    }
    /// True if the wish holds over all of `range`. Ranges are cut at the ends of every wish, so it holds
    /// over none of it if false.
    [[nodiscard]] bool isWithin(const LinearRange& range) const {
        return range.from >= wish.widths.from - sweep::leastStep &&
               range.to <= wish.widths.to + sweep::leastStep;
    }

    /// Adds a row; of rows with the same expression the tightest bounds are kept.
    void add(ConstraintRow row) {
        row.wish = index_;
        to_.addRow(std::move(row));
    }
    /// Adds an auxiliary variable, 0 or more. Returns its index.
    std::size_t addVariable() { return to_.addVariable(); }

private:
    Model& to_;
    std::size_t index_;
};

}  // namespace tenter::solve
