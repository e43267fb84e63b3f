// What becomes of the row when a reader spreads the text: the copy of the project with that spacing is laid
// out. Boxes grow with their lines, so what can go wrong is text that no longer fits across. WCAG 2.2 SC
// 1.4.12.
#include <algorithm>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "checks/wide.h"

namespace tenter::checks {

namespace {

constexpr double spreadLine = 1.5;
constexpr double spreadParagraph = 2;
constexpr double spreadLetter = 0.12;
constexpr double spreadWord = 0.16;

/// The project with the criterion's spacing in every band of one variant.
project::Project spreadOut(const Subject& subject) {
    project::Project project = subject.project;
    for (project::Band& band : project.variants[subject.variantIndex].bands) {
        for (const RoleSeen& role : subject.roles) {
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

/// `span` without what is in `others`, which rise.
std::vector<sweep::Interval> without(const sweep::Interval& span, const std::vector<Wide>& others) {
    std::vector<sweep::Interval> left;
    double from = span.from;
    // There may be thousands, and as many spans.
    auto other = std::ranges::upper_bound(others, from, {}, [](const Wide& each) { return each.widths.to; });
    for (; other != others.end() && other->widths.from < span.to; ++other) {
        if (other->widths.from > from) left.push_back({from, other->widths.from});
        from = std::max(from, other->widths.to);
    }
    if (from + sweep::leastStep < span.to) left.push_back({from, span.to});
    return left;
}

}  // namespace

void checkTextSpacing(const Subject& subject, Findings& out) {
    const project::Project project = spreadOut(subject);
    const layout::PreparedRow row(project, subject.variantIndex, subject.paragraphs, subject.row.profile());
    Cause cause;
    for (const PartSeen& part : subject.parts) {
        if (part.text == nullptr) continue;
        std::vector<Wide> before;
        bool looked = false;
        for (const Wide& wide : wideWords(row, part.card, part.part, subject.least, subject.most)) {
            if (cutsWords(row, part.card, part.part, wide.widths.to)) continue;
            if (!looked) before = wideWords(subject.row, part.card, part.part, subject.least, subject.most);
            looked = true;
            for (const sweep::Interval& span : without(wide.widths, before))
                cause.add(part.card, part.part, span, wide.missing, std::clamp(wide.at, span.from, span.to));
        }
    }
    if (!cause.any()) return;
    tell(out, cause,
         {"text-spacing", Severity::Error, "WCAG 2.2 SC 1.4.12",
          "Spread as readers may ask for it (letters by 0.12 em, words by 0.16 em, lines by 1.5), " +
              worstAndOthers(subject, cause) + " sticks out by " + px(cause.worst) + " " +
              atWidths(subject, cause.there) + ": let its words break anywhere, or leave it more room.",
          ""});
}

}  // namespace tenter::checks
