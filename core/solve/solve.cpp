#include "solve/solve.h"

#include <algorithm>
#include <future>
#include <memory>
#include <tuple>

#include "solve/bindings.h"
#include "solve/cancellation.h"
#include "solve/conflict.h"
#include "solve/constraint.h"
#include "solve/model.h"
#include "solve/shared_ramps.h"
#include "solve/solution.h"
#include "solve/verify.h"

namespace tenter::solve {

namespace {

/// Upper limit of rounds in which violated wishes get a larger tolerance.
constexpr int maxRounds = 12;

class Solver {
public:
    Solver(const project::Project& project, const std::vector<std::size_t>& variants,
           text::ParagraphStore& store, const Options& options)
        : project_(project),
          store_(store),
          projectWishes_(project::effectiveWishes(project)),
          wishes_(singleWishes(project, projectWishes_)),
          defaults_(singleWishes(project, project::defaultWishes(project))),
          prepared_(project, variantsToSolve(project, projectWishes_, variants), store, options.profile,
                    options.cancellation, options.memory),
          ramps_(project, prepared_.variants, rolesIn(wishes_)) {
        for (const std::string& role : rolesIn(wishes_))
            if (needsSharedRamps(role)) shareRamps(role);
    }

    Answer run() {
        Answer answer;
        answer.variants = prepared_.variants;
        if (wishes_.empty()) {
            answer.solved = project_;
            return answer;
        }
        for (int round = 0; round < maxRounds;) {
            const Model model(prepared_, ramps_, projectWishes_, wishes_);
            const auto solution = solutionOf(model);
            if (!solution) {
                if (!splitConflictingRamps(model)) return conflictAnswer(model);
                continue;
            }
            answer.solved = applied(*solution);
            answer.sharedRamps = sharedRamps();
            answer.bindings = bindingsOf(model, wishes_, *solution);
            const std::vector<std::size_t> violated = violatedBy(*answer.solved);
            if (violated.empty()) return answer;
            for (const std::size_t index : violated) {
                wishes_[index].tolerance += wishes_[index].kind->traits.toleranceStep;
                if (round + 1 == maxRounds) answer.violated.push_back(wishes_[index]);
            }
            ++round;
        }
        return answer;
    }

private:
    static std::vector<std::string> rolesIn(const std::vector<Wish>& wishes) {
        std::vector<std::string> roles;
        for (const Wish& wish : wishes)
            if (std::ranges::find(roles, wish.role) == roles.end()) roles.push_back(wish.role);
        return roles;
    }

    /// The bands that must share a ramp of `role`. None for locked roles, and none for ramps that follow the
    /// card: variants have cards of different widths.
    [[nodiscard]] std::vector<BandGroup> groupsOf(const std::string& role) const {
        if (isLocked(role)) return {};
        const bool followsCard = std::ranges::any_of(prepared_.rows(), [&](const PreparedVariant& row) {
            for (std::size_t band = 0; band < row.row->bandCount(); ++band)
                if (row.row->settings(band).text.find(role)->follow == project::Follow::Card) return true;
            return false;
        });
        return followsCard ? std::vector<BandGroup>() : bandGroups(project_, wishes_, role);
    }

    /// True if ramps that must be equal have different end widths.
    [[nodiscard]] bool needsSharedRamps(const std::string& role) const {
        for (const BandGroup& group : groupsOf(role)) {
            const auto endWidths = [&](const BandGroup::Member& at) {
                const RampVariables& ramp = ramps_.in(at.variant, at.band, role);
                return std::tuple(ramp.fromVariable == ramp.toVariable, ramp.from.width, ramp.to.width);
            };
            for (const BandGroup::Member& one : group.members)
                if (endWidths(one) != endWidths(group.members.front())) return true;
        }
        return false;
    }

    void shareRamps(const std::string& role) {
        const std::vector<BandGroup> groups = groupsOf(role);
        for (const std::size_t variant : prepared_.variants)
            ramps_.split(variant, role, groupEnds(project_, groups, variant));
        sharedRoles_.push_back(role);
    }

    [[nodiscard]] project::Project applied(const Solution& solution) const {
        project::Project solved = ramps_.applied(project_, solution.sizes);
        for (const std::string& role : sharedRoles_)
            moveSizeToStyle(solved, role);
        return solved;
    }

