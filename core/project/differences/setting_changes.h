// The settings in which two layers of the cascade differ.
#pragma once

#include <string>
#include <vector>

#include "project/json_text.h"
#include "project/settings.h"

namespace tenter::project {

/// A setting that differs; null where a layer does not set it.
// NOLINTNEXTLINE(bugprone-exception-escape): moving JSON throws only where it is used wrongly.
struct SettingChange {
    std::string path;  ///< as in `settingAt` (project/file.h)
    Json before;
    Json after;
};

/// The settings in which two layers differ, in the order of a project file.
std::vector<SettingChange> settingChanges(const Settings& before, const Settings& after);

}  // namespace tenter::project
