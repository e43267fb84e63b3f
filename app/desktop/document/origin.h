// Where a setting's value comes from.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "document/viewing.h"

namespace tenter::desktop {

/// What a setting holds, seen from the layer that edits go to.
// NOLINTNEXTLINE(bugprone-exception-escape): moving a JSON value does not throw.
struct Held {
    project::Json value;  ///< seen from that layer
    std::optional<Viewing::Scope>
        from;              ///< the layer that says so; empty: nothing is said, the default holds
    bool setHere = false;  ///< that layer is the one edits go to
    /// A nearer layer that says otherwise, so that the value does not show at this width.
    std::optional<Viewing::Scope> hiddenBy;
    project::Json hiding;
};

/// `path` as project::settingAt takes it.
Held held(const Viewing& viewing, const std::string& path);
/// `set here`, `from all variants`, `nothing said: the default`.
QString originTitle(const Viewing& viewing, const Held& held);

}  // namespace tenter::desktop
