#include "solve/best.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace tenter::solve {

namespace {

/// What a project file may hold as a size, CSS px.
constexpr double leastSize = 1;
constexpr double mostSize = 400;
/// Beside what is aimed at, ramps' ends stay near where they are.
constexpr double habit = 1e-3;
/// What it costs for each share of its size that type leaves its proportion to another role's: more than any
/// change does.
constexpr double outOfProportion = 100;
/// A lead that tells roles apart, as a proportion; a button's label a little larger than body type may change
/// places with it.
constexpr double telling = 1.12;
/// By how many times the proportion of two roles may grow where sizes stay near to what is there: where body
/// type has to become much smaller, its heading does not stay alone. No source.
constexpr double grown = 1.25;
/// Times the least proportion of two roles over a variant that the greatest may be to mean something.
constexpr double steady = 1.7;
/// By how much a first aim's best may be missed for the sake of a second.
constexpr double leeway = 1e-6;
/// A row that the least cost hangs on by less does not decide.
constexpr double priced = 1e-7;
/// Programmes that are solved at most to get sizes onto the grid.
constexpr int mostTries = 3000;

using Outcome = Programme::Outcome;

/// Columns and rows of `model` in `programme`; rows of demands left out are not bounded.
void put(Programme& programme, const Model& model, const RampsSought& ramps,
         const std::vector<bool>& leftOut) {
    for (std::size_t column = 0; column < model.columns(); ++column) {
        const bool end = column < ramps.columns();
        programme.addColumn(end ? leastSize : 0, end ? mostSize : unbounded);
    }
    for (const WishRow& row : model.rows()) {
        const bool out = !leftOut.empty() && leftOut[row.demand];
        // Rows that contradict themselves cannot be kept; bounds must still be in order.
        programme.addRow(row.form, out ? -unbounded : row.least,
                         out ? unbounded : std::max(row.least, row.most));
    }
    for (const WishRow& row : model.rows())
        if (row.least > row.most && (leftOut.empty() || !leftOut[row.demand]))
            programme.addRow(row.form, -unbounded, row.most);
}

/// A column that is at least |form − value| / unit.
std::size_t addDistance(Programme& programme, const Form& form, double value, double unit) {
    const std::size_t distance = programme.addColumn(0, unbounded);
    Form above = form;
    for (Term& term : above)
        term.times /= unit;
    Form below = above;
    above.push_back({distance, -1});
    below.push_back({distance, 1});
    programme.addRow(above, -unbounded, value / unit);
    programme.addRow(below, value / unit, unbounded);
    return distance;
}

class Search {
public:
    Search(const Model& model, const RampsSought& ramps, const std::vector<Demand>& demands, double step)
        : model_(model), ramps_(ramps), demands_(demands), step_(step) {
        put(programme_, model, ramps, {});
    }

    std::optional<Best> best(project::Aim aim) {
        deciding_.assign(model_.rows().size(), false);
        if (!aimAt(aim)) return std::nullopt;
        noteDeciding();
        for (std::size_t column = 0; column < ramps_.columns(); ++column)
            if (!isLocked(column)) open_.push_back(column);
        while (!dive(0)) {
            if (!stuck_ || tries_ < 0) {
                if (branch()) break;
                return std::nullopt;
            }
            // What had no line of the grid left once others had theirs chooses before them.
            std::erase(open_, *stuck_);
            open_.insert(open_.begin(), *stuck_);
            ++choosers_;
            stuck_.reset();
        }
        std::vector<double> sizes;
        for (std::size_t column = 0; column < ramps_.columns(); ++column)
            sizes.push_back(isLocked(column) ? ramps_.now(column) : snapped(programme_.value(column)));
        return Best{std::move(sizes), std::move(deciding_)};
    }

private:
    /// Sets the costs; false if nothing keeps the rows.
    bool aimAt(project::Aim aim) {
        std::vector<std::size_t> ends;
        for (std::size_t column = 0; column < ramps_.columns(); ++column)
            ends.push_back(addDistance(programme_, {{column, 1}}, ramps_.now(column), ramps_.now(column)));
        bool sound = true;
        if (aim == project::Aim::Nearest) sound = aimNearest();
        if (aim == project::Aim::Largest) aimLargest();
        if (aim == project::Aim::Calmest) aimCalmest();
        if (!sound) return false;
        for (const std::size_t end : ends)
            programme_.setCost(end, habit);
        keepProportions(aim == project::Aim::Nearest);
        return programme_.minimise() == Outcome::Best;
    }

