#include "checks/alignable.h"

#include "layout/prepared.h"
#include "project/conflicts.h"

namespace tenter::checks {

bool canAlignParts(const Subject& subject) {
    project::Project aligned = subject.project;
    for (std::size_t i = 0; i < subject.variant.bands.size(); ++i)
        if (subject.row.band(i).columns > 1)
            aligned.row().variants[subject.variantIndex].bands[i].set.row.level = project::Level::Subgrid;
    return project::conflicts(aligned).empty();
}

}  // namespace tenter::checks
