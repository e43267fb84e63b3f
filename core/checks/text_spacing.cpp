// Text that overflows when a reader increases the text spacing: a copy of the project with that spacing is
// laid out. Boxes grow with their lines, so only the width can be too small. WCAG 2.2 SC 1.4.12.
#include <algorithm>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "checks/word_overflow.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

constexpr double spreadLine = 1.5;
constexpr double spreadParagraph = 2;
constexpr double spreadLetter = 0.12;
constexpr double spreadWord = 0.16;

/// The project with the spacing of the criterion in every band of the variant.
project::Project withTextSpacing(const Subject& subject) {
    project::Project project = subject.project;
    for (project::Band& band : project.row().variants[subject.variantIndex].bands) {
        for (const CheckedRole& role : subject.roles) {
            project::TextStyle& style = band.set.text.of(role.name);
            style.lineHeight = units::LineHeight::times(spreadLine);
            style.letterSpacing = units::Length::em(spreadLetter);
            style.wordSpacing = units::Length::em(spreadWord);
            if (role.name != "heading" && role.name != "button")
                style.margin.bottom = units::Length::em(spreadParagraph);
        }
    }
    return project;
}

/// The parts of `span` outside of `others`, which rise.
std::vector<sweep::Interval> without(const sweep::Interval& span, const std::vector<WordOverflow>& others) {
    std::vector<sweep::Interval> left;
    double from = span.from;
    // There may be thousands of them, for thousands of spans.
    auto other =
        std::ranges::upper_bound(others, from, {}, [](const WordOverflow& each) { return each.widths.to; });
    for (; other != others.end() && other->widths.from < span.to; ++other) {
        if (other->widths.from > from) left.push_back({from, other->widths.from});
        from = std::max(from, other->widths.to);
    }
    if (from + sweep::leastStep < span.to) left.push_back({from, span.to});
    return left;
}

void checkTextSpacing(const Subject& subject, Findings& out) {
    const project::Project project = withTextSpacing(subject);
    const layout::PreparedRow row(project, subject.variantIndex, subject.paragraphs, subject.row.profile());
    const layout::LinearSizes sizes(row);
    Cause cause;
    for (const CheckedPart& part : subject.parts) {
        if (part.text == nullptr) continue;
        std::vector<WordOverflow> before;
        bool known = false;
        for (const WordOverflow& overflow : wordOverflows(sizes, part.place, subject.least, subject.most)) {
            if (breaksWords(row, part.place, overflow.widths.to)) continue;
            if (!known) before = wordOverflows(subject.sizes, part.place, subject.least, subject.most);
            known = true;
            for (const sweep::Interval& span : without(overflow.widths, before))
                cause.add(part.place, span, overflow.missing, std::clamp(overflow.at, span.from, span.to));
        }
    }
    if (!cause.any()) return;
    report(out, cause,
           {Severity::Error,
            "WCAG 2.2 SC 1.4.12",
            {wording::say(
                 "%1, %2 overflows by %3 when a reader increases the text spacing",
                 {atWidths(subject, cause.there), worstAndOthers(subject, cause), units::px(cause.worst, 1)}),
             wording::say("Readers may add %1 between letters and %2 between words",
                          {units::figure(spreadLetter) + "\u00A0em", units::figure(spreadWord) + "\u00A0em"}),
             wording::say("Allow breaks anywhere in its words (Text › Long words), or give it more room")}});
}

void remedyTextSpacing(Candidates& out) {
    proposeWordBreaks(out);
    for (const std::string& role : out.roles())
        proposeSizes(out, role, Need::Room);
    proposeTighterCards(out);
}

}  // namespace

extern const Check textSpacingCheck{
    .name = "text-spacing", .run = checkTextSpacing, .dependsOnBreaks = true, .remedies = remedyTextSpacing};

}  // namespace tenter::checks
