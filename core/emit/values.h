// CSS values of settings.
#pragma once

#include <string>
#include <vector>

#include "emit/length_sum.h"
#include "project/project.h"
#include "project/settings.h"

namespace tenter::emit {

/// Four sides in the shortest form of one to four values. CSSOM § 6.7.2.
std::string sides(const std::string& top, const std::string& right, const std::string& bottom,
                  const std::string& left);
/// The same; sides that are not set are 0.
std::string sides(const project::Sides& value);

/// `2px solid #123`; `0` if there is none.
std::string border(const project::Border& value);

/// `0 2px 8px #0003`; `none` if it is not visible.
std::string shadow(const project::Shadow& value);

/// A family list: generic families as keywords, all others quoted. CSS Fonts 4 § 2.1.
std::string families(const std::vector<std::string>& list);

/// `3 / 2`; `auto` for the ratio of the file.
std::string ratio(const project::Ratio& value);
/// The `aspect-ratio` of a picture; empty if it has that of the settings.
std::string ownRatio(const project::PicturePart& picture);
/// The `object-position` of a picture for its focal point; empty for the centre. CSS Images 3 § 5.5.
std::string ownPosition(const project::PicturePart& picture);

/// A length as a sum; 0 if it is not set.
LengthSum sumOf(const std::optional<units::Length>& length);

}  // namespace tenter::emit
