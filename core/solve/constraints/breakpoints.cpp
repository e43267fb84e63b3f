// The same size, or the same share of the column, on both sides of a breakpoint.
#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/wish_key.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey breakpointsKey{
    "breakpoints", "same",
    "same size on both sides of a breakpoint; proportional: same share of the column; free: no condition",
    [](NotationReader& reader, const std::string& value, project::Json& entry) {
        return reader.putWord(entry, "breakpoints", value,
                              {{"same", "same"}, {"proportional", "proportional"}, {"free", "free"}});
    }};

class BreakpointsConstraint : public SwitchConstraint<project::AtBreakpoints> {
public:
    BreakpointsConstraint(std::string_view name, project::AtBreakpoints value)
        : SwitchConstraint({.name = name, .key = &breakpointsKey, .removalRank = 1},
                           &project::RoleWishes::breakpoints, value, project::AtBreakpoints::Free),
          isSame_(value == project::AtBreakpoints::Same) {}

    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return isSame_ ? wording::say("the same size on both sides of a breakpoint")
                       : wording::say("the same share of its column on both sides of a breakpoint");
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }

    void addRows(RowAdder& rows) const override {
        for (const VariantGeometry& geometry : rows.model.geometries()) {
            const std::vector<LinearRange>* ranges = Model::rangesOf(geometry, rows.wish.role);
            if (ranges == nullptr) continue;
            const LinearRange* before = nullptr;
            for (const LinearRange& range : *ranges) {
                if (!rows.isWithin(range)) continue;
                if (before != nullptr && before->band != range.band) {
                    const double column = before->at(before->column, before->to);
                    const double factor = isSame_ || column <= 0 ? 1 : range.column.value / column;
                    ConstraintRow row = rows.rowAt(geometry, range, range.from);
                    row.expression =
                        difference(row.origin.size, rows.size(geometry, *before, before->to), factor);
                    row.upper = rows.model.gridStep() * (1 + factor) / 2;
                    row.lower = -row.upper;
                    rows.add(std::move(row));
                }
                before = &range;
            }
        }
    }

private:
    bool isSame_;
};

}  // namespace

const Constraint& sameAtBreakpoints() {
    static const BreakpointsConstraint kind("sameAtBreakpoints", project::AtBreakpoints::Same);
    return kind;
}

const Constraint& proportionalAtBreakpoints() {
    static const BreakpointsConstraint kind("proportionalAtBreakpoints",
                                            project::AtBreakpoints::Proportional);
    return kind;
}

}  // namespace tenter::solve::constraints
