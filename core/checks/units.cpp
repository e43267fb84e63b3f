// Type in px takes no notice of the text size a reader has chosen in the browser. Common practice; zoom is
// what WCAG 2.2 SC 1.4.4 asks for.
#include "checks/registry.h"

namespace tenter::checks {

void checkUnits(const Subject& subject, Findings& out) {
    if (subject.project.unit != units::Unit::Px || subject.roles.empty()) return;
    Cause cause;
    for (const RoleSeen& role : subject.roles)
        cause.add(role.card, role.part, subject.whole(), 0);
    tell(out, cause,
         {"unit", Severity::Note, "common practice, no source",
          "Font sizes are handed over in px, which take no notice of the text size readers have set in their "
          "browser: rem follows it.",
          ""});
}

}  // namespace tenter::checks
