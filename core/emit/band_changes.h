// The rules of the widest viewports, and the changes at narrower ones.
#pragma once

#include <optional>
#include <vector>

#include "emit/given_sheet.h"
#include "emit/rule.h"
#include "project/project.h"

namespace tenter::emit {

/// The rules of one variant in one block.
struct VariantRules {
    std::size_t variant = 0;
    int columns = 1;
    std::optional<double> above;  ///< they hold above this viewport width, CSS px; empty: at every width
    /// All variants have the same rules in the same order. Rules without declarations are not printed.
    Rules rules;
};

/// A block of the stylesheet: the base, or one media query.
struct Block {
    std::optional<double> upTo;  ///< CSS px; empty: the base, for the widest viewports
    std::vector<VariantRules> variants;
};

/// The base, then a block for each breakpoint, from the widest to the narrowest. A block contains only the
/// changes from the next wider viewports. A breakpoint without changes has no block. A page range with
/// another root size has a breakpoint, too: there, other numbers of rem give the same font sizes.
std::vector<Block> blocks(const project::Project& project, const std::vector<std::size_t>& variants,
                          units::Unit unit, const GivenSheet* given = nullptr);

}  // namespace tenter::emit
