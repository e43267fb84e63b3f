// Type and column that stop growing at different widths of the last band. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "project/wording.h"

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

/// True if copy of the role has several lines somewhere: what stays on one line has none to get longer.
bool hasLines(const Subject& subject, const RoleSeen& role) {
    return std::ranges::any_of(subject.parts, [&](const PartSeen& part) {
        return part.text != nullptr && part.text->role == role.name &&
               std::ranges::any_of(part.pieces.pieces,
                                   [](const sweep::Piece& piece) { return piece.lines > 1; });
    });
}

/// Roles whose type stops before its column, or after it.
struct StopsApart {
    Cause cause;
    std::vector<std::string> types;
};

void tellStops(const Subject& subject, const StopsApart& apart, bool early, Findings& out) {
    const Cause& cause = apart.cause;
    const bool several = apart.types.size() > 1;
    const double type = early ? cause.there.from : cause.there.to;
    const double column = early ? cause.there.to : cause.there.from;
    const bool on = !early && type >= subject.most;
    std::string says =
        sentence(project::listed(apart.types)) +
        (on ? (several ? " go on growing" : " goes on growing")
            : (several ? " stop growing" : " stops growing") + std::string(" at ") + px(type, 0));
    says += early ? ", the column only at " : ", though the column stops growing at ";
    says += px(column, 0) + (early ? ": lines get longer in between." : ": lines get shorter in between.");
    tell(out, cause,
         {"stops", Severity::Note, "common practice, no source",
          says + " End the ramp where the column ends.", early ? "early" : "late"});
}

}  // namespace

void checkStops(const Subject& subject, Findings& out) {
    StopsApart early;
    StopsApart late;
    for (const RoleSeen& role : subject.roles) {
        if (role.name == "button" || !hasLines(subject, role)) continue;
        const auto type = growsUntil(role, [](const RolePiece& piece) { return piece.size; });
        const auto column = growsUntil(role, [](const RolePiece& piece) { return piece.column; });
        if (!type || !column || *column >= subject.most || std::min(*type, *column) <= subject.least)
            continue;
        if (std::abs(*type - *column) < subject.limits().apart) continue;
        StopsApart& apart = *type < *column ? early : late;
        apart.types.push_back(typeOf(role.name));
        apart.cause.add(role.card, role.part, {std::min(*type, *column), std::max(*type, *column)},
                        std::abs(*type - *column));
    }
    if (early.cause.any()) tellStops(subject, early, true, out);
    if (late.cause.any()) tellStops(subject, late, false, out);
}

}  // namespace tenter::checks
