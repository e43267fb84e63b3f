// A check as someone adds it: this file, and one line in the registry (checks/checks.def beside this file).
#include "checks/check.h"
#include "checks/phrases.h"

namespace tenter::checks {

namespace {

void checkAdded(const Subject& subject, Findings& out) {
    Cause cause;
    for (const CheckedPart& part : subject.parts)
        cause.add(part.place, subject.whole(), 0);
    report(out, cause,
           {Severity::Note,
            "a test",
            {worstAndOthers(subject, cause) + " is a part", "A test looks for it", ""}});
}

}  // namespace

extern const Check addedCheck{.name = "added-check", .run = checkAdded};

}  // namespace tenter::checks
