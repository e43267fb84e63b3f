// Recursion over the members of settings, for the cascade.
#pragma once

#include "project/settings.h"

namespace tenter::project {

/// Sets in `under` whatever `over` sets. What a file's objects remembered belongs to their own layer and is
/// left alone.
template <class T>
void layOn(std::optional<T>& under, const std::optional<T>& over) {
    if (over) under = over;
}
void layOn(RoleStyles& under, const RoleStyles& over);
template <Described T>
void layOn(T& under, const T& over) {
    T::members([&](const char*, auto member) { layOn(under.*member, over.*member); });
}

/// Sets in `out` what `over` says otherwise than `under`; true if there was anything.
template <class T>
bool keepDifference(std::optional<T>& out, const std::optional<T>& under, const std::optional<T>& over) {
    if (!over || over == under) return false;
    out = over;
    return true;
}
bool keepDifference(RoleStyles& out, const RoleStyles& under, const RoleStyles& over);
template <Described T>
bool keepDifference(T& out, const T& under, const T& over) {
    bool any = false;
    T::members([&](const char*, auto member) {
        if (keepDifference(out.*member, under.*member, over.*member)) any = true;
    });
    return any;
}

}  // namespace tenter::project
