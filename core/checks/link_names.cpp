// Links must have a name, and a name given apart must contain what is seen. WCAG 2.2 SC 4.1.2, SC 2.4.4, SC
// 2.5.3.
#include "checks/labels.h"
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

void checkLinkNames(const Subject& subject, Findings& out) {
    Cause nameless;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        const bool link = isLink(*part.text);
        if (link && plainLabel(nameOf(*part.text)).empty())
            nameless.add(part.card, part.part, subject.whole(), 0);
        for (const project::Run& run : part.text->copy)
            if (!link && run.kind == project::Run::Kind::Link && plainLabel(run.text).empty())
                nameless.add(part.card, part.part, subject.whole(), 0);
        const std::string label = plainLabel(project::plainText(part.text->copy));
        if (!link || part.text->name.empty() || label.empty()) continue;
        if (plainLabel(part.text->name).find(label) != std::string::npos) continue;
        Cause cause;
        cause.add(part.card, part.part, subject.whole(), 0);
        tell(out, cause,
             {"label-in-name", Severity::Error, "WCAG 2.2 SC 2.5.3",
              sentence(named(subject, part.card, part.part)) + " is called " + inQuotation(part.text->name) +
                  " by screen readers and voice control: whoever says what they see reaches nothing. Begin "
                  "the name with the words on it.",
              std::to_string(part.card) + "." + std::to_string(part.part)});
    }
    if (!nameless.any()) return;
    tell(out, nameless,
         {"link-name", Severity::Error, "WCAG 2.2 SC 2.4.4, SC 4.1.2",
          "A link in " + worstAndOthers(subject, nameless) +
              " has no words, so screen readers have nothing to say for it: give it a label, or a name.",
          ""});
}

}  // namespace tenter::checks
