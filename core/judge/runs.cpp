#include "judge/runs.h"

#include <algorithm>
#include <cmath>

namespace tenter::judge {

namespace {

using What = Difference::What;

bool isBoxSide(const Difference& difference) {
    return difference.what == What::X || difference.what == What::Y || difference.what == What::Width ||
           difference.what == What::Height;
}

bool isSame(const Difference& one, const Difference& other) {
    const bool sameFigure = one.what == other.what || (isBoxSide(one) && isBoxSide(other));
    return sameFigure && one.card == other.card && one.part == other.part;
}

int severity(const Difference& difference) {
    if (isBoxSide(difference)) return 0;
    if (difference.what == What::FontSize) return 1;
    return difference.what == What::Lines ? 2 : 3;
}

double offset(const Difference& difference) {
    return std::abs(difference.measured - difference.computed);
}

}  // namespace

std::vector<DifferingRun> differingRuns(const Verdicts& verdicts) {
    std::vector<DifferingRun> runs;
    for (const auto& entry : verdicts) {
        const double width = entry.first;
        const Verdict& verdict = entry.second;
        const bool linesDiffer =
            std::any_of(verdict.differences.begin(), verdict.differences.end(),
                        [](const Difference& difference) { return difference.what == What::Lines; });
        for (const Difference& difference : verdict.differences) {
            if (linesDiffer && isBoxSide(difference)) continue;
            const auto open = std::find_if(runs.begin(), runs.end(), [&](const DifferingRun& run) {
                return isSame(run.worst, difference) && width <= run.last + 1;
            });
            if (open == runs.end()) {
                runs.push_back({width, width, difference});
                continue;
            }
            open->last = width;
            if (offset(difference) > offset(open->worst)) open->worst = difference;
        }
    }
    std::stable_sort(runs.begin(), runs.end(), [](const DifferingRun& one, const DifferingRun& other) {
        return severity(one.worst) > severity(other.worst);
    });
    return runs;
}

}  // namespace tenter::judge
