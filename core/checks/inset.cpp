// Text close to a visible edge of its card. Common practice, no source.
#include "checks/background.h"
#include "checks/check.h"
#include "checks/phrases.h"
#include "layout/inline_sizes.h"
#include "units/contrast.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

using units::Colour;
using units::Linear;

/// The smallest distance between text and its card's edge, in em of the text.
constexpr double leastInset = 0.5;

/// True if the card has a visible border, or a background that differs from that of the row.
bool hasVisibleEdge(const layout::IntervalPlan& interval) {
    constexpr Colour clear{0, 0, 0, 0};
    const project::Settings& settings = interval.band->settings;
    const Colour background = cardBackground(interval);
    const Colour border = units::compositeOver(settings.card.border.colour.value_or(clear), background);
    const bool drawn = settings.card.border.width && settings.card.border.width->css() != "0";
    return (drawn && border != background) || background != rowBackground(interval);
}

/// True for a role whose text has its own background.
bool hasOwnBox(const project::TextStyle& style) {
    return style.background && style.background->alpha > 0;
}

void checkInset(const Subject& subject, Findings& out) {
    Cause cause;
    for (const CheckedRole& role : subject.roles) {
        for (const RolePiece& piece : role.pieces) {
            const layout::IntervalPlan& interval = subject.row.interval(piece.interval);
            const project::TextStyle* style = interval.band->settings.text.find(role.name);
            const auto cut = within(piece, subject.whole());
            if (!cut || style == nullptr || hasOwnBox(*style) || !hasVisibleEdge(interval)) continue;
            const layout::InlineSizes<Linear>& across = subject.sizes.at(piece.interval, cut->from);
            const auto text = layout::textInlineSizes(interval.roles[role.index],
                                                      *interval.part(role.place).paragraph, across);
            const Linear em = text.basis.em;
            for (const auto side : {&layout::EdgesOf<Linear>::left, &layout::EdgesOf<Linear>::right}) {
                const Linear inset = across.cardPadding.*side + text.margin.*side + text.padding.*side;
                const auto span = whereAbove(leastInset * em - inset, cut->from, cut->to);
                if (!span) continue;
                const double at = (span->from + span->to) / 2 - cut->from;
                cause.add(role.place, *span, -inset.at(at) / em.at(at));
            }
        }
    }
    join(cause.widths);
    if (!cause.any() || lengthOf(cause.widths) < subject.limits().leastRun) return;
    report(out, cause,
           {Severity::Note,
            commonPractice(),
            {wording::say("%1, %2 comes within %3 of the visible edge of its card",
                          {atWidths(subject, cause.runOfWorst()), named(subject, cause.place),
                           units::figure(-cause.worst) + "\u00A0em"}),
             wording::say("The text looks squeezed"),
             wording::say("Increase the padding (Spacing › Padding), or remove the card’s border and "
                          "background")}});
}

void remedyInset(Candidates& out) {
    const double rem = out.subject().row.rem(out.finding().at);
    for (const double px : {8, 10, 12, 16, 20, 24}) {
        const units::Length wide = units::Length::rem(px / rem);
        out.set(
            wording::say("Set the side padding of cards to %1", {units::px(px)}), Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t) {
                settings.card.padding.left = settings.card.padding.right = wide;
            },
            "card-padding");
    }
    out.set(wording::say("Remove border and background of cards"), Candidates::Scope::Look,
            [](project::Settings& settings, std::size_t) {
                settings.card.border.width = units::Length();
                settings.card.background = Colour{0, 0, 0, 0};
            });
}

}  // namespace

extern const Check insetCheck{
    .name = "inset", .run = checkInset, .dependsOnBreaks = false, .remedies = remedyInset};

}  // namespace tenter::checks
