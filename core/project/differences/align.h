// Which entry of a list is which entry of another list.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace tenter::project {

/// The pairs of two lists, and what is only in one of them.
struct Alignment {
    struct Pair {
        std::size_t before = 0;  ///< index in the old list
        std::size_t after = 0;   ///< index in the new list
        bool moved = false;      ///< true if it changed places with another pair
    };
    std::vector<Pair> pairs;           ///< in the order of the new list
    std::vector<std::size_t> removed;  ///< indices in the old list
    std::vector<std::size_t> added;    ///< indices in the new list
};

/// Pairs the entries that are most alike, the nearest first. `likeness` of an old and a new entry is from 0
/// (never a pair) to 1 (the same). With `samePlace`, entries at the same index are pairs if nothing else
/// pairs them.
Alignment align(std::size_t before, std::size_t after,
                const std::function<double(std::size_t, std::size_t)>& likeness, bool samePlace);

}  // namespace tenter::project
