// No growth where the column narrows.
#include <cmath>

#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/wish_key.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

/// A change of the column by less than this share at a breakpoint does not count.
constexpr double columnTolerance = 0.01;
/// A column that narrows by less than this share over a range of widths does not count as narrowing.
constexpr double narrowingTolerance = 0.05;

constexpr WishKey columnKey{
    "column", "with", "the text does not grow where its column narrows; free: it may grow",
    [](NotationReader& reader, const std::string& value, project::Json& entry) {
        return reader.putWord(entry, "withColumn", value, {{"with", true}, {"free", false}});
    }};

class ColumnConstraint : public SwitchConstraint<bool> {
public:
    ColumnConstraint()
        : SwitchConstraint({.name = "withColumn", .key = &columnKey, .removalRank = 0},
                           &project::RoleWishes::withColumn, true, false) {}

    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return wording::say("no growth where its column narrows");
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }
    [[nodiscard]] std::optional<std::string> limitText(const LimitContext& context) const override {
        const std::string& at = context.at;
        if (context.isLower && context.atBreakpoint)
            return wording::say(
                "at least %1, because text must not shrink where its column widens. To allow a smaller size, "
                "move the breakpoint, or set the wish “Narrower column” to “Free”.",
                {at});
        if (context.isLower)
            return wording::say(
                "at least %1, because text must not shrink where its column widens. To allow a "
                "smaller size, set the wish “Narrower column” to “Free”.",
                {at});
        if (context.atBreakpoint)
            return wording::say(
                "at most %1, because text must not grow where its column narrows. To allow a "
                "larger size, move the breakpoint, or set the wish “Narrower column” to “Free”.",
                {at});
        return wording::say(
            "at most %1, because text must not grow where its column narrows. To allow a larger "
            "size, set the wish “Narrower column” to “Free”.",
            {at});
    }

    void addRows(RowAdder& rows) const override {
        const double jump = rows.model.jumpLimit() - 2 * emitRounding;
        for (const VariantGeometry& geometry : rows.model.geometries()) {
            const std::vector<LinearRange>* ranges = Model::rangesOf(geometry, rows.wish.role);
            if (ranges == nullptr) continue;
            const LinearRange* before = nullptr;
            for (const LinearRange& range : *ranges) {
                if (!rows.isWithin(range)) continue;
                addWithin(rows, geometry, range);
                if (before != nullptr && before->band != range.band)
                    addBetween(rows, geometry, *before, range, jump);
                before = &range;
            }
        }
    }

private:
    static void addWithin(RowAdder& rows, const VariantGeometry& geometry, const LinearRange& range) {
        const double change = range.column.slope * (range.to - range.from);
        const bool narrows = change < -narrowingTolerance * range.column.value;
        if (change <= 0 && !narrows) return;
        ConstraintRow row = rows.rowAt(geometry, range, range.to);
        row.expression = difference(row.origin.size, rows.size(geometry, range, range.from));
        (narrows ? row.upper : row.lower) = 0;
        rows.add(std::move(row));
    }

    static void addBetween(RowAdder& rows, const VariantGeometry& geometry, const LinearRange& before,
                           const LinearRange& range, double jump) {
        const double column = before.at(before.column, before.to);
        const double wider = range.column.value - column;
        const bool same = std::abs(wider) <= columnTolerance * column;
        ConstraintRow row = rows.rowAt(geometry, range, range.from);
        row.expression = difference(row.origin.size, rows.size(geometry, before, before.to));
        if (same || wider > 0) row.lower = -jump;
        if (same || wider < 0) row.upper = jump;
        rows.add(std::move(row));
    }
};

}  // namespace

const Constraint& withColumn() {
    static const ColumnConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
