#include "solve/solve.h"

#include <algorithm>
#include <memory>
#include <tuple>

#include "project/wishing.h"
#include "solve/alike.h"
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
          usual_(demandsOf(project, project::usualWishes(project))),
          setting_(project, solvedTogether(project, wishes_, variants), store, options.profile),
          ramps_(project, setting_.variants, rolesIn(demands_)) {
        for (const std::string& role : rolesIn(demands_))
            if (needsAlike(role)) makeAlike(role);
    }

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
            answer.solved = applied(*best);
            answer.shared = shared();
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

    /// Bands whose type is to be the same, as far as ramps over the viewport's width can make it so.
    [[nodiscard]] std::vector<AlikeBands> alikeOf(const std::string& role) const {
        if (isLocked(role)) return {};
        std::vector<AlikeBands> alike = alikeBands(project_, demands_, role);
        const bool byCard = std::ranges::any_of(setting_.rows, [&](const Setting::Row& row) {
            for (std::size_t band = 0; band < row.row->bandCount(); ++band)
                if (row.row->settings(band).text.find(role)->follow == project::Follow::Card) return true;
            return false;
        });
        return byCard ? std::vector<AlikeBands>() : alike;
    }

    /// True if ramps that are to be one run between unlike widths.
    [[nodiscard]] bool needsAlike(const std::string& role) const {
        for (const AlikeBands& bands : alikeOf(role)) {
            const auto widths = [&](const AlikeBands::Band& at) {
                const RampSought& ramp = ramps_.in(at.variant, at.band, role);
                return std::tuple(ramp.first == ramp.last, ramp.from.width, ramp.to.width);
            };
            for (const AlikeBands::Band& one : bands.bands)
                if (widths(one) != widths(bands.bands.front())) return true;
        }
        return false;
    }

    void makeAlike(const std::string& role) {
        const std::vector<AlikeBands> alike = alikeOf(role);
        for (const std::size_t variant : setting_.variants)
            ramps_.split(variant, role, alikeEnds(project_, alike, variant));
        madeAlike_.push_back(role);
    }

    [[nodiscard]] project::Project applied(const Best& best) const {
        project::Project solved = ramps_.applied(project_, best.sizes);
        for (const std::string& role : madeAlike_)
            sayOnce(solved, role);
        return solved;
    }

    [[nodiscard]] std::vector<SharedRamp> shared() const {
        std::vector<SharedRamp> all;
        for (const std::string& role : madeAlike_)
            for (const AlikeBands& bands : alikeOf(role))
                if (bands.unlike) all.push_back({role, bands.widths});
        return all;
    }

    /// Where wishes conflict because bands share a ramp, gives each its own; false if that is not why.
    bool giveFreedom(const Model& model) {
        if (isFeasible(model, ramps_)) return false;
        const std::vector<bool> outside = outsideConflict(model, ramps_, demands_, said());
        std::vector<std::string> roles;
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            if (outside[i]) continue;
            for (const std::string& role : {demands_[i].role, demands_[i].other})
                if (!role.empty() && !isLocked(role) && ramps_.canSplit(role)) roles.push_back(role);
        }
        for (const std::string& role : roles) {
            if (!ramps_.canSplit(role)) continue;
            if (!alikeOf(role).empty()) {
                makeAlike(role);
                continue;
            }
            for (const std::size_t variant : setting_.variants)
                ramps_.split(variant, role, model.endsOf(variant, role));
        }
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
        const auto note = [&](const std::vector<std::vector<sweep::Interval>>& widths) {
            for (std::size_t i = 0; i < demands_.size(); ++i)
                if (!widths[i].empty()) broken[i] = true;
        };
        const double least = project_.leastWidth;
        const double most = project_.mostWidth;
        std::unique_ptr<layout::PreparedRow> before;
        std::size_t variantBefore = 0;
        for (const Setting::Row& row : setting_.rows) {
            auto laid =
                std::make_unique<layout::PreparedRow>(solved, row.variant, store_, row.row->profile());
            note(brokenWidths(solved, *laid, demands_, withoutOf(project_, wishes_), least, most));
            if (before && variantBefore != row.variant)
                note(unequalWidths(*before, *laid, demands_, least, most));
            before = std::move(laid);
            variantBefore = row.variant;
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
        const std::vector<bool> outside = outsideConflict(model, ramps_, demands_, said());
        answer.conflict.byReserve = isByReserve(outside);
        for (SharedRamp& one : shared())
            if (isInConflict(Kind::SameInVariants, one.role, outside))
                answer.shared.push_back(std::move(one));
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

    [[nodiscard]] bool isInConflict(Kind kind, const std::string& role,
                                    const std::vector<bool>& outside) const {
        for (std::size_t i = 0; i < demands_.size(); ++i)
            if (!outside[i] && demands_[i].kind == kind && demands_[i].role == role) return true;
        return false;
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
        Loosening least = leastLoosening(demands_[index], canKeep, hasSizes);
        least.leavesOthers = others;
        least.unnatural = isUnnatural(demands_[index], least);
        return least;
    }

    /// By demand, true for those that the person asked for.
    [[nodiscard]] std::vector<bool> said() const {
        std::vector<bool> said;
        said.reserve(demands_.size());
        for (const Demand& demand : demands_)
            said.push_back(std::ranges::none_of(usual_, [&](const Demand& usual) {
                return usual.kind == demand.kind && usual.role == demand.role &&
                       usual.value == demand.value && usual.everywhere == demand.everywhere;
            }));
        return said;
    }

    [[nodiscard]] bool isUnnatural(const Demand& wished, const Loosening& loosening) const {
        const Demand& rather = loosening.demand;
        if (rather.kind == Kind::LeastRatio) return wished.value >= 1 && (loosening.out || rather.value < 1);
        return rather.kind == Kind::LeastSize && std::ranges::any_of(usual_, [&](const Demand& usual) {
                   return usual.kind == Kind::LeastSize && usual.role == rather.role &&
                          (loosening.out || rather.value < usual.value);
               });
    }

    [[nodiscard]] bool isByReserve(const std::vector<bool>& outside) const {
        if (*wishes_.reserve <= 0) return false;
        project::Wishes bare = wishes_;
        bare.reserve = 0;
        return isFeasible(Model(setting_, ramps_, bare, demands_), ramps_, outside);
    }

    const project::Project& project_;
    text::ParagraphStore& store_;
    project::Wishes wishes_;
    std::vector<Demand> demands_;
    std::vector<Demand> usual_;  ///< that hold if nothing is wished
    Setting setting_;
    RampsSought ramps_;
    std::vector<std::string> madeAlike_;  ///< roles whose ramps were made common to bands that overlap
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
