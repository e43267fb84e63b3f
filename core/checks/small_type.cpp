// Text too small to read with ease. Common practice, no source.
#include <algorithm>
#include <limits>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

void checkSmallType(const Subject& subject, Findings& out) {
    const project::Wishes usually = project::defaultWishes(subject.project);
    for (const CheckedRole& role : subject.roles) {
        Cause cause;
        double wished = 0;  // at the worst place
        const auto usual = project::wishRanges(usually, role.name, &project::RoleWishes::leastSize);
        const double legible = usual.empty() ? 0 : usual.front().value;
        for (const auto& wish :
             project::wishRanges(subject.wishes, role.name, &project::RoleWishes::leastSize)) {
            for (const RolePiece& piece : role.pieces) {
                const auto cut = within(piece, wishedWidths(subject, wish));
                if (!cut) continue;
                const units::Linear size = piece.size.from(cut->from - piece.from);
                const auto small = whereAbove(wish.value - size, cut->from, cut->to);
                if (!small) continue;
                for (const double at : {small->from, small->to})
                    if (cause.add(role.place, *small, -size.at(at - cut->from), at)) wished = wish.value;
            }
        }
        const double size = -cause.worst;
        const std::string why = size < legible ? wording::say("Many readers find text under %1 hard to read",
                                                              {units::px(std::min(wished, legible))})
                                               : wording::say("The wish is at least %1", {units::px(wished)});
        report(out, cause,
               {Severity::Warning,
                commonPractice(),
                {wording::say("%1, %2 is as small as %3",
                              {atWidths(subject, cause.runOfWorst()), roleText(role.name),
                               units::px(size, 2, units::Rounding::Down)}),
                 why, wording::say("Raise the lower end of its ramp (Text › Font size)")},
                role.name});
    }
}

void remedySmallType(Candidates& out) {
    for (const std::string& role : out.roles()) {
        double wished = 0;
        for (const auto& wish :
             project::wishRanges(out.subject().wishes, role, &project::RoleWishes::leastSize))
            wished = std::max(wished, wish.value);
        proposeSizesWithin(out, {role}, wished, std::numeric_limits<double>::infinity(),
                           wording::say("Make %1 at least %2", {roleText(role), units::px(wished)}));
    }
    out.solveSizes();
}

}  // namespace

extern const Check smallTypeCheck{
    .name = "small-type", .run = checkSmallType, .dependsOnBreaks = false, .remedies = remedySmallType};

}  // namespace tenter::checks
