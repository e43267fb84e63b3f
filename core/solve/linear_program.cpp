#include "solve/linear_program.h"

#include <glpk.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <utility>

#include "solve/cancellation.h"

namespace tenter::solve {

namespace {

constexpr int timeLimit = 2000;         // milliseconds; rows of cards take a few
constexpr int stopInterval = 40;        // milliseconds after which a requested stop is noticed
constexpr int integerTimeLimit = 500;   // milliseconds for branch and bound
constexpr double integerGap = 0.01;     // relative gap at which branch and bound stops
constexpr int iterationLimit = 100000;  // of the simplex method

/// Linear programs alive on this thread; GLPK's memory is released with the last one.
thread_local int programsAlive = 0;

int boundType(double lower, double upper) {
    if (std::isinf(lower)) return std::isinf(upper) ? GLP_FR : GLP_UP;
    if (std::isinf(upper)) return GLP_LO;
    return lower < upper ? GLP_DB : GLP_FX;
}

/// GLPK counts from 1.
int glpkIndex(std::size_t index) {
    return static_cast<int>(index) + 1;
}

}  // namespace

LinearExpression difference(LinearExpression minuend, const LinearExpression& subtrahend, double factor) {
    for (const Term& term : subtrahend) {
        const auto same = std::ranges::find(minuend, term.variable, &Term::variable);
        if (same == minuend.end())
            minuend.push_back({term.variable, -factor * term.coefficient});
        else
            same->coefficient -= factor * term.coefficient;
    }
    return minuend;
}

LinearExpression scaled(LinearExpression expression, double factor) {
    for (Term& term : expression)
        term.coefficient *= factor;
    return expression;
}

struct LinearProgram::State {
    glp_prob* problem = nullptr;
    bool valid = true;     ///< false once a number was not finite or bounds were out of order
    bool integer = false;  ///< true if the last solution is from branch and bound
    std::stop_token cancellation;

