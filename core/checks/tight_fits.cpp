// Lines that fit by a hair over a long run of widths: another browser or platform may wrap them otherwise.
// Measured: engines' grids move lines by 0.15 % or less.
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

void checkTightFits(const Subject& subject, Findings& out) {
    std::map<std::string, Cause> byRole;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        for (const sweep::Interval& tight : part.pieces.tight)
            if (tight.to - tight.from > subject.limits().tightRun)
                byRole[part.text->role].add(part.card, part.part, tight, tight.to - tight.from);
    }
    for (const auto& [role, cause] : byRole)
        tell(out, cause,
             {"tight-fit", Severity::Warning, "measured in two browser engines",
              "A line of " + worstAndOthers(subject, cause) + " fits by less than 0.25 % " +
                  atWidths(cause.there) +
                  ": on some platforms it will wrap otherwise. A slightly smaller or larger size there gives "
                  "it "
                  "room.",
              role});
}

}  // namespace tenter::checks
