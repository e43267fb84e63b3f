// The findings that come, go or widen between two states of a project.
#pragma once

#include <cstddef>
#include <stop_token>
#include <string>
#include <vector>

#include "checks/checks.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::remedy {

/// A finding that a change of the project removes or adds, in one variant.
struct Change {
    std::size_t variant = 0;
    checks::Finding finding;
};

/// What a change of the project does to its findings.
struct Effects {
    std::vector<Change> lost;    ///< findings that it removes
    std::vector<Change> gained;  ///< findings that it adds
    std::vector<Change> grown;   ///< findings at more widths than before, as they are after it

    [[nodiscard]] bool any() const { return !lost.empty() || !gained.empty() || !grown.empty(); }
};

/// The finding with that key, or null.
const checks::Finding* withKey(const std::vector<checks::Finding>& findings, const std::string& key);

/// Adds the differences between the findings of one variant before and after a change.
void addEffects(std::size_t variant, const std::vector<checks::Finding>& before,
                const std::vector<checks::Finding>& after, Effects& effects);

/// The differences between the findings of `before` and `after` in `variants`, by index. Incomplete if it is
/// cancelled.
Effects effectsOf(const project::Project& before, const project::Project& after,
                  const std::vector<std::size_t>& variants, text::ParagraphStore& store,
                  const checks::Options& options = {}, const std::stop_token& cancellation = {});

}  // namespace tenter::remedy
