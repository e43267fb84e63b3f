#include "solve/best.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "solve/nearest.h"

namespace tenter::solve {

namespace {

/// What a project file may hold as a size, CSS px.
constexpr double leastSize = 1;
constexpr double mostSize = 400;
/// Beside what is aimed at, ramps' ends stay near where they are.
constexpr double habit = 1e-3;
/// What it costs, beside what growing earns, for each share of its size by which type takes another role's
/// lead: more than it earns, less than all other type together.
constexpr double lostLead = 3;
/// A lead that tells roles apart, as a proportion; a button's label a little larger than body type may change
/// places with it.
constexpr double telling = 1.12;
/// Times the least proportion of two roles over a variant that the greatest may be to mean something.
constexpr double steady = 1.7;
/// What browsers set copy at unless told otherwise, CSS px (CSS Fonts 4, `medium`; the figure common
/// practice, no source).
constexpr double readersSize = 16;
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
        const bool near = aim == project::Aim::Nearest;
        if (aim == project::Aim::Largest) aimLargest();
        if (aim == project::Aim::Calmest) aimCalmest();
        const Nearness nearness(programme_, model_, near ? 1 : habit);
        for (std::size_t column = 0; column < ramps_.columns(); ++column)
            programme_.addDistance({{column, 1 / ramps_.now(column)}}, 1, habit);
        if (programme_.minimise() != Outcome::Best) return false;
        if (!near) return true;
        if (nearness.beginAt(programme_, readersSize) && programme_.minimise() != Outcome::Best) return false;
        return !nearness.soften(programme_, readersSize) || programme_.minimise() == Outcome::Best;
    }

    /// Where one role's type is clearly larger than another's, at least half of its lead stays, as a
    /// proportion, if wishes allow: a kicker that nothing bounds does not end up as large as body type that a
    /// measure bounds. Proportions that are others at other widths mean nothing.
    void keepLeads() {
        for (const Point& one : model_.points()) {
            for (const Point& other : model_.points()) {
                if (!areTogether(one, other)) continue;
                const double proportion = one.now / other.now;
                if (telling * proportion > 1 || !isSteady(one, other)) continue;
                const std::size_t over = programme_.addColumn(0, unbounded, lostLead);
                Form form = scaled(difference(one.size, other.size, std::sqrt(proportion)), 1 / one.now);
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
        keepLeads();
    }

    /// The least sum of changes from each point to the next of its role, as shares of the size.
    void aimCalmest() {
        const std::vector<Point>& points = model_.points();
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            const Point& a = points[i];
            const Point& b = points[i + 1];
            if (a.role != b.role || a.variant != b.variant) continue;
            programme_.addDistance(scaled(difference(b.size, a.size), 1 / a.now), 0, 1);
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
