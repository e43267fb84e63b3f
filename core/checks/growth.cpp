// Type that goes against its column: it grows where the column narrows, or steps at a breakpoint where the
// column does not. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "project/wording.h"

namespace tenter::checks {

namespace {

/// A column that changes by less than this share at a breakpoint stays as it is.
constexpr double sameColumn = 0.01;
/// Changes within a band that are less than this, CSS px of type and a share of the column, are not seen.
constexpr double unseen = 0.5;
constexpr double unseenColumn = 0.05;

struct Against {
    Cause cause;
    std::vector<std::string> types;
    std::string worst;        // role
    double size[2] = {0, 0};  // before and after, of the worst
    double column[2] = {0, 0};
    void add(const RoleSeen& role, sweep::Interval span, const RolePiece& before, double at,
             const RolePiece& after, double then) {
        const double sizes[2] = {before.size.at(at - before.from), after.size.at(then - after.from)};
        const std::string type = typeOf(role.name);
        if (std::ranges::find(types, type) == types.end()) types.push_back(type);
        if (!cause.add(role.card, role.part, span, std::abs(sizes[1] - sizes[0]))) return;
        worst = role.name;
        size[0] = sizes[0];
        size[1] = sizes[1];
        column[0] = before.column.at(at - before.from);
        column[1] = after.column.at(then - after.from);
    }
    [[nodiscard]] std::string sizes() const {
        return "from " + about(size[0]) + " to " + about(size[1]) + "\u00A0px";
    }
    [[nodiscard]] std::string columns() const {
        return "from " + about(column[0], 0) + " to " + about(column[1], 0) + "\u00A0px";
    }
};

/// True if type steps at the breakpoint between two pieces though its column stays or goes the other way.
bool stepsAgainst(const RolePiece& before, const RolePiece& after, double least) {
    const double step = after.size.value - before.size.at(before.to - before.from);
    const double column = before.column.at(before.to - before.from);
    const double change = after.column.value - column;
    if (std::abs(step) <= least) return false;
    return std::abs(change) <= sameColumn * column || (step > 0) != (change > 0);
}

}  // namespace

void checkGrowth(const Subject& subject, Findings& out) {
    std::map<double, Against> steps;  // by breakpoint
    Against slopes;
    for (const RoleSeen& role : subject.roles) {
        for (std::size_t i = 0; i < role.pieces.size(); ++i) {
            const RolePiece& piece = role.pieces[i];
            const auto cut = within(piece, subject.whole());
            if (!cut) continue;
            const double length = cut->to - cut->from;
            const bool opposed = piece.size.slope * piece.column.slope < 0;
            const double columnChange = std::abs(piece.column.slope) * length / piece.column.value;
            if (opposed && std::abs(piece.size.slope) * length > unseen && columnChange > unseenColumn)
                slopes.add(role, *cut, piece, cut->from, piece, cut->to);
            if (i == 0 || cut->from != piece.from) continue;
            const RolePiece& before = role.pieces[i - 1];
            if (before.band != piece.band && stepsAgainst(before, piece, subject.limits().jump))
                steps[piece.from].add(role, {piece.from, piece.from}, before, before.to, piece, piece.from);
        }
    }
    if (slopes.cause.any())
        tell(out, slopes.cause,
             {"growth", Severity::Warning, "common practice, no source",
              sentence(project::listed(slopes.types)) +
                  (slopes.types.size() > 1 ? " go, " + typeOf(slopes.worst) + " most, "
                                           : std::string(" goes ")) +
                  slopes.sizes() + " while its column goes " + slopes.columns() + ", " +
                  atWidths(subject, slopes.cause.there) +
                  ": type should follow its column. Let the ramp run with the column.",
              "slope"});
    for (const auto& [at, step] : steps) {
        const bool same = std::abs(step.column[1] - step.column[0]) <= sameColumn * step.column[0];
        tell(out, step.cause,
             {"growth", Severity::Warning, "common practice, no source",
              sentence(project::listed(step.types)) +
                  (step.types.size() > 1 ? " step, " + typeOf(step.worst) + " most, "
                                         : std::string(" steps ")) +
                  step.sizes() + " at the breakpoint " + px(at) + " though the column " +
                  (same ? "stays " + about(step.column[1], 0) + "\u00A0px wide" : "goes " + step.columns()) +
                  (same ? std::string(": it looks like a slip. Let the ramps meet there.")
                        : ": type should go with its column. Let it start no " +
                              std::string(step.size[1] > step.size[0] ? "larger" : "smaller") +
                              " above the breakpoint than it ends below."),
              "step " + units::Length::px(at).css()});
    }
}

}  // namespace tenter::checks
