#include "emit/card_box.h"

#include <algorithm>

#include "emit/usage.h"
#include "emit/values.h"

namespace tenter::emit {

using units::Length;
using units::Unit;

CardSides cardSides(const project::CardSettings& card) {
    return {sumOf(card.padding.top), sumOf(card.padding.right), sumOf(card.padding.bottom),
            sumOf(card.padding.left)};
}

CardSides cardSidesWithin(const project::CardSettings& card) {
    CardSides said = cardSides(card);
    // With column width C and content width c: c = C − s·C − fixed, so C = (c + fixed) / (1 − s).
    const double share = (said.left.of(Unit::Percent) + said.right.of(Unit::Percent)) / 100;
    const double scale = 1 / std::max(1 - share, 0.01);
    LengthSum fixed;
    for (const auto* side : {&card.padding.left, &card.padding.right})
        if (*side && (*side)->unit() != Unit::Percent) fixed.add(**side);
    fixed.add(sumOf(card.border.width), 2);
    const auto within = [&](const LengthSum& side) {
        const double part = side.of(Unit::Percent) / 100 * scale;
        if (part == 0) return side;
        return LengthSum(Length::percent(part * 100)).add(fixed, part);
    };
    return {within(said.top), within(said.right), within(said.bottom), within(said.left)};
}

LengthSum gapsOf(const project::RowSettings& row) {
    const int count = row.columns.value_or(1);
    return LengthSum().add(sumOf(row.columnGap), count - 1);
}

CardSides besidesPicture(const BandScope& scope) {
    const project::CardSettings& card = scope.settings.card;
    CardSides padding = cardSides(card);
    if (card.direction != project::Direction::Beside) return padding;
    LengthSum& start = scope.project.rightToLeft ? padding.right : padding.left;
    // The distance of the picture from the edge, the picture, and the same distance to the other parts.
    const LengthSum once = start;
    if (!card.bleed.value_or(false)) start.add(once);
    start.add(sumOf(card.pictureShare));
    return padding;
}

bool rowIsContainer(const BandScope& scope) {
    if (scope.settings.row.level != project::Level::Subgrid) return false;
    const bool beside = scope.settings.card.direction == project::Direction::Beside;
    return std::ranges::any_of(picturePositions(scope.project),
                               [&](const PicturePosition& stand) { return !(beside && stand.leading); });
}

LengthSum contentInRow(const BandScope& scope, bool withPadding) {
    const project::RowSettings& row = scope.settings.row;
    const project::CardSettings& card = scope.settings.card;
    const double count = row.columns.value_or(1);
    LengthSum column = LengthSum(Length::cqi(100)).add(gapsOf(row), -1);
    // A percentage in the gap refers to the content width of the row too.
    const double gap = column.of(Unit::Percent);
    column = LengthSum().add(column.add(Length::percent(1), -gap).add(Length::cqi(1), gap), 1 / count);
    LengthSum taken = LengthSum().add(sumOf(card.border.width), 2);
    const CardSides padding = besidesPicture(scope);
    if (!withPadding) taken.add(padding.left).add(padding.right);
    const double share = taken.of(Unit::Percent) / 100;
    taken.add(Length::percent(1), -100 * share);
    return column.add(LengthSum(column), -share).add(taken, -1);
}

namespace {

/// A percentage of a grid item refers to its column, one of a flex item to the whole row. So the cards of a
/// centred row need it as a share of the row. CSS Grid 2 § 5.1, CSS Flexbox 1 § 4.2.
LengthSum ofColumn(const BandScope& scope, const LengthSum& side) {
    const project::RowSettings& row = scope.settings.row;
    const double percent = side.of(Unit::Percent);
    if (row.lastLine != project::LastLine::Center || percent == 0) return side;
    const double count = row.columns.value_or(1);
    LengthSum column;  // but for centredSpare, of which a share is nothing
    column.add(Length::percent(100), 1 / count).add(gapsOf(row), -1 / count);
    return LengthSum(side).add(Length::percent(1), -percent).add(column, percent / 100);
}

}  // namespace

std::string cardPadding(const BandScope& scope) {
    const CardSides padding = besidesPicture(scope);
    const auto css = [&](const LengthSum& side) { return ofColumn(scope, side).css(); };
    return sides(css(padding.top), css(padding.right), css(padding.bottom), css(padding.left));
}

LengthSum withinPaddingBox(const project::CardSettings& card, const LengthSum& length) {
    return LengthSum(length).add(sumOf(card.border.width), 2 * length.of(Unit::Percent) / 100);
}

LengthSum innerRadius(const project::CardSettings& card) {
    const Length radius = card.radius.value_or(Length());
    const Length width = card.border.width.value_or(Length());
    // With one unit the difference is known; with several, browsers clamp the result of calc() at zero. CSS
    // Values 4 § 10.5.
    if (radius.unit() == width.unit() && width.value() >= radius.value()) return {};
    return radius.isZero() ? LengthSum() : LengthSum(radius).add(width, -1);
}

}  // namespace tenter::emit
