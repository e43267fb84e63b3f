// How far a change of the project moves boxes.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::remedy {

/// The farthest that an edge of a box moves, of all boxes of cards and parts, over the widths of `Places`.
struct Move {
    double distance = 0;  ///< CSS px; 0: nothing moves
    double width = 0;     ///< viewport width at which it does, CSS px
};

/// The boxes of a row at one width.
struct PlacesAt {
    double width = 0;                ///< of the viewport, CSS px
    std::vector<layout::Box> boxes;  ///< cards, then parts
};
/// By rising width.
using Places = std::vector<PlacesAt>;

/// The boxes of variant `variant` at both sides of each breakpoint and at every fourth px. `as`: at the
/// widths of `as` instead. `profile`: the default one if null.
Places placesOf(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                const text::BreakProfile* profile, const Places* as = nullptr);

/// The farthest move between two sets of boxes, at the widths that both have.
Move farthestMove(const Places& before, const Places& after);

}  // namespace tenter::remedy
