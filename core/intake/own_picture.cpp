#include "intake/own_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "css/longhands.h"
#include "emit/card_box.h"
#include "intake/own_values.h"
#include "units/number.h"

namespace tenter::intake {

using units::Length;

namespace {

struct Word {
    const char* text;
    bool first;
    bool last;
};

/// The words of emit::PicturePosition.
constexpr std::array<Word, 6> words{{{"picture-only", true, true},
                                     {"picture-first", true, false},
                                     {"picture-inside", false, false},
                                     {"picture-last", false, true},
                                     {"picture-further", false, false},
                                     {"picture-further-last", false, true}}};

std::string negative(const emit::LengthSum& sum) {
    return emit::LengthSum().add(sum, -1).css();
}

bool isZero(const std::string& value) {
    return areSameSum(value, "0");
}

std::array<std::string, 4> marginsOf(const Values& values) {
    return sidesIn(valueOf(values, "margin", "0"));
}

std::array<std::string, 4> radiiOf(const Values& values) {
    return sidesIn(valueOf(values, "border-radius", "0"));
}

bool isAbsolute(const Values& values) {
    return valueOf(values, "position", "static") == "absolute";
}

/// True if the corners differ: some are those of the card.
bool cornersDiffer(const Values& values) {
    const std::array<std::string, 4> radii = radiiOf(values);
    return std::ranges::any_of(radii, [&](const std::string& one) { return one != radii[0]; });
}

/// A margin as a length. In a subgrid a percentage is printed as that share of the content of the card, which
/// is `content` cqi and lengths: the roundest percentage that is printed so.
std::optional<Length> marginIn(const std::string& text, double content) {
    if (const std::optional<Length> length = Length::parse(text);
        length && (content <= 0 || length->unit() != units::Unit::Cqi))
        return length;
    const std::optional<Sum> sum = sumIn(text);
    const double share = sum ? (*sum)[static_cast<std::size_t>(units::Unit::Cqi)] : 0;
    if (share == 0 || content <= 0) return std::nullopt;
    constexpr double printed = 0.00006;  // half of the last of four decimals, and the error of doubles
    double percent = 0;
    for (const int decimals : {0, 1, 2, 3, 4}) {
        percent = units::rounded(share / content * 100, decimals);
        if (std::abs(percent * content / 100 - share) < printed) break;
    }
    return Length::percent(percent);
}

}  // namespace

OwnPictures::OwnPictures(const RowValues& values) {
    const auto all = values.find("picture");
    const Values shared = all == values.end() ? Values{} : all->second;
    for (const Word& word : words) {
        const auto own = values.find(word.text);
        if (own == values.end()) continue;
        Position position{shared, word.first, word.last};
        for (const auto& [property, value] : own->second)
            position.values[property] = value;
        positions_.push_back(std::move(position));
    }
    if (positions_.empty()) positions_.push_back({shared, false, false});
}

const Values* OwnPictures::beside() const {
    const auto found = std::ranges::find_if(positions_, isAbsolute, &Position::values);
    return found == positions_.end() ? nullptr : &found->values;
}

double OwnPictures::share() const {
    const Values* const values = beside();
    const auto width = values ? sumIn(valueOf(*values, "width", "0")) : std::nullopt;
    return width ? (*width)[static_cast<std::size_t>(units::Unit::Percent)] : 0;
}

bool OwnPictures::touchEdgesBeside() const {
    const Values* const values = beside();
    return values != nullptr && isZero(valueOf(*values, "inset-block", "auto")) &&
           isZero(valueOf(*values, "inset-inline-start", "auto"));
}

bool OwnPictures::areBled(const project::CardSettings& card) const {
    if (!areBeside()) return areBledAbove(card);
    const emit::CardSides padding = emit::cardSides(card);
    const bool padded = !padding.top.isZero() || !padding.bottom.isZero() || !padding.left.isZero() ||
                        !padding.right.isZero();
    return touchEdgesBeside() && (padded || cornersDiffer(*beside()));
}

/// Of pictures above or below the text: full-bleed if their margins are the card's padding. Other negative
/// margins are the picture's own.
bool OwnPictures::areBledAbove(const project::CardSettings& card) const {
    const emit::CardSides padding = emit::cardSidesWithin(card);
    bool differs = false;  // from a picture that is not full-bleed
    for (const Position& position : positions_) {
        const std::array<std::string, 4> margins = marginsOf(position.values);
        const bool top = areSameSum(margins[0], negative(padding.top));
        const bool bottom = areSameSum(margins[2], negative(padding.bottom));
        if (!areSameSum(margins[1], negative(padding.right)) ||
            !areSameSum(margins[3], negative(padding.left)))
            return false;
        if ((position.first && !top) || (position.last && !bottom)) return false;
        differs = differs || !isZero(margins[1]) || !isZero(margins[3]) || (top && !isZero(margins[0])) ||
                  (bottom && !isZero(margins[2])) || cornersDiffer(position.values);
    }
    return differs;
}

/// The radius of the corners that are not those of the card.
Length OwnPictures::radius(const project::CardSettings& card) const {
    const std::string ofCard = emit::innerRadius(card).css();
    std::optional<Length> found;
    for (const Position& position : positions_) {
        const bool touches = card.bleed.value_or(false) && (!areBeside() || isAbsolute(position.values));
        for (const std::string& corner : radiiOf(position.values)) {
            const std::optional<Length> length = Length::parse(corner);
            if (!length) continue;
            if (!touches || !areSameSum(corner, ofCard)) return *length;
            found = length;
        }
    }
    return found.value_or(Length());
}

project::PictureSettings OwnPictures::settings(const project::CardSettings& card, double content) const {
    project::PictureSettings out;
    const Values& shared = positions_.front().values;
    const std::vector<std::string> ratio = css::valueParts(valueOf(shared, "aspect-ratio", "auto"));
    out.ratio = project::Ratio{};
    if (ratio.size() == 3)
        out.ratio = project::Ratio{numberIn(ratio[0]).value_or(3), numberIn(ratio[2]).value_or(2)};
    out.radius = radius(card);
    const bool bleeds = card.bleed.value_or(false) && !areBeside();
    const emit::CardSides padding = emit::cardSidesWithin(card);
    std::optional<Length>* sides[] = {&out.margin.top, &out.margin.right, &out.margin.bottom,
                                      &out.margin.left};
    for (std::optional<Length>* side : sides)
        *side = Length();
    for (const Position& position : positions_) {
        if (isAbsolute(position.values)) continue;
        const std::array<std::string, 4> margins = marginsOf(position.values);
        for (std::size_t i = 0; i < 4; ++i) {
            const bool inLine = i % 2 == 1;
            const bool atEdge = i == 0 ? position.first : position.last;
            const std::string ofCard = negative(i == 0 ? padding.top : padding.bottom);
            // The card's padding, not a margin of the picture.
            if (bleeds && (inLine || atEdge || areSameSum(margins[i], ofCard))) continue;
            if (const std::optional<Length> length = marginIn(margins[i], content)) *sides[i] = length;
        }
    }
    return out;
}

}  // namespace tenter::intake
