// Text tests: the row with longer text, other titles, without pictures, or with another number of cards. The
// result is shown and checked, never saved.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// The default and the largest share by which a text becomes longer. Translations are commonly 15 to 35 %
/// longer; common practice, no source.
inline constexpr double usualLonger = 0.3;
inline constexpr double mostLonger = 3;

/// One text test.
struct Trial {
    enum class Kind { LongerCopy, LongestTitles, ShortestTitles, NoPictures, CardMore, CardLess };
    Kind kind = Kind::LongerCopy;
    double share = usualLonger;  ///< for LongerCopy: added characters as a share of the text
    friend bool operator==(const Trial&, const Trial&) = default;
};

/// All kinds, in the order of the enumeration.
std::vector<Trial::Kind> trialKinds();

/// The text test with that name: `longer`, `longer=50%`, `longest-titles`, `shortest-titles`, `no-pictures`,
/// `card-more` or `card-less`. Empty for anything else.
std::optional<Trial> trialOf(std::string_view text);
/// The names that `trialOf` takes, for help and messages.
std::string trialWords();

/// True if cards or parts have other indices under the text test than in the project.
bool changesParts(const Trial& trial);

/// The project changed by a text test. Longer text repeats its own words from the first, so that word lengths
/// stay typical. The longest or shortest heading replaces all headings. The card added is a copy of the
/// first; the card removed is the last, unless it is the only one.
Project tried(const Project& project, const Trial& trial);

}  // namespace tenter::project
