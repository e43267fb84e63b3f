#include "solve/solution.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "solve/constraint.h"
#include "solve/nearness_objective.h"

namespace tenter::solve {

namespace {

/// The range of sizes that a project file may hold, CSS px.
constexpr double leastSize = 1;
constexpr double mostSize = 400;
/// Objective weight that keeps sizes near the current ones when the aim leaves them open.
constexpr double anchorWeight = 1e-3;
/// Penalty, relative to the gain from growing, for each share of its size by which a role exceeds half of
/// another role's lead. More than one role gains, less than all other roles together gain.
constexpr double lostLeadPenalty = 3;
/// Ratio of two sizes from which one role counts as larger than the other. A button label that is slightly
/// larger than the body may become smaller than it.
constexpr double leadingRatio = 1.12;
/// A proportion of two roles that varies over a variant by more than this factor is not kept.
constexpr double steadyFactor = 1.7;
/// The size to start from when the current sizes are no guide, CSS px: the initial value of CSS `font-size`
/// in browsers (CSS Fonts 4, `medium`; 16 px by common practice, no source).
constexpr double browserDefaultSize = 16;
/// A dual value above this marks a binding constraint.
constexpr double dualTolerance = 1e-7;
/// A value of the linear program within this of a size is that size, CSS px.
constexpr double exactValue = 1e-9;
/// Upper limit of linear programs solved to move the sizes onto the grid.
constexpr int maxSolves = 3000;

using Status = LinearProgram::Status;

/// The constraints of a model in a linear program. Rows about the same expression make one constraint: only
/// the tightest of their bounds can hold a size.
class ModelConstraints {
public:
    /// Adds the variables of `model`, and the rows of the wishes that are not `removed`, to `program`.
    ModelConstraints(LinearProgram& program, const Model& model, const RampSet& ramps,
                     const std::vector<bool>& removed) {
        for (std::size_t variable = 0; variable < model.variableCount(); ++variable) {
            const bool isSize = variable < ramps.variableCount();
            program.addVariable(isSize ? leastSize : 0, isSize ? mostSize : infinity);
        }
        constexpr std::size_t none = -1;
        std::vector<std::size_t> indexOf(model.expressionCount(), none);
        for (std::size_t row = 0; row < model.rows().size(); ++row) {
            const ConstraintRow& added = model.rows()[row];
            if (!removed.empty() && removed[added.wish]) continue;
            std::size_t& index = indexOf[added.expressionIndex];
            if (index == none) {
                index = constraints_.size();
                constraints_.push_back({&added.expression});
            }
            Constraint& constraint = constraints_[index];
            if (added.lower > constraint.lower) {
                constraint.lower = added.lower;
                constraint.lowerRow = row;
            }
            if (added.upper < constraint.upper) {
                constraint.upper = added.upper;
                constraint.upperRow = row;
            }
        }
        for (Constraint& each : constraints_)
            // GLPK requires ordered bounds. A contradictory constraint is added as two.
            each.index =
                program.addConstraint(*each.expression, each.lower, std::max(each.lower, each.upper));
        for (const Constraint& each : constraints_)
            if (each.lower > each.upper) program.addConstraint(*each.expression, -infinity, each.upper);
    }

