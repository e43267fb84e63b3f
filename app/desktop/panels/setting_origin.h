// The value of a setting and the layer of the cascade that it comes from.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "session/session.h"

namespace tenter::desktop::panels {

/// A setting's value at the width in view.
// NOLINTNEXTLINE(bugprone-exception-escape): moving a JSON value does not throw.
struct SettingValue {
    project::Json value;  ///< set in `from`, or the default
    std::optional<project::CascadeLayer>
        from;               ///< the layer that sets the value; empty: no layer does, it is the default
    bool setHere = false;   ///< true if `from` is the layer that edits change (`EditScope::layerOf`)
    bool isNearer = false;  ///< true if that layer is more specific than the edit scope
    bool differsElsewhere = false;  ///< true if other bands or variants in the edit scope set another value
};

/// The value of the setting at `path` (see project::settingAt) at the width in view.
SettingValue settingValue(const Session& session, const std::string& path);
/// Where the value comes from: `set for all variants`, `inherited from all variants`, `default value`.
QString originTitle(const Session& session, const SettingValue& setting);

}  // namespace tenter::desktop::panels
