// One label, several places it leads to. WCAG 2.2 SC 2.4.4, SC 2.4.9 (AAA).
#include <map>

#include "checks/labels.h"
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

void checkLinkPurpose(const Subject& subject, Findings& out) {
    std::map<std::string, std::vector<const PartSeen*>> byName;
    for (const PartSeen& part : subject.parts)
        if (part.text != nullptr && isLink(*part.text))
            byName[plainLabel(nameOf(*part.text))].push_back(&part);
    for (const auto& [name, parts] : byName) {
        std::set<std::string> targets;
        Cause cause;
        for (const PartSeen* part : parts) {
            targets.insert(part->text->link);
            cause.add(part->card, part->part, subject.whole(), 0);
        }
        if (name.empty() || targets.size() < 2) continue;
        tell(out, cause,
             {"link-purpose", Severity::Note, "WCAG 2.2 SC 2.4.4",
              std::to_string(parts.size()) + " links are all called " +
                  inQuotation(nameOf(*parts.front()->text)) + " and lead to " +
                  std::to_string(targets.size()) +
                  " places: in a list of links they cannot be told apart. Say in each label where it leads, "
                  "or "
                  "give each a name that starts with it.",
              name});
    }
}

}  // namespace tenter::checks
