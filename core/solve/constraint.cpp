#include "solve/constraint.h"

#include <algorithm>

#include "solve/row_adder.h"
#include "wording/say.h"

namespace tenter::solve {

void Constraint::write(project::RoleWishes& /*entry*/, const Wish& /*wish*/, bool /*removed*/) const {}

void Constraint::remove(project::Project& project, const Wish& wish) const {
    project::Wishes more;
    more.roles.push_back(toRoleWishes(wish, true));
    project.row().wishes = project::overlaid(project.row().wishes.value_or(project::Wishes()), more);
}

bool Constraint::needsEveryVariant(const project::RoleWishes& /*entry*/) const {
    return false;
}

std::string Constraint::ofRole(const Wish& wish, const std::string& role) const {
    //: A role, and a condition: body at least 15 px
    return wording::say("%1 %2", {role, condition(wish)});
}

std::string withCondition(const std::string& role, const std::string& condition) {
    return wording::say("%1 with %2", {role, condition});
}

std::optional<std::string> Constraint::limitText(const LimitContext& /*context*/) const {
    return std::nullopt;
}

std::optional<std::string> Constraint::advice() const {
    return std::nullopt;
}

void Constraint::addBounds(BoundFinder& /*finder*/) const {}

double Constraint::zoomFactor(const Wish& /*wish*/) const {
    return 1;
}

void Constraint::verifyText(const VerifiedText& /*text*/, Violations& /*violations*/) const {}

void Constraint::verifySize(const layout::LinearSizes& /*sizes*/, Violations& /*violations*/) const {}

void Constraint::verifyVariants(const layout::PreparedRow& /*one*/, const layout::PreparedRow& /*other*/,
                                Violations& /*violations*/) const {}

bool Constraint::isUnreadable(const Wish& /*wish*/, const Relaxation& /*relaxation*/,
                              const std::vector<Wish>& /*defaults*/) const {
    return false;
}

void BoundConstraint::addRows(RowAdder& rows) const {
    const Model& model = rows.model;
    const std::string& name = rows.wish.role;
    for (const VariantGeometry& geometry : model.geometries()) {
        const std::vector<LinearRange>* ranges = Model::rangesOf(geometry, name);
        if (ranges == nullptr) continue;
        const auto role = static_cast<std::uint32_t>(std::ranges::find(geometry.row->roles(), name) -
                                                     geometry.row->roles().begin());
        for (const SizeBound& found : model.bounds(geometry, role, rows.wish)) {
            for (const auto& [width, bound] :
                 {std::pair(found.widths.from, &found.start), std::pair(found.widths.to, &found.end)}) {
                // Layout uses the emitted, rounded sizes, so bounds by text need room for the rounding.
                const double rounding = bound->text.exists ? emitRounding : 0;
                ConstraintRow row = rows.rowAt(geometry, (*ranges)[found.range], width);
                row.expression = row.origin.size;
                (found.upper ? row.upper : row.lower) = bound->size + (found.upper ? -rounding : rounding);
                row.origin.text = bound->text;
                row.origin.bound = bound->size;
                rows.add(std::move(row));
            }
        }
    }
}

}  // namespace tenter::solve
