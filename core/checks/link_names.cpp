// Links need a name, and an accessible name must contain the visible text. WCAG 2.2 SC 4.1.2, SC 2.4.4, SC
// 2.5.3.
#include "checks/check.h"
#include "checks/labels.h"
#include "checks/phrases.h"

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
            {named(subject, part.place) + " has the accessible name " + inQuotation(part.text->name) +
                 ", which does not contain its text",
             "Readers who use voice control say the text that they see, and nothing happens",
             "Start the name with that text (Words › Accessible name)"},
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
    report(
        out, nameless,
        {Severity::Error,
         "WCAG 2.2 SC 2.4.4, SC 4.1.2",
         {"a link in " + worstAndOthers(subject, nameless) + " has neither text nor a name",
          "Screen readers have nothing to read out", "Give it text, or a name (Words › Accessible name)"}});
}

void remedyLabelsInNames(Candidates& out) {
    out.editTexts("Start the accessible name with the text", [](project::TextPart& text, project::PartRef) {
        text.name = project::plainText(text.copy) + ": " + text.name;
    });
    out.editTexts("Remove the accessible name, so that the text is read out",
                  [](project::TextPart& text, project::PartRef) { text.name.clear(); });
}

}  // namespace

extern const Check labelInNameCheck{.name = "label-in-name",
                                    .run = checkLabelsInNames,
                                    .dependsOnBreaks = false,
                                    .remedies = remedyLabelsInNames};
extern const Check linkNameCheck{.name = "link-name", .run = checkLinkNames, .dependsOnBreaks = false};

}  // namespace tenter::checks
