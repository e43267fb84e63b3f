// A kind of wish as someone adds it: this file, and one line in the registry (solve/constraints.def beside
// this file).
#include "solve/bound_finder.h"
#include "solve/constraint.h"
#include "solve/wish_key.h"
#include "solve/wish_list.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey addedKey{"added", "now", "an added wish",
                           [](NotationReader& reader, const std::string& value, project::Json& /*entry*/) {
                               return value == "now" ||
                                      reader.wrong("the added wish has one value", "write now");
                           }};

class AddedConstraint : public BoundConstraint {
public:
    AddedConstraint() : BoundConstraint({.name = "added", .key = &addedKey}) {}
    void addWishes(WishList& list, const std::string& role) const override { list.add(*this, role); }
    [[nodiscard]] std::string condition(const Wish& /*wish*/) const override {
        return "at least the smallest size that there is";
    }
    void addBounds(BoundFinder& finder) const override { finder.addFigure(false, 1); }
};

}  // namespace

const Constraint& added() {
    static const AddedConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
