// Linear programs: variables and constraints with bounds, a linear objective that is minimised. Solved by
// GLPK.
#pragma once

#include <cstddef>
#include <limits>
#include <memory>
#include <stop_token>
#include <vector>

namespace tenter::solve {

/// As a bound: there is none on that side.
inline constexpr double infinity = std::numeric_limits<double>::infinity();

/// One variable of a linear program, by index, with its coefficient.
struct Term {
    std::size_t variable = 0;
    double coefficient = 0;
    friend bool operator==(const Term&, const Term&) = default;
};
/// A linear combination of variables; each variable appears at most once.
using LinearExpression = std::vector<Term>;
/// `minuend − factor · subtrahend`.
LinearExpression difference(LinearExpression minuend, const LinearExpression& subtrahend, double factor = 1);
LinearExpression scaled(LinearExpression expression, double factor);

/// A linear program, or a mixed-integer one. It can be changed and solved again, warm-started from the last
/// basis. Variables and constraints are indexed from 0. An object must stay on the thread that created it
/// because GLPK's memory is per thread.
class LinearProgram {
public:
    /// A stop requested by `cancellation` ends a minimisation within about 50 ms: it throws `Cancelled`.
    explicit LinearProgram(std::stop_token cancellation = {});
    ~LinearProgram();
    LinearProgram(const LinearProgram&) = delete;
    LinearProgram& operator=(const LinearProgram&) = delete;

    /// Bounds may be infinite; `lower` ≤ `upper`. Returns the variable's index.
    std::size_t addVariable(double lower, double upper, double objectiveCoefficient = 0);
    /// A variable that only `minimiseInteger` restricts to whole numbers.
    std::size_t addIntegerVariable(double lower, double upper);
    /// `lower` ≤ `expression` ≤ `upper`. Returns the constraint's index.
    std::size_t addConstraint(const LinearExpression& expression, double lower, double upper);
    /// Adds `weight · |expression − target|` to the objective; `weight` ≥ 0. Returns the index of the
    /// constraint expression − excess + shortfall = target, with two auxiliary variables.
    std::size_t addDeviation(const LinearExpression& expression, double target, double weight);
    void setTarget(std::size_t deviation, double target);
    /// Lets the first minimisation start with `variable` at the value that satisfies `deviation` exactly.
    /// With a start near the optimum the simplex method takes fewer iterations; the optimum is the same.
    void startFrom(std::size_t deviation, std::size_t variable);
    void setVariableBounds(std::size_t variable, double lower, double upper);
    void setConstraintBounds(std::size_t constraint, double lower, double upper);
    void setObjectiveCoefficient(std::size_t variable, double coefficient);

    enum class Status {
        Optimal,     ///< an optimal solution was found
        Infeasible,  ///< no values satisfy all bounds
        Unbounded,   ///< the objective has no minimum
        Failed,      ///< time or iteration limit reached, or numerical trouble
    };
    Status minimise();
    /// Minimises with the integer variables in whole numbers, by branch and bound. `Optimal` if within 1 % of
    /// the optimum, or if the time limit was reached with a feasible solution.
    Status minimiseInteger();

    // Valid after `Optimal`. There are no dual values after `minimiseInteger`.
    [[nodiscard]] double value(std::size_t variable) const;
    [[nodiscard]] double objectiveValue() const;
    /// Change of the optimal objective value per unit by which the constraint's bound rises; 0 if it is not
    /// binding.
    [[nodiscard]] double dualValue(std::size_t constraint) const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace tenter::solve
