// The largest and smallest size that text and boxes allow for one wish, as linear functions of the width.
#pragma once

#include <vector>

#include "solve/line_shapes.h"
#include "solve/wish.h"

namespace tenter::solve {

/// A variant prepared under one set of line-breaking rules, with the linear ranges of the roles to be solved.
struct VariantGeometry {
    std::size_t variant = 0;
    const layout::PreparedRow* row = nullptr;
    std::vector<std::vector<LinearRange>> roles;  ///< by index into `row->roles()`; empty: not solved
};

/// The text that sets a bound.
struct LimitingText {
    std::size_t card = 0, part = 0;
    LineShape line;       ///< the line or word that is as wide as its box
    bool exists = false;  ///< false: the bound is a figure of the wish itself
};

/// An upper or lower bound on a size, CSS px.
struct Bound {
    double size = 0;
    LimitingText text;
};

/// A bound that is linear over the viewport widths above `widths.from`, up to `widths.to`.
struct SizeBound {
    bool upper = true;
    std::size_t range = 0;  ///< index of the role's linear range
    sweep::Interval widths;
    Bound start, end;
};

/// Shares of a line's width to keep free.
struct Margins {
    double slack = 0;
    double narrowSlack = 0;  ///< instead of `slack` below `narrowWidths`
    double reserve = 0;      ///< for longer text
    friend bool operator==(const Margins&, const Margins&) = default;
};

/// Viewport width, CSS px, below which `narrowSlack` applies.
inline constexpr double narrowWidths = 500;

class Model;  // model.h

/// The bounds that `wish`, of a kind that bounds sizes, sets for its role, in order of width. At each width
/// all of them hold. Margins and cards to ignore are those of `model`. With `shortened`, the text at
/// `shortenedAt` is measured with that word shorter. Throws `Cancelled`.
std::vector<SizeBound> sizeBounds(const Model& model, const VariantGeometry& geometry, std::uint32_t role,
                                  const Wish& wish, const ShortenedWord* shortened = nullptr,
                                  const LimitingText* shortenedAt = nullptr);

}  // namespace tenter::solve
