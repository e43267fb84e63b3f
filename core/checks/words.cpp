// Words that are wider than their boxes: they overflow or break at any letter. Common practice, no source.
#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "checks/word_overflow.h"
#include "units/quantities.h"

namespace tenter::checks {

namespace {

void checkWords(const Subject& subject, Findings& out) {
    for (const bool broken : {false, true}) {
        Cause cause;
        for (const CheckedPart& part : subject.parts) {
            if (part.text == nullptr) continue;
            for (const WordOverflow& overflow :
                 wordOverflows(subject.row, part.place, subject.least, subject.most)) {
                if (breaksWords(subject.row, part.place, overflow.widths.to) != broken) continue;
                cause.add(part.place, overflow.widths, overflow.missing, overflow.at);
            }
        }
        if (!cause.any()) continue;
        // Just past a breakpoint, the band above it applies.
        const double inside =
            cause.at == cause.there.from ? cause.at + (cause.there.to - cause.at) * 1e-6 : cause.at;
        const std::string word = inQuotation(widestWord(subject.row, cause.place, inside));
        report(out, cause,
               {Severity::Warning,
                "common practice, no source",
                {atWidths(subject, cause.runOfWorst()) + ", the word " + word + " in " +
                     worstAndOthers(subject, cause) + " is up to " + units::px(cause.worst, 1) +
                     " wider than its box and " + (broken ? "breaks in two" : "overflows it"),
                 broken ? "A word that breaks at any letter is hard to read"
                        : "It can cover other text or disappear at the edge",
                 "Reduce the font size (Text › Font size), widen the column, or add a soft hyphen"},
                broken ? "broken" : "overflow"});
    }
}

void remedyWords(Candidates& out) {
    if (out.isFor("overflow")) proposeWordBreaks(out);
    for (const std::string& role : out.roles())
        proposeSizes(out, role, Need::Room);
    proposeTighterCards(out);
    proposeColumns(out, Need::Room);
    proposeBreakpoints(out);
    out.solveSizes();
}

}  // namespace

extern const Check wordCheck{
    .name = "word", .run = checkWords, .dependsOnBreaks = true, .remedies = remedyWords};

}  // namespace tenter::checks
