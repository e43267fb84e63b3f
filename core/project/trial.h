// What a row must bear once it has been handed over: longer words, other pictures, more cards. To look at,
// not to keep.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// How much longer a client's own copy, or a translation, may be. Common practice, no source: 15 to 35 %.
inline constexpr double usualLonger = 0.3;
inline constexpr double mostLonger = 3;

struct Trial {
    enum class Kind { LongerCopy, LongestTitles, ShortestTitles, NoPictures, CardMore, CardLess };
    Kind kind = Kind::LongerCopy;
    double share = usualLonger;  ///< of its characters, by which copy is longer; of `LongerCopy` alone
    friend bool operator==(const Trial&, const Trial&) = default;
};

/// Every kind, in the order above.
std::vector<Trial::Kind> trialKinds();

/// `longer=30%`, `longest-titles`, `shortest-titles`, `no-pictures`, `card-more` or `card-less`.
std::optional<Trial> trialOf(std::string_view text);
/// What `trialOf` takes, for messages.
std::string trialWords();

/// True for those under which cards or parts have other indices than in the project.
bool changesParts(const Trial& trial);

/// The project under the trial. Longer copy goes on with its own words from the first, so that they are as
/// long as its words are; the longest and shortest titles are those of the cards' headings; a card more is
/// the first again, and a card less leaves the last out, but for an only one.
Project tried(const Project& project, const Trial& trial);

}  // namespace tenter::project
