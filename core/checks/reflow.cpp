// Content that is wider than a page of 320 px. WCAG 2.2 SC 1.4.10.
#include <algorithm>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

constexpr double reflowWidth = 320;
/// Rounding of browsers that may push an exact fit over the edge. CSS px.
constexpr double reflowRounding = 0.05;

/// How far something from `left` to `right` overflows the page, CSS px.
double overflowOf(double left, double right, double page) {
    return std::max({0.0, -left, right - page});
}
double overflowOf(const layout::Box& box, double page) {
    return overflowOf(box.x, box.right(), page);
}

void checkReflow(const Subject& subject, Findings& out) {
    const layout::Layout laid = layout::layOut(subject.row, reflowWidth);
    const double page = std::max(0.0, reflowWidth - subject.project.page.scrollbar.width);
    const auto reportOverflow = [&](const Cause& cause, const std::string& what, const std::string& fix) {
        report(
            out, cause,
            {Severity::Error,
             "WCAG 2.2 SC 1.4.10",
             {wording::say("at 320\u00A0px, %1 overflows the page by %2", {what, units::px(cause.worst, 1)}),
              wording::say("Readers who zoom to 400\u00A0% must scroll sideways for every line"), fix}});
    };
    Cause cause;
    // The outermost box that overflows is the cause: what is in it follows.
    const double row = std::max(overflowOf(laid.container, page), overflowOf(laid.row, page));
    if (row > reflowRounding) {
        cause.add({}, {reflowWidth, reflowWidth}, row);
        reportOverflow(cause, wording::say("the row"),
                       wording::say("Set its width in percent, or reduce it (Row › Width)"));
        return;
    }
    for (std::size_t card = 0; card < laid.cards.size(); ++card) {
        const double past = overflowOf(laid.cards[card].box, page);
        if (past > reflowRounding) cause.add({card, 0}, {reflowWidth, reflowWidth}, past);
    }
    if (cause.any()) {
        reportOverflow(
            cause, wording::say("card %1", {std::to_string(cause.place.card + 1)}),
            wording::say("Use fewer columns or smaller gaps at this width (Row › Columns, Column gap)"));
        return;
    }
    for (std::size_t card = 0; card < laid.cards.size(); ++card) {
        for (std::size_t i = 0; i < laid.cards[card].partCount; ++i) {
            const layout::LaidPart& part = laid.parts[laid.cards[card].firstPart + i];
            double most = overflowOf(part.box, page);
            for (std::size_t l = part.firstLine; l < part.firstLine + part.lineCount; ++l) {
                const layout::LaidLine& line = laid.lines[l];
                most = std::max(most, overflowOf(line.x, line.x + line.line.width, page));
            }
            if (most > reflowRounding)
                cause.add(subject.row.place(card, i), {reflowWidth, reflowWidth}, most);
        }
    }
    if (cause.any())
        reportOverflow(
            cause, worstAndOthers(subject, cause),
            wording::say(
                "Allow breaks in long words (Text › Long words), or reduce the font size at this width"));
}

void remedyReflow(Candidates& out) {
    out.set(wording::say("Set the width of the row to 100\u00A0%, at most what it was"),
            Candidates::Scope::Layout, [&](project::Settings& settings, std::size_t band) {
                const project::RowSettings& now = out.settings(band).row;
                if (!now.width || now.width->unit() == units::Unit::Percent) return;
                settings.row.width = units::Length::percent(100);
                settings.row.maxWidth = *now.width;
            });
    out.set(wording::sayCount("Use %n column", "Use %n columns", 1), Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t band) {
                if (out.settings(band).row.columns.value_or(1) > 1) settings.row.columns = 1;
            });
    proposeTighterCards(out);
    proposeWordBreaks(out);
    for (const std::string& role : out.roles())
        proposeSizes(out, role, Need::Room);
}

}  // namespace

extern const Check reflowCheck{
    .name = "reflow", .run = checkReflow, .dependsOnBreaks = true, .remedies = remedyReflow};

}  // namespace tenter::checks