    /// Marks the rows of the model that hold a size in the optimal solution of `program`.
    void markBinding(const LinearProgram& program, std::vector<bool>& binding) const {
        for (const Constraint& each : constraints_) {
            const double dual = program.dualValue(each.index);
            if (std::abs(dual) > dualTolerance) binding[dual > 0 ? each.lowerRow : each.upperRow] = true;
        }
    }

private:
    struct Constraint {
        const LinearExpression* expression = nullptr;
        double lower = -infinity, upper = infinity;
        std::size_t lowerRow = 0, upperRow = 0;  ///< rows of the model that set the bounds
        std::size_t index = 0;                   ///< in the program
    };
    std::vector<Constraint> constraints_;
};

class SizeSearch {
public:
    SizeSearch(const Model& model, const RampSet& ramps, const std::vector<Wish>& wishes, double step)
        : model_(model),
          ramps_(ramps),
          wishes_(wishes),
          step_(step),
          program_(model.cancellation()),
          constraints_(program_, model, ramps, {}),
          limits_(ramps.variableCount(), {-infinity, infinity}) {
        for (const ConstraintRow& row : model.rows()) {
            if (row.expression.size() != 1 || row.expression.front().coefficient != 1) continue;
            if (row.expression.front().variable >= limits_.size()) continue;
            auto& [least, most] = limits_[row.expression.front().variable];
            least = std::max(least, row.lower);
            most = std::min(most, row.upper);
        }
    }

    std::optional<Solution> run(project::Aim aim) {
        binding_.assign(model_.rows().size(), false);
        if (!minimiseFor(aim)) return std::nullopt;
        constraints_.markBinding(program_, binding_);
        for (std::size_t variable = 0; variable < ramps_.variableCount(); ++variable)
            if (!isLocked(variable)) order_.push_back(variable);
        while (!dive(0)) {
            if (!blocked_ || solvesLeft_ < 0) {
                if (branchAndBound()) break;
                return std::nullopt;
            }
            // The variable that had no feasible grid value left is rounded before the others.
            std::erase(order_, *blocked_);
            order_.insert(order_.begin(), *blocked_);
            ++exhaustive_;
            blocked_.reset();
        }
        std::vector<double> sizes;
        for (std::size_t variable = 0; variable < ramps_.variableCount(); ++variable)
            sizes.push_back(isLocked(variable) ? ramps_.currentSize(variable)
                                               : onGrid(program_.value(variable)));
        return Solution{std::move(sizes), std::move(binding_)};
    }

private:
    /// Sets the objective for `aim` and minimises it; false if the model is infeasible.
    bool minimiseFor(project::Aim aim) {
        const bool nearest = aim == project::Aim::Nearest;
        if (aim == project::Aim::Largest) maximiseSizes();
        if (aim == project::Aim::Calmest) minimiseChanges();
        const NearnessObjective nearness(program_, model_, nearest ? 1 : anchorWeight);
        for (std::size_t variable = 0; variable < ramps_.variableCount(); ++variable)
            program_.startFrom(
                program_.addDeviation({{variable, 1 / ramps_.currentSize(variable)}}, 1, anchorWeight),
                variable);
        if (program_.minimise() != Status::Optimal) return false;
        if (!nearest) return true;
        if (nearness.raiseSmallRows(program_, browserDefaultSize) && program_.minimise() != Status::Optimal)
            return false;
        return !nearness.penaliseSteps(program_, browserDefaultSize) ||
               program_.minimise() == Status::Optimal;
    }

    /// Penalises the loss of more than half of one role's lead over another, as a proportion. Without this, a
    /// kicker that no wish bounds would become as large as body type that its measure bounds. Proportions
    /// that vary over the widths are not kept.
    void keepLeads() {
        for (const BandEnd& smaller : model_.bandEnds()) {
            for (const BandEnd& larger : model_.bandEnds()) {
                if (!areTogether(smaller, larger)) continue;
                const double proportion = smaller.currentSize / larger.currentSize;
                if (leadingRatio * proportion > 1 || !isSteady(smaller, larger)) continue;
                const std::size_t excess = program_.addVariable(0, infinity, lostLeadPenalty);
                LinearExpression expression = scaled(
                    difference(smaller.size, larger.size, std::sqrt(proportion)), 1 / smaller.currentSize);
                expression.push_back({excess, -1});
                program_.addConstraint(expression, -infinity, 0);
            }
        }
    }

    static bool areTogether(const BandEnd& one, const BandEnd& other) {
        return one.variant == other.variant && one.band == other.band && one.narrow == other.narrow &&
               one.role != other.role;
    }

