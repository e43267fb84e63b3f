// Pictures without alternative text. WCAG 2.2 SC 1.1.1.
#include "checks/check.h"
#include "checks/phrases.h"

namespace tenter::checks {

namespace {

void checkAlternatives(const Subject& subject, Findings& out) {
    Cause cause;
    for (const CheckedPart& part : subject.parts)
        if (part.picture != nullptr && part.picture->alt.find_first_not_of(" \t\r\n") == std::string::npos)
            cause.add(part.place, subject.whole(), 0);
    if (!cause.any()) return;
    report(out, cause,
           {Severity::Note,
            "WCAG 2.2 SC 1.1.1",
            {worstAndOthers(subject, cause) + " has no alternative text", "Screen readers skip it",
             "Describe in a few words what it shows (Pictures › Alternative text); leave only a decorative "
             "picture without"}});
}

}  // namespace

extern const Check alternativeCheck{
    .name = "alternative", .run = checkAlternatives, .dependsOnBreaks = false};

}  // namespace tenter::checks
