// The same size in every variant.
#include <algorithm>
#include <cmath>

#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/violations.h"
#include "solve/wish_key.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

/// Largest difference of two equal sizes after rounding to emitted numbers, CSS px.
constexpr double equalSizeTolerance = 0.02;

constexpr WishKey variantsKey{
    "variants", "same", "same size in every variant; or free",
    [](NotationReader& reader, const std::string& value, project::Json& entry) {
        return reader.putWord(entry, "sameInVariants", value, {{"same", true}, {"free", false}});
    }};

class VariantsConstraint : public SwitchConstraint<bool> {
public:
    VariantsConstraint()
        : SwitchConstraint({.name = "sameInVariants",
                            .key = &variantsKey,
                            .couplesVariants = true,
                            .places = PlaceScope::AllVariants},
                           &project::RoleWishes::sameInVariants, true, false) {}

    void addWishes(WishList& list, const std::string& role) const override {
        if (list.project.row().variants.size() > 1) SwitchConstraint::addWishes(list, role);
    }
    [[nodiscard]] bool needsEveryVariant(const project::RoleWishes& entry) const override {
        return entry.sameInVariants.value_or(false);
    }

    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return wording::say("the same size in every variant");
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }
    [[nodiscard]] std::optional<std::string> limitText(const LimitContext& context) const override {
        return wording::say("%1, limited %2.", {condition(context.wish), context.allPlaces()});
    }

    void addRows(RowAdder& rows) const override {
        // Each variant equals the next, so all are equal.
        const std::vector<const VariantGeometry*> variants = rows.model.onePerVariant();
        for (std::size_t i = 0; i + 1 < variants.size(); ++i)
            addBetween(rows, *variants[i], *variants[i + 1]);
    }

    void verifyVariants(const layout::PreparedRow& one, const layout::PreparedRow& other,
                        Violations& violations) const override {
        const Wish& wish = violations.wish;
        const auto others = sizePieces(other, wish.role, violations.range);
        for (const checks::RolePiece& piece : sizePieces(one, wish.role, violations.range)) {
            for (const checks::RolePiece& beside : others) {
                const double from = std::max({piece.from, beside.from, wish.widths.from});
                const double to = std::min({piece.to, beside.to, wish.widths.to});
                if (to <= from) continue;
                const units::Linear difference =
                    piece.size.from(from - piece.from) - beside.size.from(from - beside.from);
                if (std::max(std::abs(difference.at(0)), std::abs(difference.at(to - from))) >
                    equalSizeTolerance)
                    violations.note({from, to});
            }
        }
    }

private:
    static void addBetween(RowAdder& rows, const VariantGeometry& one, const VariantGeometry& other) {
        const std::vector<LinearRange>* ranges = Model::rangesOf(one, rows.wish.role);
        const std::vector<LinearRange>* others = Model::rangesOf(other, rows.wish.role);
        if (ranges == nullptr || others == nullptr) return;
        for (const LinearRange& range : *ranges) {
            if (!rows.isWithin(range)) continue;
            for (const LinearRange& beside : *others) {
                const double from = std::max(range.from, beside.from);
                const double to = std::min(range.to, beside.to);
                if (to - from <= sweep::leastStep) continue;
                // Both sizes are linear here: equal at both ends means equal between.
                for (const double width : {from, to}) {
                    ConstraintRow row = rows.rowAt(one, range, width);
                    row.expression = difference(row.origin.size, rows.size(other, beside, width));
                    std::erase_if(row.expression,
                                  [](const Term& term) { return std::abs(term.coefficient) < 1e-12; });
                    if (row.expression.empty()) continue;
                    row.lower = row.upper = 0;
                    rows.add(std::move(row));
                }
            }
        }
    }
};

}  // namespace

const Constraint& sameInVariants() {
    static const VariantsConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
