#include "remedy/remedies.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "checks/cause.h"
#include "project/validate.h"
#include "remedy/moves.h"
#include "solve/solve.h"

namespace tenter::remedy {

using checks::Candidate;
using checks::Finding;
using project::Project;

namespace {

/// What stays of a finding that counts as remedied in part, of its widths.
constexpr double leastRemoved = 0.5;

/// Tries candidates against one finding.
class Trier {
public:
    Trier(const Project& project, std::size_t variant, const Finding& finding, text::ParagraphStore& store,
          const Options& options)
        : project_(project), variant_(variant), finding_(finding), store_(store), options_(options) {}

    std::vector<Remedy> run() {
        std::vector<Tried> found;
        std::set<std::string> served;  // groups
        const checks::Options checking = checksOf(project_);
        for (const Candidate& candidate :
             checks::candidatesFor(shown(project_), variant_, finding_, store_, checking)) {
            if (options_.cancellation.stop_requested()) return {};
            if (candidate.changesText && options_.trial) continue;
            if (!candidate.group.empty() && served.contains(candidate.group)) continue;
            std::optional<Remedy> remedy = tried(candidate);
            if (!remedy) continue;
            const bool known = std::ranges::any_of(
                found, [&](const Tried& other) { return other.remedy.project == remedy->project; });
            if (known) continue;
            if (!candidate.group.empty() && remedy->removes) served.insert(candidate.group);
            add(found, {std::move(*remedy), candidate.group});
        }
        if (options_.cancellation.stop_requested()) return {};
        std::ranges::stable_sort(found, {}, [](const Tried& each) {
            const Remedy& one = each.remedy;
            return std::tuple(!one.removes, one.gained.size() + one.grown.size(), one.move.distance);
        });
        std::vector<Remedy> best;
        for (Tried& one : found)
            if (best.size() < options_.most) best.push_back(std::move(one.remedy));
        return best;
    }

private:
    struct Tried {
        Remedy remedy;
        std::string group;
    };

    /// Adds a remedy. Of one group the one is kept that leaves least of the finding.
    static void add(std::vector<Tried>& found, Tried tried) {
        const auto other = std::ranges::find_if(
            found, [&](const Tried& one) { return !tried.group.empty() && one.group == tried.group; });
        if (other == found.end())
            found.push_back(std::move(tried));
        else if (!other->remedy.removes &&
                 (tried.remedy.removes || tried.remedy.shareAfter < other->remedy.shareAfter))
            *other = std::move(tried);
    }

    [[nodiscard]] Project shown(const Project& project) const {
        return options_.trial ? project::tried(project, *options_.trial) : project;
    }

    [[nodiscard]] checks::Options checksOf(const Project& project) const {
        checks::Options checking = options_.checks;
        checking.untried = options_.trial ? std::make_shared<const Project>(project) : nullptr;
        return checking;
    }

    [[nodiscard]] std::vector<Finding> findingsOf(const Project& project, std::size_t variant) const {
        return checks::check(shown(project), variant, store_, checksOf(project));
    }

    const std::vector<Finding>& before(std::size_t variant) {
        const auto known = before_.find(variant);
        if (known != before_.end()) return known->second;
        return before_.emplace(variant, findingsOf(project_, variant)).first->second;
    }

    const Places& placesBefore(std::size_t variant) {
        const auto known = places_.find(variant);
        if (known != places_.end()) return known->second;
        return places_.emplace(variant, placesOf(shown(project_), variant, store_, options_.checks.profile))
            .first->second;
    }

    /// The project with the candidate applied; empty if that is not possible.
    [[nodiscard]] std::optional<Project> applied(const Candidate& candidate) const {
        Project copy = project_;
        candidate.change(copy);
        if (candidate.solves) {
            solve::Options solving;
            solving.profile = options_.checks.profile;
            solving.cancellation = options_.cancellation;
            solve::Answer answer = solve::solve(copy, {variant_}, store_, solving);
            if (!answer.solved) return std::nullopt;
            copy = std::move(*answer.solved);
            copy.row().wishes = project_.row().wishes;
        }
        if (copy == project_ || !project::validate(copy, &project_).empty()) return std::nullopt;
        return copy;
    }

