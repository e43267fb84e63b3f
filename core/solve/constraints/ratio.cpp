// A multiple of another role's size, exactly or at least.
#include <algorithm>

#include "project/role_wishes.h"
#include "project/titles.h"
#include "project/wording.h"
#include "solve/constraint.h"
#include "solve/row_adder.h"
#include "solve/solve.h"
#include "solve/wish_key.h"
#include "solve/wish_list.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

using project::RoleWishes;

constexpr WishKey ratioKey{
    "ratio", "body*1.25", "1.25 times the size of body; body*1.25-: at least 1.25 times",
    [](NotationReader& reader, const std::string& value, project::Json& entry) {
        const std::size_t star = value.find('*');
        const char* const fix = "write for example body*1.25, or body*1.25- for at least that";
        if (star == std::string::npos) return reader.wrong(project::inQuotes(value) + " is not a ratio", fix);
        if (!reader.isRole(value.substr(0, star))) return false;
        entry["ratioTo"] = value.substr(0, star);
        std::string times = value.substr(star + 1);
        const bool least = times.ends_with('-');
        if (least) times.pop_back();
        return reader.putNumber(entry, least ? "leastRatio" : "ratio", times, fix);
    }};

class RatioConstraint : public Constraint {
public:
    using Member = std::optional<double> RoleWishes::*;
    RatioConstraint(const ConstraintTraits& fixed, bool isExact, Member member)
        : Constraint(fixed), isExact_(isExact), member_(member) {}

    void addWishes(WishList& list, const std::string& role) const override {
        for (const auto& one : project::wishRanges(list.projectWishes, role, member_))
            for (const auto& other : project::wishRanges(list.projectWishes, role, &RoleWishes::ratioTo))
                list.add(*this, role, other.value, one.value, std::max(one.from, other.from),
                         std::min(one.to, other.to));
    }
    void write(RoleWishes& entry, const Wish& wish, bool removed) const override {
        entry.ratioTo = wish.other;
        entry.*member_ = removed && !isExact_ ? project::unlimitedWishes().*member_ : wish.value;
    }
    /// Every figure of an exact ratio is a wish, so there is none that cancels it: it is deleted.
    void remove(project::Project& project, const Wish& wish) const override {
        if (!isExact_) return Constraint::remove(project, wish);
        for (RoleWishes& entry : project.row().wishes->roles)
            if (entry.role == wish.role) entry.ratio.reset();
        project::dropEmptyWishes(project);
    }

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        const std::string times = units::figure(wish.value);
        const std::string other = project::roleName(wish.other);
        return isExact_ ? wording::say("%1 times the size of %2", {times, other})
                        : wording::say("at least %1 times the size of %2", {times, other});
    }

    void addRows(RowAdder& rows) const override {
        const Wish& wish = rows.wish;
        // Sizes on a grid can meet an exact ratio only to within the grid's step.
        const double gridTolerance = isExact_ ? rows.model.gridStep() * (1 + wish.value) / 2 : 0;
        for (const VariantGeometry& geometry : rows.model.geometries()) {
            const std::vector<LinearRange>* one = Model::rangesOf(geometry, wish.role);
            const std::vector<LinearRange>* other = Model::rangesOf(geometry, wish.other);
            if (one == nullptr || other == nullptr) continue;
            for (const LinearRange& range : *one) {
                for (const LinearRange& beside : *other) {
                    const double from = std::max(range.from, beside.from);
                    const double to = std::min(range.to, beside.to);
                    if (to - from <= sweep::leastStep || !rows.isWithin(range)) continue;
                    for (const double width : {from, to}) {
                        ConstraintRow row = rows.rowAt(geometry, range, width);
                        row.expression =
                            difference(row.origin.size,
                                       rows.model.sizeAt(geometry, beside, wish.other, width), wish.value);
                        row.lower = wish.tolerance - gridTolerance;
                        if (isExact_) row.upper = gridTolerance - wish.tolerance;
                        rows.add(std::move(row));
                    }
                }
            }
        }
    }

    /// A role that should lead another one must not become smaller than it.
    [[nodiscard]] bool isUnreadable(const Wish& wish, const Relaxation& relaxation,
                                    const std::vector<Wish>& /*defaults*/) const override {
        return !isExact_ && wish.value >= 1 && (relaxation.removed || relaxation.wish.value < 1);
    }

private:
    bool isExact_;
    Member member_;
};

}  // namespace

const Constraint& ratio() {
    static const RatioConstraint kind({.name = "ratio", .key = &ratioKey}, true, &RoleWishes::ratio);
    return kind;
}

const Constraint& leastRatio() {
    static const RatioConstraint kind(
        {.name = "leastRatio", .key = &ratioKey, .relaxation = RelaxationRange{0.1, 0.01}}, false,
        &RoleWishes::leastRatio);
    return kind;
}

}  // namespace tenter::solve::constraints