    /// True if the proportion of two roles is about the same all over their variant.
    [[nodiscard]] bool isSteady(const BandEnd& one, const BandEnd& other) {
        auto& [least, most] = proportions_[{one.variant, one.role, other.role}];
        if (most == 0) {
            least = infinity;
            for (const BandEnd& here : model_.bandEnds())
                for (const BandEnd& beside : model_.bandEnds()) {
                    const bool same =
                        here.variant == one.variant && here.role == one.role && beside.role == other.role;
                    if (!same || !areTogether(here, beside)) continue;
                    least = std::min(least, here.currentSize / beside.currentSize);
                    most = std::max(most, here.currentSize / beside.currentSize);
                }
        }
        return most <= steadyFactor * least;
    }

    /// Maximises the sum of the sizes at all band ends, each relative to its current size.
    void maximiseSizes() {
        std::vector<double> coefficients(model_.variableCount(), 0);
        for (const BandEnd& end : model_.bandEnds())
            for (const Term& term : end.size)
                coefficients[term.variable] -= term.coefficient / end.currentSize;
        for (std::size_t variable = 0; variable < coefficients.size(); ++variable)
            program_.setObjectiveCoefficient(variable, coefficients[variable]);
        keepLeads();
    }

    /// Minimises the sum of changes from each band end to the next of the same role, relative to the size.
    void minimiseChanges() {
        const std::vector<BandEnd>& ends = model_.bandEnds();
        for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
            const BandEnd& a = ends[i];
            const BandEnd& b = ends[i + 1];
            if (a.role != b.role || a.variant != b.variant) continue;
            program_.addDeviation(scaled(difference(b.size, a.size), 1 / a.currentSize), 0, 1);
        }
    }

    /// Diving heuristic: fixes the variables of `order_` from `index` on to grid values, nearest first, so
    /// that the program stays feasible. The first `exhaustive_` variables try every combination of nearby
    /// values. The others take the first feasible value; the first one without any becomes `blocked_`.
    bool dive(std::size_t index) {
        if (index == order_.size()) return true;
        const std::size_t variable = order_[index];
        const double value = program_.value(variable);
        const double nearest = onGrid(value);
        const double step = value >= nearest ? step_ : -step_;
        for (const double size :
             {nearest, nearest + step, nearest - step, nearest + 2 * step, nearest - 2 * step}) {
            if (size < leastSize || size > mostSize || isPrintedBeyondLimits(variable, size)) continue;
            if (--solvesLeft_ < 0) return false;
            program_.setVariableBounds(variable, size, size);
            // A solution that already has this value stays optimal.
            if (std::abs(size - value) <= exactValue || program_.minimise() == Status::Optimal) {
                if (dive(index + 1)) return true;
                if (blocked_ || solvesLeft_ < 0) break;
            }
            program_.setVariableBounds(variable, leastSize, mostSize);
        }
        program_.setVariableBounds(variable, leastSize, mostSize);
        if (index >= exhaustive_ && !blocked_) blocked_ = variable;
        if (index == 0) program_.minimise();
        return false;
    }

    /// True if a wish on the size allows `size`, but not its rounded number in the stylesheet.
    [[nodiscard]] bool isPrintedBeyondLimits(std::size_t variable, double size) const {
        const double printed = model_.printedSize(size);
        return printed < limits_[variable].first - exactValue ||
               printed > limits_[variable].second + exactValue;
    }

    /// Searches all grid values, for when diving finds none.
    bool branchAndBound() {
        for (const std::size_t variable : order_) {
            const std::size_t multiple =
                program_.addIntegerVariable(std::ceil(leastSize / step_), std::floor(mostSize / step_));
            program_.addConstraint({{variable, 1}, {multiple, -step_}}, 0, 0);
        }
        if (program_.minimiseInteger() != Status::Optimal) return false;
        std::vector<double> sizes;
        for (const std::size_t variable : order_)
            sizes.push_back(onGrid(program_.value(variable)));
        for (std::size_t i = 0; i < order_.size(); ++i)
            program_.setVariableBounds(order_[i], sizes[i], sizes[i]);
        return program_.minimise() == Status::Optimal;
    }

