// Copy that all but touches the edge of its card, where that edge is seen. Common practice, no source.
#include "checks/ground.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/across.h"
#include "units/contrast.h"

namespace tenter::checks {

namespace {

using units::Colour;
using units::Linear;

/// The least room between copy and its card's edge, em of the copy.
constexpr double leastInset = 0.5;

/// True if the card's border or its background shows where the card ends.
bool showsItsEdge(const Subject& subject, std::size_t band) {
    constexpr Colour clear{0, 0, 0, 0};
    const project::Settings& settings = subject.row.settings(band);
    const Colour ground = cardGround(subject, band);
    const Colour border = units::laidOn(settings.card.border.colour.value_or(clear), ground);
    const bool drawn = settings.card.border.width && settings.card.border.width->css() != "0";
    return (drawn && border != ground) || ground != rowGround(subject, band);
}

/// True for a role that draws a box of its own about its copy.
bool hasItsOwnBox(const project::TextStyle& style) {
    return style.background && style.background->alpha > 0;
}

}  // namespace

void checkInset(const Subject& subject, Findings& out) {
    Cause cause;
    for (const RoleSeen& role : subject.roles) {
        for (const RolePiece& piece : role.pieces) {
            const project::TextStyle* style = subject.row.settings(piece.band).text.find(role.name);
            const auto cut = within(piece, subject.whole());
            if (!cut || style == nullptr || hasItsOwnBox(*style) || !showsItsEdge(subject, piece.band))
                continue;
            const layout::BandPlan& band = subject.row.band(piece.band);
            const layout::Across<Linear> across = layout::acrossAt(band, Linear(cut->from, 1));
            const auto text = layout::textAcross(band.roles[role.index],
                                                 *band.cards[role.card].parts[role.part].paragraph, across);
            const Linear em = text.basis.em;
            for (const auto side : {&layout::EdgesOf<Linear>::left, &layout::EdgesOf<Linear>::right}) {
                const Linear inset = across.cardPadding.*side + text.margin.*side + text.padding.*side;
                const auto span = whereAbove(leastInset * em - inset, cut->from, cut->to);
                if (!span) continue;
                const double at = (span->from + span->to) / 2 - cut->from;
                cause.add(role.card, role.part, *span, -inset.at(at) / em.at(at));
            }
        }
    }
    join(cause.widths);
    if (!cause.any() || lengthOf(cause.widths) < subject.limits().leastRun) return;
    tell(out, cause,
         {"inset", Severity::Note, "common practice, no source",
          sentence(named(subject, cause.card, cause.part)) + " stands only " + about(-cause.worst, 2) +
              " em from the edge of its card where the page is " + px(wholeIn(cause.there), 0) +
              " wide, and that edge is seen: it looks caught. More padding, or a card without border and "
              "background, mends it.",
          ""});
}

}  // namespace tenter::checks
