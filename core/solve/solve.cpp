#include "solve/solve.h"

#include <algorithm>

#include "project/wishing.h"
#include "solve/best.h"
#include "solve/conflict.h"
#include "solve/model.h"
#include "solve/proof.h"
#include "solve/verify.h"

namespace tenter::solve {

namespace {

/// Times that a wish is asked for with more to spare, where the row as laid out breaks it.
constexpr int mostRounds = 12;

double spareFor(Kind kind) {
    switch (kind) {
        case Kind::Lines:
        case Kind::Words:
            return 0.0025;  // of a line
        case Kind::LeastMeasure:
        case Kind::MostMeasure:
            return 0.0005;  // of the characters
        default:
            return 0.01;  // px
    }
}

class Solver {
public:
    Solver(const project::Project& project, const std::vector<std::size_t>& variants,
           text::ParagraphStore& store, const Options& options)
        : project_(project),
          store_(store),
          wishes_(project::wishesOf(project)),
          demands_(demandsOf(project, wishes_)),
          setting_(project, variants, store, options.profile),
          ramps_(project, variants, rolesIn(demands_)) {}

    Answer run() {
        Answer answer;
        if (demands_.empty()) {
            answer.solved = project_;
            return answer;
        }
        for (int round = 0; round < mostRounds;) {
            const Model model(setting_, ramps_, wishes_, demands_);
            const auto best = sizesOf(model);
            if (!best) {
                if (!giveFreedom(model)) return conflict(model);
                continue;
            }
            answer.solved = ramps_.applied(project_, best->sizes);
            answer.bindings = bindingsOf(model, demands_, *best);
            const std::vector<std::size_t> broken = brokenBy(*answer.solved);
            if (broken.empty()) return answer;
            for (const std::size_t index : broken) {
                demands_[index].spare += spareFor(demands_[index].kind);
                if (round + 1 == mostRounds) answer.unkept.push_back(demands_[index]);
            }
            ++round;
        }
        return answer;
    }

private:
    static std::vector<std::string> rolesIn(const std::vector<Demand>& demands) {
        std::vector<std::string> roles;
        for (const Demand& demand : demands)
            if (std::ranges::find(roles, demand.role) == roles.end()) roles.push_back(demand.role);
        return roles;
    }

    /// Where wishes conflict because bands share a ramp, gives each its own; false if that is not why.
    bool giveFreedom(const Model& model) {
        if (isFeasible(model, ramps_)) return false;
        const std::vector<bool> outside = outsideConflict(model, ramps_, demands_);
        std::vector<std::string> roles;
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            if (outside[i]) continue;
            for (const std::string& role : {demands_[i].role, demands_[i].other})
                if (!role.empty() && !isLocked(role) && ramps_.canSplit(role)) roles.push_back(role);
        }
        for (const std::string& role : roles)
            for (const std::size_t variant : setting_.variants)
                ramps_.split(variant, role, model.endsOf(variant, role));
        return !roles.empty();
    }

    [[nodiscard]] bool isLocked(const std::string& role) const {
        return std::ranges::any_of(demands_, [&](const Demand& demand) {
            return demand.kind == Kind::Locked && demand.role == role;
        });
    }

    /// On the grid that is wished; without one as coarse as can be.
    [[nodiscard]] std::optional<Best> sizesOf(const Model& model) const {
        auto best = bestSizes(model, ramps_, *wishes_.aim, demands_, model.step());
        if (!best && wishes_.grid->isZero() && isFeasible(model, ramps_))
            best = bestSizes(model, ramps_, *wishes_.aim, demands_, model.step() / 10);
        return best;
    }

    /// Lays the solved row out; the demands it breaks, by index.
    std::vector<std::size_t> brokenBy(const project::Project& solved) {
        std::vector<bool> broken(demands_.size(), false);
        for (const Setting::Row& row : setting_.rows) {
            const layout::PreparedRow laid(solved, row.variant, store_, row.row->profile());
            const auto widths = brokenWidths(solved, laid, demands_, withoutOf(project_, wishes_),
                                             project_.leastWidth, project_.mostWidth);
            for (std::size_t i = 0; i < demands_.size(); ++i)
                if (!widths[i].empty()) broken[i] = true;
        }
        std::vector<std::size_t> found;
        for (std::size_t i = 0; i < demands_.size(); ++i)
            if (broken[i]) found.push_back(i);
        return found;
    }

    Answer conflict(const Model& model) {
        Answer answer;
        if (isFeasible(model, ramps_)) {
            answer.offGrid = true;
            return answer;
        }
        const std::vector<bool> outside = outsideConflict(model, ramps_, demands_);
        const std::vector<const WishRow*> tightest = tightestRows(model, ramps_, outside);
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            if (outside[i]) continue;
            answer.conflict.demands.push_back(demands_[i]);
            answer.conflict.loosenings.push_back(loosening(model, i, outside));
            if (i < tightest.size() && tightest[i] != nullptr)
                answer.conflict.places.push_back(
                    placeOf(model, demands_[i], tightest[i]->spot, tightest[i]->spot.bound));
        }
        return answer;
    }

    Loosening loosening(const Model& model, std::size_t index, const std::vector<bool>& outside) {
        std::vector<bool> without(demands_.size(), false);
        without[index] = true;
        // If more than these conflict, what helps is told of these alone.
        const bool others = !isFeasible(model, ramps_, without);
        const auto canKeep = [&](const Demand& tried) {
            return isFeasible(Model(model, index, tried), ramps_, others ? outside : std::vector<bool>());
        };
        const auto hasSizes = [&](const Demand& tried) {
            return others || sizesOf(Model(model, index, tried));
        };
        return leastLoosening(demands_[index], canKeep, hasSizes);
    }

    const project::Project& project_;
    text::ParagraphStore& store_;
    project::Wishes wishes_;
    std::vector<Demand> demands_;
    Setting setting_;
    RampsSought ramps_;
};

}  // namespace

project::Project loosened(const project::Project& project, const Loosening& loosening) {
    project::Project eased = project;
    if (loosening.out && loosening.demand.kind == Kind::Ratio) {
        // No figure of a ratio asks nothing: it is unsaid.
        for (project::RoleWishes& entry : eased.wishes->roles)
            if (entry.role == loosening.demand.role) entry.ratio.reset();
        project::dropEmptyWishes(eased);
        return eased;
    }
    project::Wishes more;
    more.roles.push_back(asWish(loosening.demand, loosening.out));
    eased.wishes = project::laidOn(project.wishes.value_or(project::Wishes()), more);
    return eased;
}

Answer solve(const project::Project& project, const std::vector<std::size_t>& variants,
             text::ParagraphStore& store, const Options& options) {
    return Solver(project, variants, store, options).run();
}

}  // namespace tenter::solve
