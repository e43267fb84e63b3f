// Text and column that stop growing at different widths of the last band. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "project/wording.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

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
    const sweep::Interval& there = apart.cause.there;
    const double column = early ? there.to : there.from;
    const std::string texts = project::listed(apart.texts);
    const std::string widths = atWidths(subject, there);
    const std::size_t count = apart.texts.size();
    return {early ? wording::sayCount("%1, %2 does not grow, but the column does",
                                      "%1, %2 do not grow, but the column does", count, {widths, texts})
                  : wording::sayCount("%1, %2 grows, but the column does not",
                                      "%1, %2 grow, but the column does not", count, {widths, texts}),
            early ? wording::say("The lines hold more and more characters")
                  : wording::say("The lines hold fewer and fewer characters"),
            wording::sayCount("End the ramp at %1, where the column stops growing (Text › Font size)",
                              "End the ramps at %1, where the column stops growing (Text › Font size)", count,
                              {units::px(column, 0)})};
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
                   {Severity::Note, commonPractice(), statementOf(subject, *apart, apart == &early),
                    apart == &early ? "early" : "late"});
}

void remedyStops(Candidates& out) {
    const sweep::Interval& apart = out.finding().widths.front();
    const bool early = out.isFor("early");
    const double column = early ? apart.to : apart.from;
    const std::vector<std::string> roles = out.roles();
    const std::string texts = roleTexts(roles);
    const std::string end = units::px(column, 0);
    // With the size that it ends at now, or with the slope that it has now.
    for (const bool sameSize : {true, false})
        out.set(sameSize ? wording::say("End the ramp of %1 at %2, at the same size", {texts, end})
                         : wording::say("End the ramp of %1 at %2, with the same slope", {texts, end}),
                Candidates::Scope::Layout, [&](project::Settings& settings, std::size_t band) {
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
