// Kinds of wishes that are one member of `RoleWishes`.
#pragma once

#include <optional>
#include <string>
#include <utility>

#include "project/role_wishes.h"
#include "solve/constraint.h"
#include "solve/wish_list.h"

namespace tenter::solve {

/// A kind with the value of a member as its figure.
template <class T, class Base = Constraint>
class FigureConstraint : public Base {
public:
    using Member = std::optional<T> project::RoleWishes::*;
    FigureConstraint(const ConstraintTraits& fixed, Member member) : Base(fixed), member_(member) {}

    void addWishes(WishList& list, const std::string& role) const override {
        for (const auto& one : project::wishRanges(list.projectWishes, role, member_))
            list.add(*this, role, {}, one.value, one.from, one.to);
    }
    void write(project::RoleWishes& entry, const Wish& wish, bool removed) const override {
        entry.*member_ =
            removed ? project::unlimitedWishes().*member_ : std::optional(static_cast<T>(wish.value));
    }

private:
    Member member_;
};

/// A kind without a figure, which holds if a member has the value `on`. `off` cancels it.
template <class T>
class SwitchConstraint : public Constraint {
public:
    using Member = std::optional<T> project::RoleWishes::*;
    SwitchConstraint(const ConstraintTraits& fixed, Member member, T on, T off)
        : Constraint(fixed), member_(member), on_(on), off_(off) {}

    void addWishes(WishList& list, const std::string& role) const override {
        for (const auto& one : project::wishRanges(list.projectWishes, role, member_))
            if (one.value == on_) list.add(*this, role, {}, 0, one.from, one.to);
    }
    void write(project::RoleWishes& entry, const Wish& /*wish*/, bool removed) const override {
        entry.*member_ = removed ? off_ : on_;
    }

private:
    Member member_;
    T on_;
    T off_;
};

}  // namespace tenter::solve
