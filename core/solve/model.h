// The wishes on a row as constraints of a linear program over the end sizes of its ramps.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "solve/ramps.h"
#include "solve/size_bounds.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// The place that a constraint comes from.
struct Origin {
    std::size_t variant = 0;
    std::size_t band = 0;
    double width = 0;  ///< viewport, CSS px
    std::string role;
    const text::BreakProfile* profile = nullptr;
    LimitingText text;
    LinearExpression size;  ///< the role's size there
    double bound = 0;       ///< of that size, CSS px; only if `text.exists`
};

/// `lower` ≤ `expression` ≤ `upper`, from one wish at one width.
struct WishConstraint {
    LinearExpression expression;
    double lower = -infinity;
    double upper = infinity;
    std::size_t wish = 0;  ///< index of the wish
    Origin origin;
};

/// A role's size at one end of a band: the sizes that the objective is about.
struct BandEnd {
    std::size_t variant = 0;
    std::size_t band = 0;
    std::string role;
    LinearExpression size;
    double currentSize = 0;  ///< CSS px
    bool narrow = false;     ///< the narrow end of the band
};

/// Prepared rows of the variants to be solved. They depend on the project only, not on the new sizes.
class PreparedVariants {
public:
    /// `profile`: null for the line-breaking rules of every engine.
    PreparedVariants(const project::Project& project, const std::vector<std::size_t>& variants,
                     text::ParagraphStore& store, const text::BreakProfile* profile);
    struct Row {
        std::size_t variant = 0;
        std::unique_ptr<layout::PreparedRow> row;
    };
    const project::Project& project;
    std::vector<std::size_t> variants;
    std::vector<Row> rows;  ///< one per variant and profile
};

/// The constraints for a list of wishes.
class Model {
public:
    Model(const PreparedVariants& prepared, const RampSet& ramps, const project::Wishes& projectWishes,
          const std::vector<Wish>& wishes);

    /// `other` with wish `index` replaced by `wish`, which must have the same kind and widths.
    Model(const Model& other, std::size_t index, const Wish& wish);

    [[nodiscard]] const std::vector<WishConstraint>& constraints() const { return constraints_; }
    [[nodiscard]] const std::vector<BandEnd>& bandEnds() const { return bandEnds_; }
    /// Number of variables: the ramps' end sizes, then the smallest and the largest size of each role and
    /// variant with a wish on zoom.
    [[nodiscard]] std::size_t variableCount() const { return variableCount_; }
    [[nodiscard]] const std::vector<VariantGeometry>& geometries() const { return geometries_; }
    /// The step of the size grid, CSS px.
    [[nodiscard]] double gridStep() const { return gridStep_; }
    [[nodiscard]] const Margins& margins() const { return margins_; }
    /// By card, true if the wishes ignore it.
    [[nodiscard]] const std::vector<bool>& ignoredCards() const { return ignoredCards_; }
    /// The role with the most text. The other roles follow it (see NearnessObjective).
    [[nodiscard]] const std::string& mainRole() const { return mainRole_; }

    /// The ends of the bands of `variant`, for `RampSet::split`.
    [[nodiscard]] RampSet::Ends bandWidths(std::size_t variant, const std::string& role) const;

private:
    void prepareGeometries(const PreparedVariants& prepared, const std::vector<Wish>& wishes);
    void addWish(std::size_t index, const Wish& wish);
    void addBounds(std::size_t index, const Wish& wish);
    void addLocked(std::size_t index, const Wish& wish);
    void addRatio(std::size_t index, const Wish& wish);
    void addGrowth(std::size_t index, const Wish& wish);
    void addWithColumn(std::size_t index, const Wish& wish);
    void addAtBreakpoints(std::size_t index, const Wish& wish);
    void addSameInVariants(std::size_t index, const Wish& wish);
    void addZoom(std::size_t index, const Wish& wish);
    void addBandEnds(const std::vector<std::string>& roles);

    const std::vector<LinearRange>* rangesOf(const VariantGeometry& geometry, const std::string& role) const;
    [[nodiscard]] LinearExpression sizeAt(const VariantGeometry& geometry, const LinearRange& range,
                                          const std::string& role, double width) const;
    /// One geometry per variant, for constraints that do not depend on line breaks.
    [[nodiscard]] std::vector<const VariantGeometry*> onePerVariant() const;
    void addConstraint(WishConstraint constraint);

    const RampSet& ramps_;
    std::vector<VariantGeometry> geometries_;
    std::vector<WishConstraint> constraints_;
    std::vector<BandEnd> bandEnds_;
    Margins margins_;
    std::vector<bool> ignoredCards_;
    std::string mainRole_;
    double leastWidth_ = 0, mostWidth_ = 0;  // the project's range, CSS px
    double gridStep_ = 0.01;
    double jumpLimit_ = 0;  // change of size that the checks accept at a breakpoint, CSS px
    std::size_t variableCount_ = 0;
    std::map<std::string, std::size_t> indexByExpression_;  // into constraints_
};

}  // namespace tenter::solve
