// The settings of a band from the values of a stylesheet that Tenter wrote.
#pragma once

#include <string>
#include <vector>

#include "intake/sheet_values.h"
#include "project/settings.h"

namespace tenter::intake {

/// The context of the values.
struct OwnContext {
    const std::vector<std::string>& roles;
    double rem = 16;           ///< root font size, CSS px
    bool rightToLeft = false;  ///< the row's direction
};

/// Every setting that the values have. What cannot be read is a sentence in `unread`; the setting then has
/// its default.
project::Settings settingsOf(const RowValues& values, const OwnContext& context,
                             std::vector<std::string>& unread);

}  // namespace tenter::intake
