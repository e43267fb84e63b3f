// A place in the row: a card, or a part of a card.
#pragma once

#include <optional>
#include <tuple>

#include "project/project.h"

namespace tenter::desktop {

/// Indices in the project.
struct Place {
    std::size_t card = 0;
    std::optional<std::size_t> part;  ///< in that card; empty: the card as a whole
    std::size_t row = 0;

    [[nodiscard]] static Place of(project::PartRef part) { return {part.card, part.part, part.row}; }
    /// The part; empty if the place is a card.
    [[nodiscard]] std::optional<project::PartRef> partRef() const {
        return part ? std::optional(project::PartRef{card, *part, row}) : std::nullopt;
    }
    friend bool operator==(const Place&, const Place&) = default;
    /// By row, then card, then part; a card comes before its parts.
    friend bool operator<(const Place& a, const Place& b) {
        return std::tie(a.row, a.card, a.part) < std::tie(b.row, b.card, b.part);
    }
};

}  // namespace tenter::desktop
