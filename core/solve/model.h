// The wishes on a row as rows of a linear program over the end sizes of its ramps.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <utility>
#include <vector>

#include "solve/memory.h"
#include "solve/ramps.h"
#include "solve/size_bounds.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// Largest change of a size by rounding to the emitted numbers, CSS px.
inline constexpr double emitRounding = 0.01;

/// The place that a row of the linear program comes from.
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
struct ConstraintRow {
    LinearExpression expression;
    double lower = -infinity;
    double upper = infinity;
    std::size_t wish = 0;             ///< index of the wish
    std::size_t expressionIndex = 0;  ///< equal for rows of the same expression
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
    /// `profile`: null for the line-breaking rules of every engine. `cancellation` stops this and all work
    /// that uses it: `Cancelled` is thrown. `memory`: null for none.
    PreparedVariants(const project::Project& project, const std::vector<std::size_t>& variants,
                     text::ParagraphStore& store, const text::BreakProfile* profile,
                     std::stop_token cancellation = {}, Memory* memory = nullptr);
    const project::Project& project;
    std::vector<std::size_t> variants;
    std::stop_token cancellation;
    Memory* memory;
    [[nodiscard]] const PreparedVariantRows& rows() const { return *rows_; }  ///< one per variant and profile

private:
    [[nodiscard]] std::shared_ptr<const PreparedVariantRows> prepare(text::ParagraphStore& store,
                                                                     const text::BreakProfile* profile) const;

    std::shared_ptr<const PreparedVariantRows> rows_;
};

/// The rows for a list of wishes. Making one throws `Cancelled`.
class Model {
public:
    Model(const PreparedVariants& prepared, const RampSet& ramps, const project::Wishes& projectWishes,
          const std::vector<Wish>& wishes);

    /// `other` with wish `index` replaced by `wish`, which must have the same kind and widths.
    Model(const Model& other, std::size_t index, const Wish& wish);

    [[nodiscard]] const std::vector<ConstraintRow>& rows() const { return rows_; }
    /// Number of different expressions in `rows()`.
    [[nodiscard]] std::size_t expressionCount() const { return expressions_.size(); }
    [[nodiscard]] const std::vector<BandEnd>& bandEnds() const { return bandEnds_; }
    /// Number of variables: the ramps' end sizes, then the auxiliary variables of wishes.
    [[nodiscard]] std::size_t variableCount() const { return variableCount_; }
    [[nodiscard]] const std::vector<VariantGeometry>& geometries() const { return geometries_; }
    /// The step of the size grid, CSS px.
    [[nodiscard]] double gridStep() const { return gridStep_; }
    /// `size` in the rounded numbers of the stylesheet, CSS px. Where the page has several root sizes, or a
    /// fluid one, only a proof by layout knows them: then `size` itself.
    [[nodiscard]] double printedSize(double size) const;
    [[nodiscard]] const Margins& margins() const { return margins_; }
    /// By card, true if the wishes ignore it.
    [[nodiscard]] const std::vector<bool>& ignoredCards() const { return ignoredCards_; }
    [[nodiscard]] const RampSet& ramps() const { return ramps_; }
    /// The largest viewport width of the project, CSS px.
    [[nodiscard]] double mostWidth() const { return mostWidth_; }
    /// Change of size that the checks accept at a breakpoint, CSS px.
    [[nodiscard]] double jumpLimit() const { return jumpLimit_; }
    [[nodiscard]] const std::stop_token& cancellation() const { return cancellation_; }
    /// The role with the most text. The other roles follow it (see NearnessObjective).
    [[nodiscard]] const std::string& mainRole() const { return mainRole_; }

    /// The bounds that `wish` sets for the size of `role` (an index into the roles of the row).
    [[nodiscard]] std::vector<SizeBound> bounds(const VariantGeometry& geometry, std::uint32_t role,
                                                const Wish& wish) const;
    /// The linear ranges of `role`; null if the row does not have it. Empty if its sizes are not solved.
    [[nodiscard]] static const std::vector<LinearRange>* rangesOf(const VariantGeometry& geometry,
                                                                  const std::string& role);
    /// Size of `role` at viewport width `width` (CSS px) of `range`.
    [[nodiscard]] LinearExpression sizeAt(const VariantGeometry& geometry, const LinearRange& range,
                                          const std::string& role, double width) const;
    /// One geometry per variant, for wishes that do not depend on line breaks.
    [[nodiscard]] std::vector<const VariantGeometry*> onePerVariant() const;

    /// The ends of the bands of `variant`, for `RampSet::split`.
    [[nodiscard]] RampSet::Ends bandWidths(std::size_t variant, const std::string& role) const;

private:
    void prepareGeometries(const PreparedVariants& prepared, const std::vector<Wish>& wishes);
    void addWish(std::size_t index, const Wish& wish);
    void addBandEnds(const std::vector<std::string>& roles);

    friend class RowAdder;
    void addRow(ConstraintRow row);
    std::size_t addVariable() { return variableCount_++; }

    const RampSet& ramps_;
    std::vector<VariantGeometry> geometries_;
    std::vector<ConstraintRow> rows_;
    std::vector<BandEnd> bandEnds_;
    Margins margins_;
    std::vector<bool> ignoredCards_;
    std::string mainRole_;
    double leastWidth_ = 0, mostWidth_ = 0;  // the project's range, CSS px
    double gridStep_ = 0.01;
    double rem_ = 0;  // CSS px; 0 if the stylesheet's sizes are not in rem, or the root has several sizes
    double jumpLimit_ = 0;
    std::stop_token cancellation_;
    Memory* memory_;
    std::size_t variableCount_ = 0;
    /// Variables with rounded coefficients.
    using ExpressionKey = std::vector<std::pair<std::size_t, long long>>;
    std::map<ExpressionKey, std::size_t> expressions_;
    std::map<std::pair<std::size_t, std::size_t>, std::size_t> rowOf_;  // by wish and expression, into rows_
};

}  // namespace tenter::solve
