// Values of CSS properties out of settings.
#pragma once

#include <string>
#include <vector>

#include "emit/length_sum.h"
#include "project/project.h"
#include "project/settings.h"

namespace tenter::emit {

/// Four sides as a person writes them: one to four values. CSSOM § 6.7.2.
std::string sides(const std::string& top, const std::string& right, const std::string& bottom,
                  const std::string& left);
/// Sides that are not set are 0.
std::string sides(const project::Sides& value);

/// `2px solid #123`; `0` if there is none.
std::string border(const project::Border& value);

/// `0 2px 8px #0003`; `none` if it would not be seen.
std::string shadow(const project::Shadow& value);

/// A family list: generic families as keywords, all others quoted. CSS Fonts 4 § 2.1.
std::string families(const std::vector<std::string>& list);

/// `3 / 2`; `auto` for the file's own.
std::string ratio(const project::Ratio& value);
/// A picture's own `aspect-ratio`; empty if it has that of the settings.
std::string ownRatio(const project::PicturePart& picture);
/// A picture's own `object-position`, from its focal point; empty for the middle. CSS Images 3 § 5.5.
std::string ownPosition(const project::PicturePart& picture);

/// A length that may not be set, as a sum.
LengthSum sumOf(const std::optional<units::Length>& length);

}  // namespace tenter::emit
