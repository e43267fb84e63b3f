// What a project wishes of a role at some widths, looked up and changed one member at a time.
#pragma once

#include <optional>
#include <string>

#include "project/wishes.h"

namespace tenter::project {

/// Viewport widths past `from`, up to `upTo`, CSS px; all of them if unset.
struct WishedWidths {
    std::optional<double> from, upTo;
    friend bool operator==(const WishedWidths&, const WishedWidths&) = default;
};

/// What is wished of a role there, the usual where the project says nothing: at all widths what is said for
/// all of them, else what holds in the middle of `widths`.
RoleWishes wishedFor(const Project& project, const std::string& role, const WishedWidths& widths);

/// The project's own entry for just these widths; null if it has none.
const RoleWishes* wishSaidFor(const Project& project, const std::string& role, const WishedWidths& widths);

/// The same, made if there is none: so that what is wished for some widths goes on winning over what is
/// wished for all.
RoleWishes& wishFor(Project& project, const std::string& role, const WishedWidths& widths);

/// Drops entries that say nothing, and the wishes if nothing is left of them.
void dropEmptyWishes(Project& project);

/// Figures that ask nothing: the ends of what a project may say. A ratio has none.
RoleWishes askingNothing();

}  // namespace tenter::project
