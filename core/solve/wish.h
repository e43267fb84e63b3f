// Single wishes: each one can be satisfied, violated, changed or removed on its own.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"
#include "sweep/pieces.h"

namespace tenter::solve {

class Constraint;  // constraint.h

/// A condition on the sizes of one role over a range of viewport widths.
struct Wish {
    const Constraint* kind = nullptr;  ///< one of the registry (registry.h); null only until it is set
    std::string role;
    std::string other;       ///< of a ratio: the role that it refers to
    double value = 0;        ///< lines, characters, px or a factor; unused by kinds without a figure
    sweep::Interval widths;  ///< viewport widths at which it applies, CSS px
    bool everywhere = true;  ///< `widths` is the project's whole range
    double firstWidth = 0;  ///< smallest whole width at which it applies: `widths` excludes its start, CSS px
    /// Safety margin added by the solver where rounding broke the wish: a share of a line, or px.
    double tolerance = 0;
    friend bool operator==(const Wish&, const Wish&) = default;
};

/// The wishes in `projectWishes`, one by one, for the roles of cards that are not ignored. Every member of
/// `projectWishes` must be set.
std::vector<Wish> singleWishes(const project::Project& project, const project::Wishes& projectWishes);

/// By card, true if `projectWishes` ignores it.
std::vector<bool> ignoredCards(const project::Project& project, const project::Wishes& projectWishes);

/// The wish as a project file states it. With `removed`, the entry that cancels it. A kind without a member
/// of its own, such as the wish on words, gives an entry that sets nothing.
project::RoleWishes toRoleWishes(const Wish& wish, bool removed = false);

/// The condition alone: `at most 2 lines`, `at least 15 px`.
std::string condition(const Wish& wish);

/// The whole wish: `heading in at most 2 lines`, `body at least 15 px at 981–1320 px`.
std::string describe(const Wish& wish);

/// `phrase` with the whole widths at which the wish applies, `… at 981–1320 px`; `phrase` itself for every
/// width.
std::string atItsWidths(const std::string& phrase, const Wish& wish);

/// A role's name at the start of a sentence or in a table: `Heading`.
std::string roleLabel(const std::string& role);

}  // namespace tenter::solve