    [[nodiscard]] double onGrid(double size) const {
        return std::round(std::round(size / step_) * step_ * 1e4) / 1e4;
    }

    [[nodiscard]] bool isLocked(std::size_t variable) const {
        return std::ranges::any_of(ramps_.all(), [&](const RampVariables& ramp) {
            return (ramp.fromVariable == variable || ramp.toVariable == variable) &&
                   std::ranges::any_of(wishes_, [&](const Wish& wish) {
                       return wish.kind->traits.locksSizes && wish.role == ramp.role;
                   });
        });
    }

    const Model& model_;
    const RampSet& ramps_;
    const std::vector<Wish>& wishes_;
    double step_;  // of the grid, CSS px
    LinearProgram program_;
    ModelConstraints constraints_;
    /// By variable, the smallest and the largest size that wishes on this size alone allow, CSS px.
    std::vector<std::pair<double, double>> limits_;
    std::vector<std::size_t> order_;  // variables in the order in which they are rounded
    std::size_t exhaustive_ = 0;      // of them try every combination
    std::optional<std::size_t> blocked_;
    std::vector<bool> binding_;
    /// Smallest and largest proportion, by variant and two roles.
    std::map<std::tuple<std::size_t, std::string, std::string>, std::pair<double, double>> proportions_;
    int solvesLeft_ = maxSolves;
};

}  // namespace

bool isFeasible(const Model& model, const RampSet& ramps, const std::vector<bool>& removed) {
    LinearProgram program(model.cancellation());
    const ModelConstraints constraints(program, model, ramps, removed);
    return program.minimise() == Status::Optimal;
}

std::optional<Solution> optimalSizes(const Model& model, const RampSet& ramps, project::Aim aim,
                                     const std::vector<Wish>& wishes, double step) {
    return SizeSearch(model, ramps, wishes, step).run(aim);
}

std::vector<const ConstraintRow*> violatedConstraints(const Model& model, const RampSet& ramps,
                                                      const std::vector<bool>& removed) {
    LinearProgram program(model.cancellation());
    for (std::size_t variable = 0; variable < model.variableCount(); ++variable) {
        const bool isSize = variable < ramps.variableCount();
        program.addVariable(isSize ? leastSize : 0, isSize ? mostSize : infinity);
    }
    // Every constraint may be violated by this much. Its minimum is the smallest possible violation.
    const std::size_t violation = program.addVariable(0, infinity, 1);
    std::vector<std::pair<std::size_t, const ConstraintRow*>> relaxed;
    for (const ConstraintRow& constraint : model.rows()) {
        if (!removed.empty() && removed[constraint.wish]) continue;
        LinearExpression expression = constraint.expression;
        expression.push_back({violation, 1});
        if (!std::isinf(constraint.lower))
            relaxed.emplace_back(program.addConstraint(expression, constraint.lower, infinity), &constraint);
        expression.back().coefficient = -1;
        if (!std::isinf(constraint.upper))
            relaxed.emplace_back(program.addConstraint(expression, -infinity, constraint.upper), &constraint);
    }
    std::vector<const ConstraintRow*> violated;
    if (program.minimise() != Status::Optimal) return violated;
    std::vector<double> largestDual;
    for (const auto& [index, constraint] : relaxed) {
        const double dual = std::abs(program.dualValue(index));
        if (constraint->wish >= violated.size()) {
            violated.resize(constraint->wish + 1, nullptr);
            largestDual.resize(constraint->wish + 1, 1e-9);
        }
        if (dual <= largestDual[constraint->wish]) continue;
        largestDual[constraint->wish] = dual;
        violated[constraint->wish] = constraint;
    }
    return violated;
}

}  // namespace tenter::solve