    [[nodiscard]] std::vector<SharedRamp> sharedRamps() const {
        std::vector<SharedRamp> all;
        for (const std::string& role : sharedRoles_)
            for (const BandGroup& group : groupsOf(role))
                if (group.breakpointsDiffer) all.push_back({role, group.widths});
        return all;
    }

    /// If wishes conflict because bands share a ramp, gives each band its own; false if that is not the
    /// cause.
    bool splitConflictingRamps(const Model& model) {
        if (isFeasible(model, ramps_)) return false;
        const std::vector<bool> outside = wishesOutsideConflict(model, ramps_, wishes_, explicitWishes());
        std::vector<std::string> roles;
        for (std::size_t i = 0; i < wishes_.size(); ++i) {
            if (outside[i]) continue;
            for (const std::string& role : {wishes_[i].role, wishes_[i].other})
                if (!role.empty() && !isLocked(role) && ramps_.canSplit(role)) roles.push_back(role);
        }
        for (const std::string& role : roles) {
            if (!ramps_.canSplit(role)) continue;
            if (!groupsOf(role).empty()) {
                shareRamps(role);
                continue;
            }
            for (const std::size_t variant : prepared_.variants)
                ramps_.split(variant, role, model.bandWidths(variant, role));
        }
        return !roles.empty();
    }

    [[nodiscard]] bool isLocked(const std::string& role) const {
        return std::ranges::any_of(
            wishes_, [&](const Wish& wish) { return wish.kind->traits.locksSizes && wish.role == role; });
    }

    /// Sizes on the wished grid. Without one, on a coarse grid if possible, else on a finer one.
    [[nodiscard]] std::optional<Solution> solutionOf(const Model& model) const {
        auto solution = optimalSizes(model, ramps_, *projectWishes_.aim, wishes_, model.gridStep());
        if (!solution && projectWishes_.grid->isZero() && isFeasible(model, ramps_))
            solution = optimalSizes(model, ramps_, *projectWishes_.aim, wishes_, model.gridStep() / 10);
        return solution;
    }

    /// Lays out the solved row; returns the indices of the wishes that it violates.
    std::vector<std::size_t> violatedBy(const project::Project& solved) {
        std::vector<PreparedVariant> laidOut;
        for (const PreparedVariant& row : prepared_.rows()) {
            throwIfStopped(prepared_.cancellation);
            laidOut.push_back({row.variant, std::make_unique<layout::PreparedRow>(solved, row.variant, store_,
                                                                                  row.row->profile())});
        }
        // Half of the rows on another thread: a person waits for the answer.
        const auto violatedInEverySecond = [&](std::size_t first) {
            std::vector<bool> violated(wishes_.size(), false);
            for (std::size_t row = first; row < laidOut.size(); row += 2)
                note(
                    violatedWidths(solved, *laidOut[row].row, wishes_, ignoredCards(project_, projectWishes_),
                                   project_.leastWidth, project_.mostWidth, prepared_.cancellation),
                    violated);
            return violated;
        };
        auto odd = std::async(std::launch::async, violatedInEverySecond, 1);
        std::vector<bool> violated = violatedInEverySecond(0);
        const std::vector<bool> others = odd.get();
        for (std::size_t row = 1; row < laidOut.size(); ++row)
            if (laidOut[row].variant != laidOut[row - 1].variant)
                note(violatedTogether(*laidOut[row - 1].row, *laidOut[row].row, wishes_, project_.leastWidth,
                                      project_.mostWidth),
                     violated);
        std::vector<std::size_t> found;
        for (std::size_t i = 0; i < wishes_.size(); ++i)
            if (violated[i] || others[i]) found.push_back(i);
        return found;
    }

    /// Sets the entry of each wish in `violated` that has widths.
    static void note(const std::vector<std::vector<sweep::Interval>>& widths, std::vector<bool>& violated) {
        for (std::size_t i = 0; i < widths.size(); ++i)
            if (!widths[i].empty()) violated[i] = true;
    }

