// Font sizes in px ignore the text size that a reader sets in the browser. Common practice; WCAG 2.2 SC 1.4.4
// asks only for zoom.
#include "checks/check.h"
#include "checks/phrases.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

void checkUnits(const Subject& subject, Findings& out) {
    if (subject.project.unit != units::Unit::Px || subject.roles.empty()) return;
    Cause cause;
    for (const CheckedRole& role : subject.roles)
        cause.add(role.place, subject.whole(), 0);
    report(out, cause,
           {Severity::Note,
            commonPractice(),
            {wording::say("the stylesheet of these cards gives font sizes in px"),
             wording::say("Text in px does not follow the text size that readers set in their browser"),
             wording::say("Choose rem (Row › Size unit)")}});
}

void remedyUnits(Candidates& out) {
    out.add(wording::say("Give font sizes in rem"), wording::say("in the stylesheet"),
            [](project::Project& project) { project.unit = units::Unit::Rem; });
}

}  // namespace

extern const Check unitCheck{
    .name = "unit", .run = checkUnits, .dependsOnBreaks = false, .remedies = remedyUnits};

}  // namespace tenter::checks
