#include "solve/programme.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>

namespace tenter::solve {

namespace {

constexpr int patience = 2000;      // milliseconds, far beyond what a row of cards takes
constexpr int wholePatience = 500;  // milliseconds that whole numbers are sought for
constexpr double wholeGap = 0.01;   // of the cost, by which they may miss the best
constexpr int mostSteps = 100000;   // of the simplex method

/// Programmes of this thread: with the last one GLPK's memory goes.
thread_local int programmesHere = 0;

int kindOf(double least, double most) {
    if (std::isinf(least)) return std::isinf(most) ? GLP_FR : GLP_UP;
    if (std::isinf(most)) return GLP_LO;
    return least < most ? GLP_DB : GLP_FX;
}

}  // namespace

Form difference(Form form, const Form& taken, double times) {
    for (const Term& term : taken) {
        const auto same = std::ranges::find(form, term.column, &Term::column);
        if (same == form.end())
            form.push_back({term.column, -times * term.times});
        else
            same->times -= times * term.times;
    }
    return form;
}

Form scaled(Form form, double times) {
    for (Term& term : form)
        term.times *= times;
    return form;
}

struct Programme::Held {
    glp_prob* problem = nullptr;
    bool sound = true;   ///< false once a number was not finite
    bool whole = false;  ///< true if what was found last is in whole numbers
};

Programme::Programme() : held_(std::make_unique<Held>()) {
    ++programmesHere;
    glp_term_out(GLP_OFF);
    held_->problem = glp_create_prob();
    glp_set_obj_dir(held_->problem, GLP_MIN);
}

Programme::~Programme() {
    glp_delete_prob(held_->problem);
    if (--programmesHere == 0) glp_free_env();
}

std::size_t Programme::addColumn(double least, double most, double cost) {
    const int column = glp_add_cols(held_->problem, 1);
    const auto index = static_cast<std::size_t>(column) - 1;
    boundColumn(index, least, most);
    setCost(index, cost);
    return index;
}

std::size_t Programme::addWholeColumn(double least, double most) {
    const std::size_t column = addColumn(least, most);
    glp_set_col_kind(held_->problem, static_cast<int>(column) + 1, GLP_IV);
    return column;
}

std::size_t Programme::addRow(const Form& form, double least, double most) {
    const int row = glp_add_rows(held_->problem, 1);
    std::vector<int> columns{0};
    std::vector<double> times{0};
    for (const Term& term : form) {
        if (!std::isfinite(term.times)) held_->sound = false;
        if (term.times == 0 || !std::isfinite(term.times)) continue;
        columns.push_back(static_cast<int>(term.column) + 1);
        times.push_back(term.times);
    }
    glp_set_mat_row(held_->problem, row, static_cast<int>(columns.size()) - 1, columns.data(), times.data());
    boundRow(static_cast<std::size_t>(row) - 1, least, most);
    return static_cast<std::size_t>(row) - 1;
}

Programme::Distance Programme::addDistance(const Form& form, double value, double cost) {
    Distance distance;
    distance.column = addColumn(0, unbounded, cost);
    Form bounded = form;
    bounded.push_back({distance.column, -1});
    distance.above = addRow(bounded, -unbounded, value);
    bounded.back().times = 1;
    distance.below = addRow(bounded, value, unbounded);
    return distance;
}

void Programme::moveDistance(const Distance& distance, double value) {
    boundRow(distance.above, -unbounded, value);
    boundRow(distance.below, value, unbounded);
}

void Programme::boundColumn(std::size_t column, double least, double most) {
    if (!(least <= most)) held_->sound = false;
    glp_set_col_bnds(held_->problem, static_cast<int>(column) + 1, kindOf(least, most), least, most);
}

void Programme::boundRow(std::size_t row, double least, double most) {
    if (!(least <= most)) held_->sound = false;
    glp_set_row_bnds(held_->problem, static_cast<int>(row) + 1, kindOf(least, most), least, most);
}

void Programme::setCost(std::size_t column, double cost) {
    if (!std::isfinite(cost)) held_->sound = false;
    glp_set_obj_coef(held_->problem, static_cast<int>(column) + 1, std::isfinite(cost) ? cost : 0);
}

Programme::Outcome Programme::minimise() {
    held_->whole = false;
    if (!held_->sound) return Outcome::GivenUp;
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.meth = GLP_DUALP;
    how.it_lim = mostSteps;
    how.tm_lim = patience;
    int failed = glp_simplex(held_->problem, &how);
    if (failed == GLP_EBADB || failed == GLP_ESING || failed == GLP_ECOND || failed == GLP_EFAIL) {
        // The basis it went on from is of no use any more.
        glp_std_basis(held_->problem);
        how.meth = GLP_PRIMAL;
        failed = glp_simplex(held_->problem, &how);
    }
    if (failed != 0) return Outcome::GivenUp;
    switch (glp_get_status(held_->problem)) {
        case GLP_OPT:
            return Outcome::Best;
        case GLP_NOFEAS:
        case GLP_INFEAS:
            return Outcome::None;
        case GLP_UNBND:
            return Outcome::NoLeast;
        default:
            // The dual method ends so where nothing keeps all bounds.
            return glp_get_prim_stat(held_->problem) == GLP_NOFEAS ? Outcome::None : Outcome::GivenUp;
    }
}

Programme::Outcome Programme::minimiseWhole() {
    const Outcome loose = minimise();
    if (loose != Outcome::Best) return loose;
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.tm_lim = wholePatience;
    how.mip_gap = wholeGap;
    glp_intopt(held_->problem, &how);
    const int found = glp_mip_status(held_->problem);
    held_->whole = found == GLP_OPT || found == GLP_FEAS;
    if (held_->whole) return Outcome::Best;
    return found == GLP_NOFEAS ? Outcome::None : Outcome::GivenUp;
}

double Programme::value(std::size_t column) const {
    if (held_->whole) return glp_mip_col_val(held_->problem, static_cast<int>(column) + 1);
    return glp_get_col_prim(held_->problem, static_cast<int>(column) + 1);
}
double Programme::cost() const {
    if (held_->whole) return glp_mip_obj_val(held_->problem);
    return glp_get_obj_val(held_->problem);
}
double Programme::price(std::size_t row) const {
    return glp_get_row_dual(held_->problem, static_cast<int>(row) + 1);
}

}  // namespace tenter::solve
