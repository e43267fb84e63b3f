// The value of a setting and the layer of the cascade that it comes from.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "session/session.h"

namespace tenter::desktop::panels {

/// A setting's value, resolved from the layer that edits change (`EditScope::layer`) outwards.
// NOLINTNEXTLINE(bugprone-exception-escape): moving a JSON value does not throw.
struct SettingValue {
    project::Json value;  ///< set in `from`, or the default
    std::optional<project::CascadeLayer>
        from;              ///< the layer that sets the value; empty: no layer does, it is the default
    bool setHere = false;  ///< true if `from` is the layer that edits change
    /// A more specific layer that sets another value, so that `value` has no effect at this width.
    std::optional<project::CascadeLayer> overriddenBy;
    project::Json overridingValue;  ///< the value set by `overriddenBy`
};

/// The value of the setting at `path` (see project::settingAt) at the width in view.
SettingValue settingValue(const Session& session, const std::string& path);
/// Where the value comes from: `set here, for all variants`, `inherited from all variants`, `default value`.
QString originTitle(const Session& session, const SettingValue& setting);

}  // namespace tenter::desktop::panels
