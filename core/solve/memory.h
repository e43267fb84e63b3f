// What a solver keeps for its next run.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "solve/size_bounds.h"

namespace tenter::solve {

/// A variant prepared under one set of line-breaking rules.
struct PreparedVariant {
    std::size_t variant = 0;
    std::unique_ptr<layout::PreparedRow> row;
};
using PreparedVariantRows = std::vector<PreparedVariant>;

/// Prepared rows and bounds of the last run. While only wishes change, as when one is dragged, the next run
/// finds only the bounds of the changed wishes. Its answer is the same as without memory. For one thread at a
/// time, and one set of fonts.
class Memory {
public:
    /// Starts a run: drops the bounds that the last one did not use.
    void startRun();

    /// The rows of `variants` of `project`: those of the last run if they are the same, else what `make()`
    /// returns. `profile` as in `Options`.
    template <class Make>
    std::shared_ptr<const PreparedVariantRows> rows(const project::Project& project,
                                                    const std::vector<std::size_t>& variants,
                                                    const text::BreakProfile* profile, Make&& make) {
        project::Project others = withoutWishes(project);
        if (!rows_ || variants != variants_ || profile != profile_ || others != project_) {
            forget();
            rows_ = make();
            project_ = std::move(others);
            variants_ = variants;
            profile_ = profile;
        }
        return rows_;
    }

    /// What the bounds of a wish depend on, besides the prepared row.
    struct BoundInput {
        const layout::PreparedRow* row = nullptr;  ///< one of `rows`
        std::uint32_t role = 0;
        Wish wish;
        std::vector<LinearRange> ranges;  ///< of the role
        Margins margins;
        std::vector<bool> ignoredCards;
        friend bool operator==(const BoundInput&, const BoundInput&) = default;
    };
    /// The bounds for `input`: those of an earlier run, else what `find()` returns.
    template <class Find>
    std::vector<SizeBound> bounds(BoundInput input, Find&& find) {
        for (Found& each : found_)
            if (each.input == input) {
                each.used = true;
                return each.bounds;
            }
        return found_.emplace_back(Found{std::move(input), find(), true}).bounds;
    }

private:
    struct Found {
        BoundInput input;
        std::vector<SizeBound> bounds;
        bool used = false;  ///< in the run at hand
    };
    static project::Project withoutWishes(project::Project project);
    void forget();

    std::shared_ptr<const PreparedVariantRows> rows_;
    std::optional<project::Project> project_;  // of `rows_`, without wishes
    std::vector<std::size_t> variants_;
    const text::BreakProfile* profile_ = nullptr;
    std::vector<Found> found_;
};

}  // namespace tenter::solve
