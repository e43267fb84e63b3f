// Growth of at most some px per 100 px of width.
#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/wish_key.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey growthKey{"growth", "0.8", "at most 0.8 px per 100 px of width",
                            [](NotationReader& reader, const std::string& value, project::Json& entry) {
                                return reader.putNumber(entry, "growth", value,
                                                        "write px per 100 px of width, for example 0.8");
                            }};

class GrowthConstraint : public FigureConstraint<double> {
public:
    GrowthConstraint()
        : FigureConstraint({.name = "growth",
                            .key = &growthKey,
                            .relaxation = RelaxationRange{100, 0.05},
                            .removalRank = 1},
                           &project::RoleWishes::growth) {}

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        return wording::say("growth of at most %1 per %2 of width", {units::px(wish.value), units::px(100)});
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }

    void addRows(RowAdder& rows) const override {
        for (const VariantGeometry& geometry : rows.model.geometries()) {
            const std::vector<LinearRange>* ranges = Model::rangesOf(geometry, rows.wish.role);
            if (ranges == nullptr) continue;
            for (const LinearRange& range : *ranges) {
                if (!rows.isWithin(range)) continue;
                ConstraintRow row = rows.rowAt(geometry, range, range.to);
                row.expression = difference(row.origin.size, rows.size(geometry, range, range.from));
                row.upper = rows.wish.value * (range.to - range.from) / 100;
                rows.add(std::move(row));
            }
        }
    }
};

}  // namespace

const Constraint& growth() {
    static const GrowthConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
