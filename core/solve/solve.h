// Font size ramps that satisfy a project's wishes at every viewport width.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "solve/size_bounds.h"
#include "solve/wish.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

class Memory;  // memory.h

/// A place where a wish limits a size.
struct Binding {
    Wish wish;
    std::size_t variant = 0;
    std::size_t band = 0;
    double width = 0;  ///< viewport, CSS px
    double size = 0;   ///< of the role there, CSS px; in a conflict, the bound
    const text::BreakProfile* profile = nullptr;
    LimitingText text;
    bool isLower = false;  ///< the wish keeps the size from being smaller, not from being larger
    std::string word;      ///< last word of the limiting line; empty if no line limits
    std::optional<double> sizeWithShorterWord;  ///< the bound if that word had three letters fewer, CSS px
};

/// The smallest change of one wish that resolves a conflict.
struct Relaxation {
    Wish wish;                    ///< as changed
    bool removed = false;         ///< no change of its figure is enough: it must be removed
    bool othersConflict = false;  ///< another conflict remains afterwards
    bool unreadable = false;  ///< the text would be too small to read, or smaller than a role it should lead
};

/// An irreducible infeasible subset of the wishes.
struct Conflict {
    std::vector<Wish> wishes;             ///< cannot be satisfied together; without any one of them they can
    std::vector<Relaxation> relaxations;  ///< for each of them
    bool reserveOnly = false;             ///< without the reserve for longer text they could be satisfied
    std::vector<Binding> places;          ///< where they conflict, for the wishes that have a place
};

/// The relaxations to offer: those that leave no other conflict; if there are none, those that resolve this
/// one. Never an unreadable one.
std::vector<Relaxation> usefulRelaxations(const Conflict& conflict);

/// One ramp for bands of several variants that start and end at different widths.
struct SharedRamp {
    std::string role;
    sweep::Interval widths;  ///< viewport, CSS px
};

struct Answer {
    std::optional<project::Project> solved;
    std::vector<std::size_t> variants;  ///< that were solved, by index
    std::vector<Binding> bindings;
    Conflict conflict;                    ///< if the wishes conflict
    bool offGrid = false;                 ///< sizes exist, but none were found on the grid
    std::vector<SharedRamp> sharedRamps;  ///< for roles with the same size in every variant
    std::vector<Wish> violated;           ///< wishes that the solved row still violates when it is laid out
    bool isCancelled = false;             ///< `Options::cancellation` stopped the work; nothing else is set
};

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: the line-breaking rules of every engine
    /// Stops the work, within 50 ms as a rule. The answer then says that it was cancelled.
    std::stop_token cancellation = {};
    /// What the last run kept for this one; null: nothing is kept.
    Memory* memory = nullptr;
};

/// `project` with `relaxation` applied to its wishes.
project::Project relaxed(const project::Project& project, const Relaxation& relaxation);

/// Sizes for every role that cards use, in `variants` (indices), that satisfy the project's wishes.
///
/// If all variants are solved, ramps of the style stay shared; otherwise the new ramps are set in the
/// variants solved. A shared ramp is split into one per band only if the wishes need it. If a role must have
/// the same size in every variant, all variants are solved, and overlapping bands get one ramp.
///
/// The aim `Nearest` minimises the NearnessObjective. If a row must grow by more than a sixth, its sizes are
/// no guide, and the role with the most text starts at the browsers' default size if the wishes allow that.
/// The aim `Largest` keeps at least half of one role's lead over another, as a proportion.
Answer solve(const project::Project& project, const std::vector<std::size_t>& variants,
             text::ParagraphStore& store, const Options& options = {});

}  // namespace tenter::solve