    /// The largest share by which a size changes is least, then their sum.
    bool aimNearest() {
        const std::size_t largest = programme_.addColumn(0, unbounded, 1);
        std::vector<std::size_t> distances;
        for (const Point& point : model_.points()) {
            distances.push_back(addDistance(programme_, point.size, point.now, point.now));
            programme_.addRow({{largest, 1}, {distances.back(), -1}}, 0, unbounded);
        }
        if (programme_.minimise() != Outcome::Best) return false;
        noteDeciding();
        // The grid may cost more than the best there is without it.
        const double most = programme_.value(largest);
        programme_.boundColumn(largest, 0, most + leeway);
        programme_.clearCosts();
        for (const std::size_t distance : distances)
            programme_.setCost(distance, 1);
        if (programme_.minimise() != Outcome::Best) return false;
        programme_.boundColumn(largest, 0, unbounded);
        programme_.setCost(largest, static_cast<double>(10 * distances.size()));
        return true;
    }

    /// Where one role's type is clearly larger than another's, at least half of its lead stays, as a
    /// proportion, if wishes allow: a kicker that nothing bounds does not end up as large as body type that a
    /// measure bounds. If `near`, no other proportion grows by much either. Proportions that are others at
    /// other widths mean nothing.
    void keepProportions(bool near) {
        for (const Point& one : model_.points()) {
            for (const Point& other : model_.points()) {
                if (!areTogether(one, other)) continue;
                const double proportion = one.now / other.now;
                const bool isLess = telling * proportion <= 1;
                if ((!isLess && !near) || !isSteady(one, other)) continue;
                const double most = isLess ? std::sqrt(proportion) : grown * proportion;
                const std::size_t over = programme_.addColumn(0, unbounded, outOfProportion);
                Form form = difference(one.size, other.size, most);
                for (Term& term : form)
                    term.times /= one.now;
                form.push_back({over, -1});
                programme_.addRow(form, -unbounded, 0);
            }
        }
    }

    static bool areTogether(const Point& one, const Point& other) {
        return one.variant == other.variant && one.band == other.band && one.first == other.first &&
               one.role != other.role;
    }

    /// True if two roles are about in the same proportion all over their variant. Else it means nothing.
    [[nodiscard]] bool isSteady(const Point& one, const Point& other) {
        auto& [least, most] = proportions_[{one.variant, one.role, other.role}];
        if (most == 0) {
            least = unbounded;
            for (const Point& here : model_.points())
                for (const Point& beside : model_.points()) {
                    const bool same =
                        here.variant == one.variant && here.role == one.role && beside.role == other.role;
                    if (!same || !areTogether(here, beside)) continue;
                    least = std::min(least, here.now / beside.now);
                    most = std::max(most, here.now / beside.now);
                }
        }
        return most <= steady * least;
    }

    void aimLargest() {
        std::vector<double> cost(model_.columns(), 0);
        for (const Point& point : model_.points())
            for (const Term& term : point.size)
                cost[term.column] -= term.times / point.now;
        for (std::size_t column = 0; column < cost.size(); ++column)
            programme_.setCost(column, cost[column]);
    }

    /// The least sum of changes from each point to the next of its role, as shares of the size.
    void aimCalmest() {
        const std::vector<Point>& points = model_.points();
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            const Point& a = points[i];
            const Point& b = points[i + 1];
            if (a.role != b.role || a.variant != b.variant) continue;
            programme_.setCost(addDistance(programme_, difference(b.size, a.size), 0, a.now), 1);
        }
    }

    /// Puts the open columns from `index` on onto the grid one by one, nearest line first, so that the rows
    /// still hold. Among those that choose first every combination is tried; the others take what there is,
    /// and the first for which there is nothing is `stuck_`.
    bool dive(std::size_t index) {
        if (index == open_.size()) return true;
        const std::size_t column = open_[index];
        const double value = programme_.value(column);
        const double near = snapped(value);
        const double step = value >= near ? step_ : -step_;
        for (const double size : {near, near + step, near - step, near + 2 * step, near - 2 * step}) {
            if (size < leastSize || size > mostSize) continue;
            if (--tries_ < 0) return false;
            programme_.boundColumn(column, size, size);
            if (programme_.minimise() == Outcome::Best) {
                if (dive(index + 1)) return true;
                if (stuck_ || tries_ < 0) break;
            }
            programme_.boundColumn(column, leastSize, mostSize);
        }
        programme_.boundColumn(column, leastSize, mostSize);
        if (index >= choosers_ && !stuck_) stuck_ = column;
        if (index == 0) programme_.minimise();
        return false;
    }

