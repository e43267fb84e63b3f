// Words that are wider than their boxes: they overflow or break at any letter. Common practice, no source.
#include <functional>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "checks/word_overflow.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

void checkWords(const Subject& subject, Findings& out) {
    Cause overflowing, breaking;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        for (const WordOverflow& overflow :
             wordOverflows(subject.sizes, part.place, subject.least, subject.most)) {
            Cause& cause = breaksWords(subject.row, part.place, overflow.widths.to) ? breaking : overflowing;
            cause.add(part.place, overflow.widths, overflow.missing, overflow.at);
        }
    }
    for (Cause& cause : {std::ref(overflowing), std::ref(breaking)}) {
        if (!cause.any()) continue;
        const bool broken = &cause == &breaking;
        // Just past a breakpoint, the band above it applies.
        const double inside =
            cause.at == cause.there.from ? cause.at + (cause.there.to - cause.at) * 1e-6 : cause.at;
        const std::string word = inQuotation(widestWord(subject.row, cause.place, inside));
        const std::string widths = atWidths(subject, cause.runOfWorst());
        const std::string place = inWorstAndOthers(subject, cause);
        const std::string wider = units::px(cause.worst, 1);
        report(out, cause,
               {Severity::Warning,
                commonPractice(),
                {broken ? wording::say("%1, the word %2 %3 is up to %4 wider than its box and breaks in two",
                                       {widths, word, place, wider})
                        : wording::say("%1, the word %2 %3 is up to %4 wider than its box and overflows it",
                                       {widths, word, place, wider}),
                 broken ? wording::say("A word that breaks at any letter is hard to read")
                        : wording::say("It can cover other text or disappear at the edge"),
                 wording::say(
                     "Reduce the font size (Text › Font size), widen the column, or add a soft hyphen")},
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
