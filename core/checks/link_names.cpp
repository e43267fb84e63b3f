// Links need a name, and an accessible name must contain the visible text. WCAG 2.2 SC 4.1.2, SC 2.4.4, SC
// 2.5.3.
#include "checks/check.h"
#include "checks/labels.h"
#include "checks/phrases.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Reports a link whose accessible name lacks its visible text.
void reportLabel(const Subject& subject, const CheckedPart& part, Findings& out) {
    const std::string label = plainLabel(project::plainText(part.text->copy));
    if (part.text->name.empty() || label.empty()) return;
    if (plainLabel(part.text->name).find(label) != std::string::npos) return;
    Cause cause;
    cause.add(part.place, subject.whole(), 0);
    report(out, cause,
           {Severity::Error,
            "WCAG 2.2 SC 2.5.3",
            {wording::say("%1 has the accessible name %2, which does not contain its text",
                          {named(subject, part.place), inQuotation(part.text->name)}),
             wording::say("Readers who use voice control say the text that they see, and nothing happens"),
             wording::say("Start the name with that text (Words › Accessible name)")},
            std::to_string(part.place.card) + "." + std::to_string(part.place.part)});
}

void checkLabelsInNames(const Subject& subject, Findings& out) {
    for (const CheckedPart& part : subject.parts)
        if (part.text != nullptr && isLink(*part.text)) reportLabel(subject, part, out);
}

void checkLinkNames(const Subject& subject, Findings& out) {
    Cause nameless;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        const bool link = isLink(*part.text);
        if (link && plainLabel(nameOf(*part.text)).empty()) nameless.add(part.place, subject.whole(), 0);
        for (const project::Run& run : part.text->copy)
            if (!link && run.kind == project::Run::Kind::Link && plainLabel(run.text).empty())
                nameless.add(part.place, subject.whole(), 0);
    }
    if (!nameless.any()) return;
    report(out, nameless,
           {Severity::Error,
            "WCAG 2.2 SC 2.4.4, SC 4.1.2",
            {wording::say("a link %1 has neither text nor a name", {inWorstAndOthers(subject, nameless)}),
             wording::say("Screen readers have nothing to read out"),
             wording::say("Give it text, or a name (Words › Accessible name)")}});
}

void remedyLabelsInNames(Candidates& out) {
    out.editTexts(wording::say("Start the accessible name with the text"),
                  [](project::TextPart& text, project::PartRef) {
                      text.name = project::plainText(text.copy) + ": " + text.name;
                  });
    out.editTexts(wording::say("Remove the accessible name, so that the text is read out"),
                  [](project::TextPart& text, project::PartRef) { text.name.clear(); });
}

}  // namespace

extern const Check labelInNameCheck{.name = "label-in-name",
                                    .run = checkLabelsInNames,
                                    .dependsOnBreaks = false,
                                    .remedies = remedyLabelsInNames};
extern const Check linkNameCheck{.name = "link-name", .run = checkLinkNames, .dependsOnBreaks = false};

}  // namespace tenter::checks
