// Pictures without alternative text. WCAG 2.2 SC 1.1.1.
#include "checks/check.h"
#include "checks/phrases.h"
#include "wording/say.h"

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
            {wording::say("%1 has no alternative text", {worstAndOthers(subject, cause)}),
             wording::say("Screen readers skip it"),
             wording::say("Describe in a few words what it shows (Pictures › Alternative text); leave only a "
                          "decorative picture without")}});
}

}  // namespace

extern const Check alternativeCheck{
    .name = "alternative", .run = checkAlternatives, .dependsOnBreaks = false};

}  // namespace tenter::checks