    Answer conflictAnswer(const Model& model) {
        Answer answer;
        answer.variants = prepared_.variants;
        if (isFeasible(model, ramps_)) {
            answer.offGrid = true;
            return answer;
        }
        const std::vector<bool> outside = wishesOutsideConflict(model, ramps_, wishes_, explicitWishes());
        answer.conflict.reserveOnly = isFeasibleWithoutReserve(outside);
        for (SharedRamp& one : sharedRamps())
            if (couplesVariantsInConflict(one.role, outside)) answer.sharedRamps.push_back(std::move(one));
        const std::vector<const ConstraintRow*> constraints = violatedConstraints(model, ramps_, outside);
        for (std::size_t i = 0; i < wishes_.size(); ++i) {
            if (outside[i]) continue;
            answer.conflict.wishes.push_back(wishes_[i]);
            answer.conflict.relaxations.push_back(relaxation(model, i, outside));
            if (i < constraints.size() && constraints[i] != nullptr)
                answer.conflict.places.push_back(
                    bindingAt(model, wishes_[i], constraints[i]->origin, constraints[i]->origin.bound));
        }
        return answer;
    }

    /// True if a wish of the conflict requires the same size of `role` in every variant.
    [[nodiscard]] bool couplesVariantsInConflict(const std::string& role,
                                                 const std::vector<bool>& outside) const {
        for (std::size_t i = 0; i < wishes_.size(); ++i)
            if (!outside[i] && wishes_[i].kind->traits.couplesVariants && wishes_[i].role == role)
                return true;
        return false;
    }

    Relaxation relaxation(const Model& model, std::size_t index, const std::vector<bool>& outside) {
        std::vector<bool> removed(wishes_.size(), false);
        removed[index] = true;
        // If there is a second conflict, the relaxation is one that resolves this conflict alone.
        const bool othersConflict = !isFeasible(model, ramps_, removed);
        const auto feasibleWith = [&](const Wish& tried) {
            return isFeasible(Model(model, index, tried), ramps_,
                              othersConflict ? outside : std::vector<bool>());
        };
        const auto hasSizes = [&](const Wish& tried) {
            return othersConflict || solutionOf(Model(model, index, tried));
        };
        Relaxation smallest = smallestRelaxation(wishes_[index], feasibleWith, hasSizes);
        smallest.othersConflict = othersConflict;
        smallest.unreadable = wishes_[index].kind->isUnreadable(wishes_[index], smallest, defaults_);
        return smallest;
    }

    /// By wish, true for those that the user set, false for those that are defaults.
    [[nodiscard]] std::vector<bool> explicitWishes() const {
        std::vector<bool> isExplicit;
        isExplicit.reserve(wishes_.size());
        for (const Wish& wish : wishes_)
            isExplicit.push_back(std::ranges::none_of(defaults_, [&](const Wish& usual) {
                return usual.kind == wish.kind && usual.role == wish.role && usual.value == wish.value &&
                       usual.everywhere == wish.everywhere;
            }));
        return isExplicit;
    }

    [[nodiscard]] bool isFeasibleWithoutReserve(const std::vector<bool>& outside) const {
        if (*projectWishes_.reserve <= 0) return false;
        project::Wishes withoutReserve = projectWishes_;
        withoutReserve.reserve = 0;
        return isFeasible(Model(prepared_, ramps_, withoutReserve, wishes_), ramps_, outside);
    }

    const project::Project& project_;
    text::ParagraphStore& store_;
    project::Wishes projectWishes_;
    std::vector<Wish> wishes_;
    std::vector<Wish> defaults_;  // wishes of a project that states none
    PreparedVariants prepared_;
    RampSet ramps_;
    std::vector<std::string> sharedRoles_;  // roles whose overlapping bands got one ramp
};

}  // namespace

project::Project relaxed(const project::Project& project, const Relaxation& relaxation) {
    project::Project changed = project;
    if (relaxation.removed) {
        relaxation.wish.kind->remove(changed, relaxation.wish);
        return changed;
    }
    project::Wishes more;
    more.roles.push_back(toRoleWishes(relaxation.wish));
    changed.row().wishes = project::overlaid(project.row().wishes.value_or(project::Wishes()), more);
    return changed;
}

Answer solve(const project::Project& project, const std::vector<std::size_t>& variants,
             text::ParagraphStore& store, const Options& options) {
    if (options.memory != nullptr) options.memory->startRun();
    try {
        return Solver(project, variants, store, options).run();
    } catch (const Cancelled&) {
        Answer answer;
        answer.isCancelled = true;
        return answer;
    }
}

}  // namespace tenter::solve
