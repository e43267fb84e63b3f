// Wishes one by one: each can hold or not, and be left out, by itself.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"
#include "sweep/pieces.h"

namespace tenter::solve {

/// `Words`: no word is wider than its box, which is always wished.
enum class Kind {
    Lines,
    LeastMeasure,
    MostMeasure,
    LeastSize,
    MostSize,
    Locked,
    Ratio,
    LeastRatio,
    Growth,
    WithColumn,
    Zoom,
    SameAtBreakpoints,
    ProportionalAtBreakpoints,
    SameInVariants,
    Words
};

struct Demand {
    Kind kind = Kind::Words;
    std::string role;
    std::string other;  ///< of a ratio: to which role
    double value = 0;   ///< lines, characters, px, times; none for Locked, WithColumn, SameInVariants, Words
    sweep::Interval widths;  ///< viewport widths it holds for, CSS px
    bool everywhere = true;  ///< those are the project's whole range
    /// By how much more than wished it is to hold, since rounding took that much: a share of a line, or px.
    double spare = 0;
};

/// What `wishes` ask of the roles that cards in account use. `wishes` has every member set.
std::vector<Demand> demandsOf(const project::Project& project, const project::Wishes& wishes);

/// By card, true if it is left out of account.
std::vector<bool> withoutOf(const project::Project& project, const project::Wishes& wishes);

/// A demand as a project says it; one that is left out, as what takes it back. `Words` cannot be taken back.
project::RoleWishes asWish(const Demand& demand, bool out = false);

/// As a wish: `the heading in at most 2 lines`, `body type no smaller than 15 px from 981 px on`.
std::string said(const Demand& demand);

}  // namespace tenter::solve
