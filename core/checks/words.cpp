// Words wider than their boxes: they stick out, or are cut at any letter.
#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/wide.h"

namespace tenter::checks {

void checkWords(const Subject& subject, Findings& out) {
    for (const bool cut : {false, true}) {
        Cause cause;
        for (const PartSeen& part : subject.parts) {
            if (part.text == nullptr) continue;
            for (const Wide& wide :
                 wideWords(subject.row, part.card, part.part, subject.least, subject.most)) {
                if (cutsWords(subject.row, part.card, part.part, wide.widths.to) != cut) continue;
                cause.add(part.card, part.part, wide.widths, wide.missing, wide.at);
            }
        }
        if (!cause.any()) continue;
        // The band is that of the widths just past a breakpoint.
        const double inside =
            cause.at == cause.there.from ? cause.at + (cause.there.to - cause.at) * 1e-6 : cause.at;
        const std::string word = inQuotation(widestWord(subject.row, cause.card, cause.part, inside));
        tell(out, cause,
             {"word", Severity::Warning, "common practice, no source",
              word + " in " + worstAndOthers(subject, cause) + (cut ? " is cut in two " : " sticks out ") +
                  atWidths(subject, cause.there) + ", " + px(cause.worst) +
                  " wider than its room: smaller type, a wider column or a soft hyphen in the word mends it.",
              cut ? "cut" : "out"});
    }
}

}  // namespace tenter::checks
