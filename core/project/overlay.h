// Operations on all members of settings, for the cascade.
#pragma once

#include "project/settings.h"

namespace tenter::project {

/// Sets each member of `under` that `over` sets. File keys belong to their own layer and stay.
template <class T>
void overlay(std::optional<T>& under, const std::optional<T>& over) {
    if (over) under = over;
}
void overlay(RoleStyles& under, const RoleStyles& over);
template <HasMembers T>
void overlay(T& under, const T& over) {
    T::members([&](const char*, auto member) { overlay(under.*member, over.*member); });
}

/// Sets in `out` the members that `over` sets and that differ from `under`. True if there are any.
template <class T>
bool addDifferences(std::optional<T>& out, const std::optional<T>& under, const std::optional<T>& over) {
    if (!over || over == under) return false;
    out = over;
    return true;
}
bool addDifferences(RoleStyles& out, const RoleStyles& under, const RoleStyles& over);
template <HasMembers T>
bool addDifferences(T& out, const T& under, const T& over) {
    bool any = false;
    T::members([&](const char*, auto member) {
        if (addDifferences(out.*member, under.*member, over.*member)) any = true;
    });
    return any;
}

}  // namespace tenter::project
