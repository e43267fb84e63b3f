// At least and at most a size, and sizes that must not change.
#include <algorithm>

#include "solve/bound_finder.h"
#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/solve.h"
#include "solve/violations.h"
#include "solve/wish_key.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey sizeKey{"size", "15-20",
                          "px, 1 to 400; 15-: at least 15; -20: at most 20; locked: the size does not change",
                          [](NotationReader& reader, const std::string& value, project::Json& entry) {
                              if (value == "locked")
                                  return reader.putWord(entry, "locked", value, {{"locked", true}});
                              return reader.putRange(entry, "leastSize", "mostSize", value,
                                                     "write for example 15-20, 15-, -20 or locked");
                          }};

class SizeConstraint : public FigureConstraint<double, BoundConstraint> {
public:
    SizeConstraint(std::string_view name, bool isLeast, double limit, Member member)
        : FigureConstraint({.name = name, .key = &sizeKey, .relaxation = RelaxationRange{limit, 0.05}},
                           member),
          isLeast_(isLeast) {}

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        return isLeast_ ? wording::say("at least %1", {units::px(wish.value)})
                        : wording::say("at most %1", {units::px(wish.value)});
    }

    [[nodiscard]] std::optional<std::string> limitText(const LimitContext& context) const override {
        //: A wish on the size, and the place where the size is as large or small as it allows
        return wording::say("%1, reached %2.", {context.wished, context.place});
    }

    void addBounds(BoundFinder& finder) const override {
        const Wish& wish = finder.wish();
        finder.addFigure(!isLeast_, wish.value + (isLeast_ ? wish.tolerance : -wish.tolerance));
    }

    void verifySize(const layout::LinearSizes& sizes, Violations& violations) const override {
        const double value = violations.wish.value;
        for (const checks::RolePiece& piece : sizePieces(sizes, violations.wish.role, violations.range))
            violations.notePositive(piece, isLeast_ ? value - piece.size : piece.size - value);
    }

    /// Type below the smallest size that a project without wishes has is too small to read.
    [[nodiscard]] bool isUnreadable(const Wish& wish, const Relaxation& relaxation,
                                    const std::vector<Wish>& defaults) const override {
        return isLeast_ && std::ranges::any_of(defaults, [&](const Wish& usual) {
                   return usual.kind == this && usual.role == wish.role &&
                          (relaxation.removed || relaxation.wish.value < usual.value);
               });
    }

private:
    bool isLeast_;
};

class LockedConstraint : public SwitchConstraint<bool> {
public:
    LockedConstraint()
        : SwitchConstraint({.name = "locked", .key = &sizeKey, .locksSizes = true},
                           &project::RoleWishes::locked, true, false) {}

    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return wording::say("locked at its sizes");
    }
    [[nodiscard]] std::optional<std::string> limitText(const LimitContext& context) const override {
        return wording::say("%1.", {condition(context.wish)});
    }

    void addRows(RowAdder& rows) const override {
        for (const RampVariables& ramp : rows.model.ramps().all()) {
            if (ramp.role != rows.wish.role) continue;
            for (const auto& [variable, size] :
                 {std::pair(ramp.fromVariable, ramp.from.size), std::pair(ramp.toVariable, ramp.to.size)}) {
                ConstraintRow row;
                row.expression = {{variable, 1}};
                row.lower = row.upper = size;
                row.origin.role = ramp.role;
                row.origin.variant = ramp.place.variant;
                row.origin.band = ramp.place.band;
                row.origin.size = row.expression;
                rows.add(std::move(row));
            }
        }
    }
};

}  // namespace

const Constraint& leastSize() {
    static const SizeConstraint kind("leastSize", true, 1, &project::RoleWishes::leastSize);
    return kind;
}

const Constraint& mostSize() {
    static const SizeConstraint kind("mostSize", false, 400, &project::RoleWishes::mostSize);
    return kind;
}

const Constraint& locked() {
    static const LockedConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
