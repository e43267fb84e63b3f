// Ramps from wishes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solve/demands.h"
#include "solve/limits.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// Where a wish decides a size.
struct Binding {
    Demand demand;
    std::size_t variant = 0;
    std::size_t band = 0;
    double width = 0;  ///< viewport, CSS px
    double size = 0;   ///< the role's there, CSS px
    const text::BreakProfile* profile = nullptr;
    Witness by;
    std::string word;                   ///< the last of the line that decides; empty if no copy does
    std::optional<double> withShorter;  ///< what size three letters less in that word would allow, CSS px
};

/// The least change of one wish that lets the conflict's others be kept.
struct Loosening {
    Demand demand;              ///< as it would have to be
    bool out = false;           ///< only leaving it out helps
    bool leavesOthers = false;  ///< wishes outside the conflict then conflict still
    bool unnatural = false;     ///< type too small to read, or roles change places
};

struct Conflict {
    std::vector<Demand> demands;        ///< the smallest set that cannot be kept together
    std::vector<Loosening> loosenings;  ///< for each of them
    bool byReserve = false;             ///< without room for longer copy they could be
    std::vector<Binding> places;        ///< where they meet, for those that have a place
};

/// The loosenings to choose from: those that end every conflict; if none does, those that end this one. None
/// is unnatural.
std::vector<Loosening> offered(const Conflict& conflict);

/// A ramp that bands of several variants share, which begin and end at other widths.
struct SharedRamp {
    std::string role;
    sweep::Interval widths;  ///< viewport, CSS px
};

struct Answer {
    std::optional<project::Project> solved;
    std::vector<Binding> bindings;
    Conflict conflict;               ///< if there is no solution
    bool offGrid = false;            ///< there are sizes, but none were found on the grid
    std::vector<SharedRamp> shared;  ///< made because type is to be the same in every variant
    std::vector<Demand> unkept;      ///< what the solved row breaks as laid out, all the same
};

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: all of them
};

/// `project` with the loosening among its wishes.
project::Project loosened(const project::Project& project, const Loosening& loosening);

/// Sizes for every role that cards use, in `variants` (indices), by the project's wishes. All variants at
/// once share the ramps that the style says; some alone get theirs in the variant.
/// Where bands share a ramp and wishes need it, each gets its own. If type is to be the same in every
/// variant, all are solved, and bands that overlap get one ramp. What near to what is there means says
/// solve/nearest.h; if a row has to grow as a whole by more than a sixth, its type is no guide, and the role
/// with the most copy is brought to what browsers set copy at, if wishes allow. Sizes as large as can be keep
/// at least half of the lead of one role over another, as a proportion.
Answer solve(const project::Project& project, const std::vector<std::size_t>& variants,
             text::ParagraphStore& store, const Options& options = {});

/// A place that a sentence names, in `length` bytes from `start` on; none if it only stands for it.
struct ToldPlace {
    std::size_t start = 0, length = 0;
    Binding at;
    double width = 0;  ///< viewport that shows it, within the project's range, CSS px
    std::string says;  ///< how it decides there
};

/// A sentence of an answer.
struct Told {
    std::string says;
    std::vector<ToldPlace> places;
};

/// The answer, told.
std::vector<Told> told(const project::Project& project, const Answer& answer);

/// The same in sentences alone, one an entry.
std::vector<std::string> sentences(const project::Project& project, const Answer& answer);

}  // namespace tenter::solve
