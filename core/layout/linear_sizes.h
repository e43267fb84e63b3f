// The inline sizes of a row over ranges of widths, each computed once.
#pragma once

#include <unordered_map>
#include <vector>

#include "layout/inline_sizes.h"

namespace tenter::layout {

/// Inline sizes of a row as straight lines over the viewport width. All parts of a row, and all checks of
/// it, ask for the same ones. Not for use on more than one thread.
class LinearSizes {
public:
    /// `row` must outlive this object. Not explicit: whoever asks only once passes the row.
    LinearSizes(const PreparedRow& row) : row_(&row), known_(row.intervalCount()) {}

    [[nodiscard]] const PreparedRow& row() const { return *row_; }
    /// The inline sizes just above viewport width `from` (CSS px) in interval `interval`. The lines start at
    /// `from`. Valid as long as this object.
    [[nodiscard]] const InlineSizes<units::Linear>& at(std::size_t interval, double from) const {
        const auto [entry, isNew] = known_[interval].try_emplace(from);
        if (isNew) entry->second = inlineSizesAt(row_->interval(interval), units::Linear(from, 1));
        return entry->second;
    }

private:
    const PreparedRow* row_;
    mutable std::vector<std::unordered_map<double, InlineSizes<units::Linear>>> known_;  // by interval
};

}  // namespace tenter::layout
