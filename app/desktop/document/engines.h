// What the window calls the break profiles.
#pragma once

#include <QString>

#include "text/profile.h"

namespace tenter::desktop {

/// Whose browsers break so: `Chromium’s family`, `Firefox`.
QString engineTitle(const text::BreakProfile& profile);
/// `1 line`, `3 lines`.
QString linesTitle(std::size_t lines);

}  // namespace tenter::desktop
