// What sizes are nearest to those there are: as a programme's cost.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "solve/model.h"

namespace tenter::solve {

// How near sizes are, by shares. All found by trying on rows spoilt on purpose; no source.
/// Of a place's weight, what the role with the most copy has; the others share the rest.
inline constexpr double leadingShare = 0.75;
/// Of a place's weight, from what on the place moves.
inline constexpr double mostOfPlace = 0.5;
/// Of all places' weight, from what on the row does, in its variant.
inline constexpr double mostOfRow = 0.28;
/// What it costs that the ends of a band are not the same times what they were, beside what it costs that one
/// is another size; and what it costs of the two sides of a breakpoint.
inline constexpr double bent = 0.3;
inline constexpr double stepped = 0.15;
/// What the largest change of the role with the most copy costs, beside the weight of the whole row.
inline constexpr double largestChange = 0.2;

/// How far sizes are from those there are, as a cost. A size is looked at as times what it was. Those of one
/// place (an end of a band) are to be the same times what they were, and so are all places of a variant: if a
/// few sizes have to move, they move alone; if most of a place have to, the place does, and if most places
/// have to, the whole row, so that proportions between roles and between widths stay. The role with the most
/// copy leads: others follow it, it does not follow them.
class Nearness {
public:
    /// Adds what is needed to `programme`, at a cost of `weight` for all sizes of a place being once more
    /// what they are.
    Nearness(Programme& programme, const Model& model, double weight);

    // The next two look at what `programme` has found, and change its cost: false if there is no need.

    /// A row that has to grow by more than a sixth is no guide to how large: its leading role is to begin at
    /// `size` (CSS px), if that is more still.
    bool beginAt(Programme& programme, double size) const;
    /// Leading type that had to move is to step by little at a breakpoint, and to grow over a band by little
    /// or by no more than it did. A band whose ends had to move against each other was no guide at all: it is
    /// to grow by little, from `size` (CSS px). What is there and need not go is left alone.
    bool soften(Programme& programme, double size) const;

private:
    /// Two sizes of the leading role, of one band or on both sides of a breakpoint.
    struct Beside {
        Point below, above;
        double weight = 0;
    };
    struct Place {
        std::size_t column = 0;  ///< times what it was
        double weight = 0;
    };
    /// A variant as a whole.
    struct Row {
        std::size_t column = 0;  ///< times what it was
        double weight = 0;
        double least = unbounded;  ///< size of the leading role now, CSS px
        Programme::Distance fromNow;
    };
    void addPlaces(Programme& programme, const Model& model, double weight);
    void addShapes(Programme& programme, const Model& model, double weight);
    void addLargest(Programme& programme, const Model& model) const;

    std::map<std::string, double> shares_;  // of a place's weight, by role
    std::map<std::size_t, Row> rows_;       // by variant
    std::vector<Beside> beside_;
};

}  // namespace tenter::solve