    /// The simplex method, interrupted where a stop can be requested: it goes on from the basis reached.
    int simplex(glp_smcp parameters) const {
        using Clock = std::chrono::steady_clock;
        const bool canStop = cancellation.stop_possible();
        const Clock::time_point end = Clock::now() + std::chrono::milliseconds(timeLimit);
        parameters.tm_lim = canStop ? stopInterval : timeLimit;
        while (true) {
            throwIfStopped(cancellation);
            const int failed = glp_simplex(problem, &parameters);
            if (failed != GLP_ETMLIM || !canStop || Clock::now() >= end) return failed;
        }
    }
};

LinearProgram::LinearProgram(std::stop_token cancellation) : state_(std::make_unique<State>()) {
    state_->cancellation = std::move(cancellation);
    ++programsAlive;
    glp_term_out(GLP_OFF);
    state_->problem = glp_create_prob();
    glp_set_obj_dir(state_->problem, GLP_MIN);
}

LinearProgram::~LinearProgram() {
    glp_delete_prob(state_->problem);
    if (--programsAlive == 0) glp_free_env();
}

std::size_t LinearProgram::addVariable(double lower, double upper, double objectiveCoefficient) {
    const auto index = static_cast<std::size_t>(glp_add_cols(state_->problem, 1)) - 1;
    setVariableBounds(index, lower, upper);
    setObjectiveCoefficient(index, objectiveCoefficient);
    return index;
}

std::size_t LinearProgram::addIntegerVariable(double lower, double upper) {
    const std::size_t variable = addVariable(lower, upper);
    glp_set_col_kind(state_->problem, glpkIndex(variable), GLP_IV);
    return variable;
}

std::size_t LinearProgram::addConstraint(const LinearExpression& expression, double lower, double upper) {
    const int row = glp_add_rows(state_->problem, 1);
    std::vector<int> columns{0};
    std::vector<double> coefficients{0};
    for (const Term& term : expression) {
        if (!std::isfinite(term.coefficient)) state_->valid = false;
        if (term.coefficient == 0 || !std::isfinite(term.coefficient)) continue;
        columns.push_back(glpkIndex(term.variable));
        coefficients.push_back(term.coefficient);
    }
    glp_set_mat_row(state_->problem, row, static_cast<int>(columns.size()) - 1, columns.data(),
                    coefficients.data());
    setConstraintBounds(static_cast<std::size_t>(row) - 1, lower, upper);
    return static_cast<std::size_t>(row) - 1;
}

std::size_t LinearProgram::addDeviation(const LinearExpression& expression, double target, double weight) {
    LinearExpression balanced = expression;
    balanced.push_back({addVariable(0, infinity, weight), -1});
    balanced.push_back({addVariable(0, infinity, weight), 1});
    return addConstraint(balanced, target, target);
}

void LinearProgram::setTarget(std::size_t deviation, double target) {
    setConstraintBounds(deviation, target, target);
}

void LinearProgram::startFrom(std::size_t deviation, std::size_t variable) {
    glp_set_row_stat(state_->problem, glpkIndex(deviation), GLP_NS);
    glp_set_col_stat(state_->problem, glpkIndex(variable), GLP_BS);
}

void LinearProgram::setVariableBounds(std::size_t variable, double lower, double upper) {
    if (!(lower <= upper)) state_->valid = false;
    glp_set_col_bnds(state_->problem, glpkIndex(variable), boundType(lower, upper), lower, upper);
}

void LinearProgram::setConstraintBounds(std::size_t constraint, double lower, double upper) {
    if (!(lower <= upper)) state_->valid = false;
    glp_set_row_bnds(state_->problem, glpkIndex(constraint), boundType(lower, upper), lower, upper);
}

void LinearProgram::setObjectiveCoefficient(std::size_t variable, double coefficient) {
    if (!std::isfinite(coefficient)) state_->valid = false;
    glp_set_obj_coef(state_->problem, glpkIndex(variable), std::isfinite(coefficient) ? coefficient : 0);
}

LinearProgram::Status LinearProgram::minimise() {
    state_->integer = false;
    if (!state_->valid) return Status::Failed;
    glp_smcp parameters;
    glp_init_smcp(&parameters);
    parameters.msg_lev = GLP_MSG_OFF;
    parameters.meth = GLP_DUALP;
    parameters.it_lim = iterationLimit;
    int failed = state_->simplex(parameters);
    if (failed == GLP_EBADB || failed == GLP_ESING || failed == GLP_ECOND || failed == GLP_EFAIL) {
        // The basis of the warm start is unusable: start from the standard one.
        glp_std_basis(state_->problem);
        parameters.meth = GLP_PRIMAL;
        failed = state_->simplex(parameters);
    }
    if (failed != 0) return Status::Failed;
    switch (glp_get_status(state_->problem)) {
        case GLP_OPT:
            return Status::Optimal;
        case GLP_NOFEAS:
        case GLP_INFEAS:
            return Status::Infeasible;
        case GLP_UNBND:
            return Status::Unbounded;
        default:
            // The dual simplex method reports an infeasible primal problem only this way.
            return glp_get_prim_stat(state_->problem) == GLP_NOFEAS ? Status::Infeasible : Status::Failed;
    }
}

LinearProgram::Status LinearProgram::minimiseInteger() {
    const Status relaxation = minimise();
    if (relaxation != Status::Optimal) return relaxation;
    glp_iocp parameters;
    glp_init_iocp(&parameters);
    parameters.msg_lev = GLP_MSG_OFF;
    parameters.tm_lim = integerTimeLimit;
    parameters.mip_gap = integerGap;
    parameters.cb_func = [](glp_tree* tree, void* cancellation) {
        if (static_cast<std::stop_token*>(cancellation)->stop_requested()) glp_ios_terminate(tree);
    };
    parameters.cb_info = &state_->cancellation;
    glp_intopt(state_->problem, &parameters);
    throwIfStopped(state_->cancellation);
    const int status = glp_mip_status(state_->problem);
    state_->integer = status == GLP_OPT || status == GLP_FEAS;
    if (state_->integer) return Status::Optimal;
    return status == GLP_NOFEAS ? Status::Infeasible : Status::Failed;
}

double LinearProgram::value(std::size_t variable) const {
    if (state_->integer) return glp_mip_col_val(state_->problem, glpkIndex(variable));
    return glp_get_col_prim(state_->problem, glpkIndex(variable));
}
double LinearProgram::objectiveValue() const {
    if (state_->integer) return glp_mip_obj_val(state_->problem);
    return glp_get_obj_val(state_->problem);
}
double LinearProgram::dualValue(std::size_t constraint) const {
    return glp_get_row_dual(state_->problem, glpkIndex(constraint));
}

}  // namespace tenter::solve
