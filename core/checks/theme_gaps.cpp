// Widths at which neither of two adjoining media conditions of the page's theme holds, such as between
// `max-width: 980px` and `min-width: 981px`. Zoomed pages have fractional widths. Media Queries 4 § 4.3.
#include <set>

#include "checks/check.h"
#include "checks/phrases.h"
#include "css/breakpoints.h"
#include "css/media.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Breakpoints farther apart than this are two separate ones. CSS px.
constexpr double mostGap = 1;

std::set<std::string> mediaOf(const css::Sheet& sheet) {
    std::set<std::string> media;
    for (const css::Condition& condition : sheet.conditions)
        if (condition.kind == css::ConditionKind::Media) media.insert(condition.text);
    return media;
}

/// The first condition of `media` that holds at `width` and not at `between`; empty if there is none.
std::string onlyAt(const std::set<std::string>& media, double width, double between) {
    for (const std::string& text : media)
        if (css::mediaHolds(text, width) == css::Truth::True &&
            css::mediaHolds(text, between) == css::Truth::False)
            return text;
    return {};
}

void checkThemeGaps(const Subject& subject, Findings& out) {
    if (!subject.project.row().given) return;
    const css::Sheet sheet = css::readSheet(subject.project.row().given->theme);
    const std::vector<css::Breakpoint> points = css::breakpointsOf(sheet);
    const std::set<std::string> media = mediaOf(sheet);
    Cause cause;
    std::string below;
    std::string above;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const sweep::Interval gap{points[i].width, points[i + 1].width};
        if (gap.to - gap.from > mostGap || gap.from < subject.least || gap.to > subject.most) continue;
        const double between = (gap.from + gap.to) / 2;
        const std::string under = onlyAt(media, gap.from, between);
        const std::string over = onlyAt(media, gap.to, between);
        if (under.empty() || over.empty()) continue;
        if (cause.add({}, gap, gap.to - gap.from)) {
            below = under;
            above = over;
        }
    }
    if (!cause.any()) return;
    report(out, cause,
           {Severity::Note,
            "Media Queries 4 § 4.3",
            {wording::say("between %1 and %2, the theme’s rules for %3 have ended and those for %4 have not "
                          "started",
                          {units::figure(cause.there.from), units::px(cause.there.to), inQuotation(below),
                           inQuotation(above)}),
             wording::say("A zoomed page can have such a width, and neither set of rules applies there"),
             wording::say("Use the same limit in both, such as “width <= 980px” and “width > 980px”")}});
}

}  // namespace

extern const Check themeGapCheck{.name = "theme-gap", .run = checkThemeGaps, .dependsOnBreaks = false};

}  // namespace tenter::checks
