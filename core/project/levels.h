// The levels on which the parts of neighbouring cards are aligned. Layout and stylesheet both use this rule.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// True for a part whose automatic top margin moves it to the end of its card.
bool standsAtEnd(const Part& part, const Settings& settings);

/// The index of the part that is beside the other parts of its card: the first picture, if the settings say
/// so.
std::optional<std::size_t> partBeside(const Card& card, const Settings& settings);

/// The levels of a row whose parts are aligned by subgrid. `settings` are resolved.
///
/// The level of a part is its index among the stacked parts of its card. A part at the end of its card has
/// the last level instead. If in some card such a part has others below it, no part has the last level for
/// that reason, because a stylesheet can address roles but not single parts.
struct Levels {
    std::size_t count = 1;     ///< the largest number of stacked parts in a card, at least 1
    bool endsTakeLast = true;  ///< a part at the end of its card has the last level
    static Levels of(const Project& project, const Settings& settings);
    /// The level of each part of `card`; empty for the part that is beside the others.
    [[nodiscard]] std::vector<std::optional<std::size_t>> in(const Card& card,
                                                             const Settings& settings) const;
};

}  // namespace tenter::project
