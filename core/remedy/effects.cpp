#include "remedy/effects.h"

#include <algorithm>

namespace tenter::remedy {

using checks::Finding;

namespace {

/// A finding at this much more of the widths has grown.
constexpr double grownShare = 0.02;

}  // namespace

const Finding* withKey(const std::vector<Finding>& findings, const std::string& key) {
    const auto found = std::ranges::find(findings, key, &Finding::key);
    return found == findings.end() ? nullptr : &*found;
}

void addEffects(std::size_t variant, const std::vector<Finding>& before, const std::vector<Finding>& after,
                Effects& effects) {
    for (const Finding& one : after) {
        const Finding* was = withKey(before, one.key);
        if (was == nullptr)
            effects.gained.push_back({variant, one});
        else if (one.share > was->share + grownShare)
            effects.grown.push_back({variant, one});
    }
    for (const Finding& one : before)
        if (withKey(after, one.key) == nullptr) effects.lost.push_back({variant, one});
}

Effects effectsOf(const project::Project& before, const project::Project& after,
                  const std::vector<std::size_t>& variants, text::ParagraphStore& store,
                  const checks::Options& options, const std::stop_token& cancellation) {
    Effects effects;
    for (const std::size_t variant : variants) {
        if (cancellation.stop_requested()) break;
        addEffects(variant, checks::check(before, variant, store, options),
                   checks::check(after, variant, store, options), effects);
    }
    return effects;
}

}  // namespace tenter::remedy
