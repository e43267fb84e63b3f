// Text and column that stop growing at different widths of the last band. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "project/wording.h"
#include "units/number.h"
#include "units/quantities.h"

namespace tenter::checks {

namespace {

/// The last width up to which `line` of a role's pieces grows, CSS px. Empty if it does not grow in the last
/// band.
template <class Line>
std::optional<double> growsUntil(const CheckedRole& role, Line&& line) {
    if (role.pieces.empty()) return std::nullopt;
    const std::size_t band = role.pieces.back().band;
    std::optional<double> until;
    for (const RolePiece& piece : role.pieces)
        if (piece.band == band && line(piece).slope > 1e-6) until = piece.to;
    return until;
}

/// True if a text of the role has several lines somewhere. On one line the measure does not matter.
bool hasSeveralLines(const Subject& subject, const CheckedRole& role) {
    return std::ranges::any_of(subject.parts, [&](const CheckedPart& part) {
        return part.text != nullptr && part.text->role == role.name &&
               std::ranges::any_of(part.pieces.pieces,
                                   [](const sweep::Piece& piece) { return piece.lines > 1; });
    });
}

/// Roles whose text stops growing before or after its column.
struct StopsApart {
    Cause cause;
    std::vector<std::string> texts;
};

Statement statementOf(const Subject& subject, const StopsApart& apart, bool early) {
    const bool several = apart.texts.size() > 1;
    const sweep::Interval& there = apart.cause.there;
    const double column = early ? there.to : there.from;
    const std::string texts = project::listed(apart.texts);
    const std::string what = early ? texts + (several ? " do" : " does") + " not grow, but the column does"
                                   : texts + (several ? " grow" : " grows") + ", but the column does not";
    return {atWidths(subject, there) + ", " + what,
            early ? "The lines hold more and more characters" : "The lines hold fewer and fewer characters",
            std::string("End the ramp") + (several ? "s" : "") + " at " + units::px(column, 0) +
                ", where the column stops growing (Text › Font size)"};
}

void checkStops(const Subject& subject, Findings& out) {
    StopsApart early;
    StopsApart late;
    for (const CheckedRole& role : subject.roles) {
        if (role.name == "button" || !hasSeveralLines(subject, role)) continue;
        const auto text = growsUntil(role, [](const RolePiece& piece) { return piece.size; });
        const auto column = growsUntil(role, [](const RolePiece& piece) { return piece.column; });
        if (!text || !column || *column >= subject.most || std::min(*text, *column) <= subject.least)
            continue;
        if (std::abs(*text - *column) < subject.limits().apart) continue;
        StopsApart& apart = *text < *column ? early : late;
        apart.texts.push_back(roleText(role.name));
        apart.cause.add(role.place, {std::min(*text, *column), std::max(*text, *column)},
                        std::abs(*text - *column));
    }
    for (const StopsApart* apart : {&early, &late})
        if (apart->cause.any())
            report(out, apart->cause,
                   {Severity::Note, "common practice, no source",
                    statementOf(subject, *apart, apart == &early), apart == &early ? "early" : "late"});
}

void remedyStops(Candidates& out) {
    const sweep::Interval& apart = out.finding().widths.front();
    const bool early = out.isFor("early");
    const double column = early ? apart.to : apart.from;
    const std::vector<std::string> roles = out.roles();
    const std::string ends = "End the ramp of " + roleTexts(roles) + " at " + units::px(column, 0);
    // With the size that it ends at now, or with the slope that it has now.
    for (const bool sameSize : {true, false})
        out.set(ends + (sameSize ? ", at the same size" : ", with the same slope"), Candidates::Scope::Layout,
                [&](project::Settings& settings, std::size_t band) {
                    for (const std::string& role : roles) {
                        const project::TextStyle& now = *out.settings(band).text.find(role);
                        if (now.follow == project::Follow::Card || !now.size || now.size->isFlat()) continue;
                        const units::RampPoint from = now.size->from();
                        const units::RampPoint to = now.size->to();
                        const double slope = (to.size - from.size) / (to.width - from.width);
                        const double size =
                            sameSize ? to.size : units::rounded(from.size + slope * (column - from.width), 2);
                        if (const auto ramp = units::Ramp::between(from, {std::round(column), size}))
                            settings.text.of(role).size = *ramp;
                    }
                });
}

}  // namespace

extern const Check stopsCheck{
    .name = "stops", .run = checkStops, .dependsOnBreaks = false, .remedies = remedyStops};

}  // namespace tenter::checks
