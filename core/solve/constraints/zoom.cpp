// Text twice as large at a browser zoom factor.
#include "solve/member_constraint.h"
#include "solve/row_adder.h"
#include "solve/wish_key.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey zoomKey{"zoom", "300%", "browser zoom at which the text is twice as large, 200% to 2000%",
                          [](NotationReader& reader, const std::string& value, project::Json& entry) {
                              return reader.putShare(entry, "zoom", value);
                          }};

class ZoomConstraint : public FigureConstraint<double> {
public:
    ZoomConstraint()
        : FigureConstraint({.name = "zoom",
                            .key = &zoomKey,
                            .relaxation = RelaxationRange{20, 0.1},
                            .removalRank = 0,
                            .places = PlaceScope::Variant},
                           &project::RoleWishes::zoom) {}

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        return wording::say("twice as large at %1 browser zoom", {units::percent(wish.value)});
    }
    [[nodiscard]] std::optional<std::string> limitText(const LimitContext& context) const override {
        return wording::say(
            "at most %1, because of the wish “%2”: the largest size may be at most %3 times the "
            "smallest size of this role.",
            {context.at, context.wished, units::figure(context.wish.value / 2)});
    }
    [[nodiscard]] double zoomFactor(const Wish& wish) const override { return wish.value; }

    /// At zoom z the page is laid out at width W / z, where its size may be smaller. Text is at least twice
    /// as large at zoom `value` if no size exceeds `value / 2` times any other one: a sufficient, linear
    /// condition.
    void addRows(RowAdder& rows) const override {
        const Wish& wish = rows.wish;
        const Model& model = rows.model;
        const double ratio = wish.value / 2 * (1 - wish.tolerance);
        for (const VariantGeometry* geometry : model.onePerVariant()) {
            const std::vector<LinearRange>* ranges = Model::rangesOf(*geometry, wish.role);
            if (ranges == nullptr) continue;
            const std::size_t smallest = rows.addVariable();
            const std::size_t largest = rows.addVariable();
            ConstraintRow row;
            row.origin = {
                geometry->variant, 0, model.mostWidth(), wish.role, &geometry->row->profile(), {}, {}};
            row.expression = {{largest, 1}, {smallest, -ratio}};
            row.upper = -emitRounding * (1 + ratio);
            rows.add(std::move(row));
            for (const LinearRange& range : *ranges) {
                for (const double width : {range.from, range.to}) {
                    ConstraintRow bound = rows.rowAt(*geometry, range, width);
                    bound.lower = 0;
                    const LinearExpression size = bound.origin.size;
                    bound.expression = difference(size, {{smallest, 1}});
                    rows.add(bound);
                    bound.expression = difference({{largest, 1}}, size);
                    rows.add(std::move(bound));
                }
            }
        }
    }
};

}  // namespace

const Constraint& zoom() {
    static const ZoomConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