    /// Where the nearest lines of the grid will not do, seeks among all of them.
    bool branch() {
        for (const std::size_t column : open_) {
            const std::size_t times =
                programme_.addWholeColumn(std::ceil(leastSize / step_), std::floor(mostSize / step_));
            programme_.addRow({{column, 1}, {times, -step_}}, 0, 0);
        }
        if (programme_.minimiseWhole() != Outcome::Best) return false;
        std::vector<double> sizes;
        for (const std::size_t column : open_)
            sizes.push_back(snapped(programme_.value(column)));
        for (std::size_t i = 0; i < open_.size(); ++i)
            programme_.boundColumn(open_[i], sizes[i], sizes[i]);
        return programme_.minimise() == Outcome::Best;
    }

    void noteDeciding() {
        for (std::size_t row = 0; row < deciding_.size(); ++row)
            if (std::abs(programme_.price(row)) > priced) deciding_[row] = true;
    }

    [[nodiscard]] double snapped(double size) const {
        return std::round(std::round(size / step_) * step_ * 1e4) / 1e4;
    }

    [[nodiscard]] bool isLocked(std::size_t column) const {
        return std::ranges::any_of(ramps_.all(), [&](const RampSought& ramp) {
            return (ramp.first == column || ramp.last == column) &&
                   std::ranges::any_of(demands_, [&](const Demand& demand) {
                       return demand.kind == Kind::Locked && demand.role == ramp.role;
                   });
        });
    }

    const Model& model_;
    const RampsSought& ramps_;
    const std::vector<Demand>& demands_;
    double step_;  // of the grid, CSS px
    Programme programme_;
    std::vector<std::size_t> open_;  // columns in the order they choose their lines of the grid
    std::size_t choosers_ = 0;       // of them choose first
    std::optional<std::size_t> stuck_;
    std::vector<bool> deciding_;
    /// Least and greatest, by variant and two roles.
    std::map<std::tuple<std::size_t, std::string, std::string>, std::pair<double, double>> proportions_;
    int tries_ = mostTries;
};

}  // namespace

bool isFeasible(const Model& model, const RampsSought& ramps, const std::vector<bool>& leftOut) {
    Programme programme;
    put(programme, model, ramps, leftOut);
    return programme.minimise() == Outcome::Best;
}

std::optional<Best> bestSizes(const Model& model, const RampsSought& ramps, project::Aim aim,
                              const std::vector<Demand>& demands, double step) {
    return Search(model, ramps, demands, step).best(aim);
}

std::vector<const WishRow*> tightestRows(const Model& model, const RampsSought& ramps,
                                         const std::vector<bool>& leftOut) {
    Programme programme;
    for (std::size_t column = 0; column < model.columns(); ++column) {
        const bool end = column < ramps.columns();
        programme.addColumn(end ? leastSize : 0, end ? mostSize : unbounded);
    }
    // Every row may be missed by as much as the worst one is.
    const std::size_t missed = programme.addColumn(0, unbounded, 1);
    std::vector<std::pair<std::size_t, const WishRow*>> rows;
    for (const WishRow& row : model.rows()) {
        if (!leftOut.empty() && leftOut[row.demand]) continue;
        Form form = row.form;
        form.push_back({missed, 1});
        if (!std::isinf(row.least)) rows.emplace_back(programme.addRow(form, row.least, unbounded), &row);
        form.back().times = -1;
        if (!std::isinf(row.most)) rows.emplace_back(programme.addRow(form, -unbounded, row.most), &row);
    }
    std::vector<const WishRow*> tightest;
    if (programme.minimise() != Outcome::Best) return tightest;
    std::vector<double> most;
    for (const auto& [index, row] : rows) {
        const double price = std::abs(programme.price(index));
        if (row->demand >= tightest.size()) {
            tightest.resize(row->demand + 1, nullptr);
            most.resize(row->demand + 1, 1e-9);
        }
        if (price <= most[row->demand]) continue;
        most[row->demand] = price;
        tightest[row->demand] = row;
    }
    return tightest;
}

}  // namespace tenter::solve
