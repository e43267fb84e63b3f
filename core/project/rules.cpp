#include "project/rules.h"
#include "units/ascii.h"

#include <algorithm>
#include <array>

namespace tenter::project {

using units::Unit;

namespace {

constexpr std::array<NumberRule, 47> numberRules{{
    {"limits/pictureFactor", 0.1, 10},
    {"limits/pictureComfort", 0.1, 10},
    {"limits/leastZoom", 1, 20},
    {"limits/usualZoom", 1, 20},
    {"limits/*", 0, 10000},
    {"wishes/roles/*/from", 0, 10000},
    {"wishes/roles/*/upTo", 1, 10000},
    {"wishes/roles/*/lines", 1, 50, true},
    {"wishes/roles/*/leastMeasure", 1, 1000},
    {"wishes/roles/*/mostMeasure", 1, 1000},
    {"wishes/roles/*/leastSize", 1, 400},
    {"wishes/roles/*/mostSize", 1, 400},
    {"wishes/roles/*/ratio", 0.1, 10},
    {"wishes/roles/*/leastRatio", 0.1, 10},
    {"wishes/roles/*/growth", 0, 100},
    {"wishes/roles/*/zoom", 2, 20},
    {"wishes/reserve", 0, 0.5},
    {"wishes/slack", 0, 0.2},
    {"wishes/narrowSlack", 0, 0.2},
    {"wishes/without/*", 0, 499, true},
    {"text/*/size/*/0", 0, 10000},
    {"text/*/size/*/1", 1, 400},
    {"text/*/size", 1, 400},
    {"text/*/weight", 1, 1000},
    {"text/*/keepLines", 0, 50, true},
    {"row/columns", 1, 12, true},
    {"bands/*/upTo", 1, 10000},
    {"fonts/*/weight/*", 1, 1000},
    {"fonts/*/weight", 1, 1000},
    {"parts/*/focus/*", 0, 1},
    {"parts/*/size/*", 1, 100000},
    {"page/scrollbar/width", 0, 40},
    {"shift/percent", -100, 100},
    {"shift/px", -10000, 10000},
    {"container/addedWidth", 0, 10000},
    {"ranges/*/upTo", 1, 10000},
    {"rootSize", 1, 100},
    {"page/readerSize", 8, 64},
    {"headingLevel", 1, 6, true},
    {"levelBefore", 1, 6, true},
    {"range/from", 200, 5000},
    {"range/to", 200, 5000},
    {"lineHeight", 0, 100},
    {"version", 1, 1e6, true},
    {"ratio/0", 0.001, 100000},
    {"ratio/1", 0.001, 100000},
    {"", -1e6, 1e6},
}};

constexpr unsigned bit(Unit unit) {
    return 1U << static_cast<unsigned>(unit);
}
constexpr unsigned onlyPx = bit(Unit::Px);
constexpr unsigned fixed = onlyPx | bit(Unit::Rem) | bit(Unit::Em);
constexpr unsigned outside = fixed | bit(Unit::Vw);  // outside the content of the card there is no cqi
constexpr unsigned inside = outside | bit(Unit::Cqi);
constexpr unsigned percent = bit(Unit::Percent);
constexpr double far = 10000;

// The first rule that matches is used. Rules of text come first, because roles can have any name.
constexpr std::array<LengthRule, 27> lengthRules{{
    {"text/*/lineHeight", inside, 0, far},
    {"text/*/letterSpacing", inside, -far, far},
    {"text/*/wordSpacing", inside, -far, far},
    {"text/*/margin/top", inside | percent | bit(Unit::Auto), -far, far},
    {"text/*/margin/*", inside | percent, -far, far},
    {"text/*/padding/*", inside | percent, 0, far},
    {"text/*/border/width", fixed, 0, far},
    {"text/*/radius", inside, 0, far},
    {"text/*/focus/width", fixed, 0, far},
    {"text/*/focus/offset", fixed, -far, far},
    {"picture/margin/*", inside | percent, -far, far},
    {"picture/radius", inside, 0, far},
    {"row/width", outside | percent, 0, far},
    {"row/maxWidth", outside | percent | bit(Unit::None), 0, far},
    {"row/columnGap", outside | percent, 0, far},
    {"row/rowGap", outside, 0, far},
    {"row/padding/*", outside | percent, 0, far},
    {"card/padding/*", outside | percent, 0, far},
    {"card/border/width", fixed, 0, far},
    {"card/radius", outside, 0, far},
    {"card/shadow/blur", onlyPx, 0, far},
    {"card/shadow/*", onlyPx, -far, far},
    {"card/pictureShare", percent, 0, 100},
    {"wishes/grid", onlyPx | bit(Unit::Rem), 0, 16},
    {"container/width", outside | percent, 0, far},
    {"container/maxWidth", outside | percent | bit(Unit::None), 0, far},
    {"container/padding/*", outside | percent, 0, far},
}};

using units::isDigit;
using units::isLetter;
using units::isLowerLetter;

// Removes the last step of a pointer or pattern and returns it.
std::string_view takeStep(std::string_view& steps) {
    const std::size_t slash = steps.rfind('/');
    const std::string_view last = slash == std::string_view::npos ? steps : steps.substr(slash + 1);
    steps = slash == std::string_view::npos ? std::string_view() : steps.substr(0, slash);
    return last;
}

template <class Rules>
const auto& firstMatch(const Rules& rules, std::string_view place) {
    const auto found = std::find_if(rules.begin(), rules.end() - 1,
                                    [&](const auto& rule) { return endsWith(place, rule.where); });
    return *found;
}

}  // namespace

bool endsWith(std::string_view place, std::string_view pattern) {
    while (!pattern.empty()) {
        if (place.empty()) return false;
        const std::string_view wanted = takeStep(pattern);
        if (takeStep(place) != wanted && wanted != "*") return false;
    }
    return true;
}

const NumberRule& numberRule(std::string_view place) {
    return firstMatch(numberRules, place);
}
const LengthRule& lengthRule(std::string_view place) {
    return firstMatch(lengthRules, place);
}

std::vector<std::string> LengthRule::words() const {
    std::vector<std::string> words;
    for (const Unit unit :
         {Unit::Px, Unit::Rem, Unit::Em, Unit::Percent, Unit::Vw, Unit::Cqi, Unit::Auto, Unit::None}) {
        if (allows(unit)) words.emplace_back(units::suffix(unit));
    }
    return words;
}

bool isClassName(std::string_view text) {
    return !text.empty() && isLetter(text.front()) &&
           std::all_of(text.begin(), text.end(), [](char c) { return units::isWordCharacter(c); });
}

bool isRoleName(std::string_view text) {
    if (text == "card" || text == "picture" || text.starts_with("x-")) return false;
    return !text.empty() && isLowerLetter(text.front()) && std::all_of(text.begin(), text.end(), [](char c) {
        return isLowerLetter(c) || isDigit(c) || c == '-';
    });
}

bool isLanguage(std::string_view text) {
    bool first = true;
    while (true) {
        const std::size_t hyphen = std::min(text.find('-'), text.size());
        const std::string_view subtag = text.substr(0, hyphen);
        const bool rightSize = subtag.size() >= (first ? 2 : 1) && subtag.size() <= 8;
        const bool rightCharacters = std::all_of(
            subtag.begin(), subtag.end(), [&](char c) { return isLetter(c) || (!first && isDigit(c)); });
        if (!rightSize || !rightCharacters) return false;
        if (hyphen == text.size()) return true;
        text.remove_prefix(hyphen + 1);
        first = false;
    }
}

}  // namespace tenter::project
