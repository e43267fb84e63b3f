// Type too small to read with ease. Common practice, no source.
#include "checks/phrases.h"
#include "checks/registry.h"

namespace tenter::checks {

void checkSmallType(const Subject& subject, Findings& out) {
    const project::Wishes usually = project::usualWishes(subject.project);
    for (const RoleSeen& role : subject.roles) {
        Cause cause;
        double floor = 0;  // where it is worst
        const auto usual = project::held(usually, role.name, &project::RoleWishes::leastSize);
        const double legible = usual.empty() ? 0 : usual.front().value;
        for (const auto& wish : project::held(subject.wishes, role.name, &project::RoleWishes::leastSize)) {
            for (const RolePiece& piece : role.pieces) {
                const auto cut = within(piece, wishedWidths(subject, wish));
                if (!cut) continue;
                const units::Linear size = piece.size.from(cut->from - piece.from);
                const auto small = whereAbove(wish.value - size, cut->from, cut->to);
                if (!small) continue;
                for (const double at : {small->from, small->to})
                    if (cause.add(role.card, role.part, *small, -size.at(at - cut->from), at))
                        floor = wish.value;
            }
        }
        tell(out, cause,
             {"small-type", Severity::Warning, "common practice, no source",
              sentence(typeOf(role.name)) + " is only " + inPx(figure(-cause.worst, 2)) + " " +
                  atWidths(subject, cause.there) +
                  (-cause.worst < legible ? ": under " + px(std::min(floor, legible)) +
                                                " many read it with effort or not at all."
                                          : ", where no less than " + px(floor, 2) + " is wished.") +
                  " Raise the small end of its ramp.",
              role.name});
    }
}

}  // namespace tenter::checks
