// Type and column that stop growing at different widths of the last band. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

namespace {

/// The width at which `line` of a role's pieces stops growing for good; empty if it never grows in the last
/// band, or never stops.
template <class Line>
std::optional<double> growsUntil(const RoleSeen& role, Line&& line) {
    if (role.pieces.empty()) return std::nullopt;
    const std::size_t band = role.pieces.back().band;
    std::optional<double> until;
    for (const RolePiece& piece : role.pieces)
        if (piece.band == band && line(piece).slope > 1e-6) until = piece.to;
    return until;
}

}  // namespace

void checkStops(const Subject& subject, Findings& out) {
    Cause early;
    Cause late;
    double column = 0;
    for (const RoleSeen& role : subject.roles) {
        const auto type = growsUntil(role, [](const RolePiece& piece) { return piece.size; });
        const auto wide = growsUntil(role, [](const RolePiece& piece) { return piece.column; });
        if (!type || !wide || *wide >= subject.most || std::min(*type, *wide) <= subject.least) continue;
        column = *wide;
        if (std::abs(*type - *wide) < subject.thresholds().apart) continue;
        Cause& cause = *type < *wide ? early : late;
        cause.add(role.card, role.part, {std::min(*type, *wide), std::max(*type, *wide)},
                  std::abs(*type - *wide));
    }
    const auto told = [&](const Cause& cause, bool first) {
        if (!cause.any()) return;
        const std::string type =
            typeOf(std::get<project::TextPart>(subject.project.cards[cause.card].parts[cause.part]).role);
        const double end = first ? cause.there.from : cause.there.to;
        const std::string what =
            !first && end >= subject.most ? " goes on growing" : " stops growing at " + px(end, 0);
        tell(out, cause,
             {"stops", Severity::Note, "common practice, no source",
              sentence(type) + what + (first ? ", its column only at " : ", though its column stops at ") +
                  px(column, 0) +
                  (first ? ": lines get longer in between." : ": lines get shorter in between.") +
                  " End the ramp where the column ends.",
              first ? "early" : "late"});
    };
    told(early, true);
    told(late, false);
}

}  // namespace tenter::checks
