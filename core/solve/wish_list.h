// Reading single wishes from those of a project.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solve/wish.h"

namespace tenter::solve {

/// The wishes found so far. Each `Constraint` adds those of its own kind, one role after the other.
class WishList {
public:
    WishList(const project::Project& source, const project::Wishes& wishes)
        : project(source), projectWishes(wishes) {}

    const project::Project& project;
    const project::Wishes& projectWishes;

    /// Adds a wish for the viewport widths from `from` to `to` (CSS px) inside the project's range, if any.
    void add(const Constraint& kind, const std::string& role, const std::string& other, double value,
             double from, double to);
    /// Adds a wish for the project's whole range.
    void add(const Constraint& kind, const std::string& role);

    std::vector<Wish> take() { return std::move(wishes_); }

private:
    std::vector<Wish> wishes_;
};

}  // namespace tenter::solve
