// Pictures without alternative text. WCAG 2.2 SC 1.1.1.
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

void checkAlternatives(const Subject& subject, Findings& out) {
    Cause cause;
    for (const PartSeen& part : subject.parts)
        if (part.picture != nullptr && part.picture->alt.find_first_not_of(" \t\r\n") == std::string::npos)
            cause.add(part.card, part.part, subject.whole(), 0);
    if (!cause.any()) return;
    tell(out, cause,
         {"alternative", Severity::Note, "WCAG 2.2 SC 1.1.1",
          sentence(worstAndOthers(subject, cause)) + " has no alternative text, so screen readers pass over: "
                                                     "right if only decoration, else say in a few "
                                                     "words what is to be seen.",
          ""});
}

}  // namespace tenter::checks
