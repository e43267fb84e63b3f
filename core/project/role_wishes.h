// The wishes of a project for one role at some widths: looking them up and changing them.
#pragma once

#include <optional>
#include <string>

#include "project/wishes.h"

namespace tenter::project {

/// The range of viewport widths that a wish is for: above `from`, up to `upTo`, CSS px. Unset: no limit.
struct WishWidths {
    std::optional<double> from, upTo;
    friend bool operator==(const WishWidths&, const WishWidths&) = default;
};

/// The wishes that hold for a role at `widths`, with the defaults where the project has none. For all widths:
/// those for all widths. For a range: those that hold in its middle.
RoleWishes wishesFor(const Project& project, const std::string& role, const WishWidths& widths);

/// The project's own entry for exactly these widths; null if it has none.
const RoleWishes* ownWishesFor(const Project& project, const std::string& role, const WishWidths& widths);

/// The same; an entry is added if there is none. An entry for all widths is added before the others, so that
/// those for a range still win.
RoleWishes& ownWishesOrNew(Project& project, const std::string& role, const WishWidths& widths);

/// Removes entries that set no wish, and the wishes as a whole if none is left.
void dropEmptyWishes(Project& project);

/// Values that limit nothing: the ends of the allowed ranges. `ratio` has no such value and is unset.
RoleWishes unlimitedWishes();

}  // namespace tenter::project
