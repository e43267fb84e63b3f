// Style → variant → band: which setting holds where.
#pragma once

#include "project/project.h"

namespace tenter::project {

/// What holds if nothing is said, for the row, the card, the picture and `role`.
TextStyle defaultText(const std::string& role);
Settings defaultSettings();

/// `over` laid on `under`: whatever `over` sets wins, the rest stays.
Settings merged(const Settings& under, const Settings& over);

/// The settings that hold in band `band` of `variant`; every member is set, for every role of `roles`.
Settings resolve(const Project& project, const Variant& variant, std::size_t band);

/// What `over` says differently from `under`; both resolved. Empty members are equal.
Settings difference(const Settings& under, const Settings& over);

}  // namespace tenter::project
