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
/// Of all places' weight, from what on the row does.
inline constexpr double mostOfRow = 0.28;
/// What it costs that the ends of a band are not the same times what they were, beside what it costs that one
/// is another size; and what it costs of the two sides of a breakpoint.
inline constexpr double bent = 0.3;
inline constexpr double stepped = 0.15;
/// What the largest change of the role with the most copy costs, beside the weight of the whole row.
inline constexpr double largestChange = 0.2;

/// How far sizes are from those there are, as a cost. A size is looked at as times what it was. Those of one
/// place (an end of a band) are to be the same times what they were, and so are all places: if a few sizes
/// have to move, they move alone; if most of a place have to, the place does, and if most places have to,
/// the whole row, so that proportions between roles and between widths stay. The role with the most copy
/// leads: others follow it, it does not follow them.
class Nearness {
public:
    /// Adds what is needed to `programme`, at a cost of `weight` for all sizes of a place being once more
    /// what they are.
    Nearness(Programme& programme, const Model& model, double weight);

    /// Times what it was, the row as a whole; after `programme` has been solved.
    [[nodiscard]] double scale(const Programme& programme) const { return programme.value(scale_); }
    /// Makes `scale` what the row as a whole is to come to, instead of once what it was.
    void aimAt(Programme& programme, double scale) const;

    /// Once `programme` has been solved: makes it costly that leading type which had to move steps by more
    /// than a fifth at a breakpoint; false if none does. A step that is there and need not go is left alone.
    bool softenSteps(Programme& programme) const;

private:
    /// Of the leading role, from one band to the next.
    struct Step {
        Point below, above;
        double weight = 0;
    };
    struct Place {
        std::size_t column = 0;  ///< times what it was
        double weight = 0;
    };
    void addPlaces(Programme& programme, const Model& model, double weight);
    void addShapes(Programme& programme, const Model& model, double weight);
    void addLargest(Programme& programme, const Model& model) const;

    std::map<std::string, double> shares_;  // of a place's weight, by role
    double whole_ = 0;                      // weight of all places
    std::vector<Step> steps_;
    std::size_t scale_ = 0;  // column
    Programme::Distance fromAim_;
};

}  // namespace tenter::solve
