// What a variant's rules say at first, and what each narrower band changes.
#pragma once

#include <optional>
#include <vector>

#include "emit/given_sheet.h"
#include "emit/rule.h"
#include "project/project.h"

namespace tenter::emit {

/// The rules of one variant in one place of the stylesheet.
struct VariantRules {
    std::size_t variant = 0;
    int columns = 1;
    /// Every variant has the same rules in the same places; those with no declarations are not printed.
    Rules rules;
};

/// The base, or one media query.
struct Block {
    std::optional<double> upTo;  ///< none: the base, which is the widest band
    std::vector<VariantRules> variants;
};

/// The base, then a block for each breakpoint from the widest down. A block says only what changes against
/// the band above it; a breakpoint that changes nothing has none.
std::vector<Block> blocks(const project::Project& project, const std::vector<std::size_t>& variants,
                          units::Unit unit, const GivenSheet* given = nullptr);

}  // namespace tenter::emit
