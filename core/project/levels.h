// Where the parts of neighbouring cards stand in line: the one rule, which layout and stylesheet both follow.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// True for a part that an automatic top margin sends to its card's end.
bool standsAtEnd(const Part& part, const Settings& settings);

/// The part that stands beside the rest of its card: the first picture, where the settings say so.
std::optional<std::size_t> partBeside(const Card& card, const Settings& settings);

/// The levels of a row whose cards are levelled by subgrid; `settings` are resolved.
///
/// Each part takes the level its order among the card's stacked parts gives it. What stands at a card's end
/// takes the last level instead, but only if that is so of a role wherever it stands: if in some card such a
/// part has others below it, none does, since a stylesheet speaks of roles, not of single parts.
struct Levels {
    std::size_t count = 1;     ///< the most parts any card stacks, at least 1
    bool endsTakeLast = true;  ///< what stands at a card's end takes the last level
    static Levels of(const Project& project, const Settings& settings);
    /// The level of each part of `card`; empty for the part that stands beside the others.
    [[nodiscard]] std::vector<std::optional<std::size_t>> in(const Card& card,
                                                             const Settings& settings) const;
};

}  // namespace tenter::project
