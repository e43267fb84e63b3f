// Words that are wider than their boxes: they overflow or break at any letter. Common practice, no source.
#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/word_overflow.h"
#include "units/quantities.h"

namespace tenter::checks {

void checkWords(const Subject& subject, Findings& out) {
    for (const bool broken : {false, true}) {
        Cause cause;
        for (const CheckedPart& part : subject.parts) {
            if (part.text == nullptr) continue;
            for (const WordOverflow& overflow :
                 wordOverflows(subject.row, part.card, part.part, subject.least, subject.most)) {
                if (breaksWords(subject.row, part.card, part.part, overflow.widths.to) != broken) continue;
                cause.add(part.card, part.part, overflow.widths, overflow.missing, overflow.at);
            }
        }
        if (!cause.any()) continue;
        // Just past a breakpoint, the band above it applies.
        const double inside =
            cause.at == cause.there.from ? cause.at + (cause.there.to - cause.at) * 1e-6 : cause.at;
        const std::string word = inQuotation(widestWord(subject.row, cause.card, cause.part, inside));
        report(out, cause,
               {"word",
                Severity::Warning,
                "common practice, no source",
                {atWidths(subject, cause.runOfWorst()) + " the word " + word + " in " +
                     worstAndOthers(subject, cause) + " is up to " + units::px(cause.worst, 1) +
                     " wider than its box and " + (broken ? "breaks in two" : "overflows it"),
                 broken ? "A word that breaks at any letter is hard to read"
                        : "It can cover other text or disappear at the edge",
                 "Reduce the font size (Text › Font size), widen the column, or add a soft hyphen"},
                broken ? "broken" : "overflow"});
    }
}

}  // namespace tenter::checks