    /// The variants whose row can differ between the project and `other`.
    [[nodiscard]] std::vector<std::size_t> variantsChangedIn(const Project& other) const {
        std::vector<std::size_t> changed;
        Project rest = other;
        rest.row().variants = project_.row().variants;
        const bool all = rest != project_;
        for (std::size_t i = 0; i < project_.row().variants.size(); ++i)
            if (all || other.row().variants[i] != project_.row().variants[i]) changed.push_back(i);
        return changed;
    }

    /// What the candidate does; empty if it is no remedy.
    std::optional<Remedy> tried(const Candidate& candidate) {
        std::optional<Project> after = applied(candidate);
        if (!after) return std::nullopt;
        Remedy remedy;
        remedy.label = candidate.label;
        remedy.where = candidate.where;
        remedy.share = finding_.share;
        std::vector<std::size_t> variants = variantsChangedIn(*after);
        // The finding's own variant first: most candidates fail there.
        std::ranges::stable_sort(variants, {}, [&](std::size_t one) { return one != variant_; });
        for (const std::size_t variant : variants) {
            if (options_.cancellation.stop_requested()) return std::nullopt;
            const std::vector<Finding> findings = findingsOf(*after, variant);
            if (variant == variant_ && !isRemedied(findings, remedy)) return std::nullopt;
            if (!compare(variant, findings, remedy)) return std::nullopt;
        }
        const Project seen = shown(*after);
        for (const std::size_t variant : variants) {
            const Move move = farthestMove(
                placesBefore(variant),
                placesOf(seen, variant, store_, options_.checks.profile, &placesBefore(variant)));
            if (move.distance > remedy.move.distance) remedy.move = move;
        }
        remedy.project = std::move(*after);
        return remedy;
    }

    /// False if the finding is still there at more than half of its widths.
    bool isRemedied(const std::vector<Finding>& findings, Remedy& remedy) const {
        const Finding* left = withKey(findings, finding_.key);
        remedy.removes = left == nullptr;
        if (left == nullptr) return true;
        remedy.shareAfter = left->share;
        const double widths = checks::lengthOf(finding_.widths);
        return widths > 0 && checks::lengthOf(left->widths) <= (1 - leastRemoved) * widths;
    }

    /// Adds what else comes and goes in a variant. False if something as bad as the finding comes.
    bool compare(std::size_t variant, const std::vector<Finding>& after, Remedy& remedy) {
        Effects effects;
        addEffects(variant, before(variant), after, effects);
        const auto isOwn = [&](const Change& one) {
            return variant == variant_ && one.finding.key == finding_.key;
        };
        const auto isBad = [&](const Change& one) {
            return one.finding.severity == checks::Severity::Error ||
                   one.finding.severity >= finding_.severity;
        };
        for (auto [found, kept] :
             {std::pair{&effects.lost, &remedy.lost}, std::pair{&effects.gained, &remedy.gained},
              std::pair{&effects.grown, &remedy.grown}}) {
            std::erase_if(*found, isOwn);
            if (found != &effects.lost && std::ranges::any_of(*found, isBad)) return false;
            kept->insert(kept->end(), found->begin(), found->end());
        }
        return true;
    }

    const Project& project_;
    std::size_t variant_;
    const Finding& finding_;
    text::ParagraphStore& store_;
    const Options& options_;
    std::map<std::size_t, std::vector<Finding>> before_;  // by variant
    std::map<std::size_t, Places> places_;
};

}  // namespace

std::vector<Remedy> remediesFor(const Project& project, std::size_t variant, const Finding& finding,
                                text::ParagraphStore& store, const Options& options) {
    return Trier(project, variant, finding, store, options).run();
}

}  // namespace tenter::remedy
