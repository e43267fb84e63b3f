#include "project/cascade.h"
#include "project/hover.h"

namespace tenter::project {

namespace {

constexpr Colour transparent{0, 0, 0, 0};
constexpr Colour white{255, 255, 255, 255};
constexpr Colour ink{0x1d, 0x2a, 0x33, 255};
constexpr Colour softInk{0x33, 0x42, 0x4d, 255};
constexpr Colour deepSea{0x0b, 0x55, 0x63, 255};  // white on it: 8.4 to 1
constexpr Colour line{0xd5, 0xdd, 0xe1, 255};

// The two widths of the default ramps, CSS px.
constexpr double narrow = 360;
constexpr double wide = 1480;

Ramp ramp(double least, double most) {
    return Ramp::between({narrow, least}, {wide, most}).value_or(Ramp::flat(least));
}

Sides sides(Length block, Length inlineSide) {
    return {block, inlineSide, block, inlineSide};
}

TextStyle bodyText() {
    TextStyle style;
    style.family = std::vector<std::string>{"sans-serif"};
    style.weight = 400;
    style.slant = Slant::Normal;
    style.size = ramp(15, 17.5);
    style.follow = Follow::Viewport;
    style.lineHeight = LineHeight::times(1.5);
    style.letterSpacing = style.wordSpacing = Length();
    style.letterCase = LetterCase::None;
    style.align = Align::Start;
    style.colour = softInk;
    style.wrap = Wrap::Wrap;
    style.overflowWrap = OverflowWrap::BreakWord;
    style.hyphens = Hyphens::Manual;
    style.keepLines = 0;
    // The bottom margin is the space above a button at the end of the card that has the longest text.
    style.margin = {Length::em(0.7), Length(), Length::em(1.2), Length()};
    style.padding = sides(Length(), Length());
    style.place = Place::Stretch;
    style.background = transparent;
    style.border.width = Length();
    style.border.colour = transparent;
    style.radius = Length();
    style.focus.colour = deepSea;
    style.focus.width = Length::px(3);
    style.focus.offset = Length::px(2);
    return style;
}

TextStyle headingText() {
    TextStyle style = bodyText();
    style.weight = 700;
    style.size = ramp(17, 25);
    style.lineHeight = LineHeight::times(1.2);
    style.colour = ink;
    style.margin = {Length::em(0.9), Length(), Length(), Length()};
    return style;
}

TextStyle buttonText() {
    TextStyle style = bodyText();
    style.weight = 600;
    style.size = ramp(15, 16.5);
    style.lineHeight = LineHeight::times(1.25);
    style.align = Align::Center;
    style.colour = white;
    style.overflowWrap = OverflowWrap::Anywhere;
    style.margin = {Length::ofAuto(), Length(), Length(), Length()};
    style.padding = sides(Length::em(0.7), Length::em(1.25));
    style.place = Place::Start;
    style.background = deepSea;
    // Transparent, but drawn in forced-colours mode.
    style.border.width = Length::px(2);
    style.radius = Length::px(6);
    return style;
}

RowSettings defaultRow() {
    RowSettings row;
    row.columns = 3;
    row.width = Length::percent(100);
    row.maxWidth = Length::ofNone();
    row.columnGap = Length::rem(1.75);
    row.rowGap = Length::rem(2.25);
    row.padding = sides(Length(), Length());
    row.background = transparent;
    row.lastLine = LastLine::Start;
    row.level = Level::None;
    return row;
}

CardSettings defaultCard() {
    CardSettings card;
    card.padding = sides(Length::rem(1.25), Length::rem(1.25));
    card.background = white;
    card.border.width = Length::px(1);
    card.border.colour = line;
    card.radius = Length::px(8);
    card.shadow.x = card.shadow.y = card.shadow.blur = card.shadow.spread = Length();
    card.shadow.colour = transparent;
    card.direction = Direction::Stacked;
    card.pictureShare = Length::percent(38);
    card.bleed = false;
    card.linked = false;
    return card;
}

}  // namespace

TextStyle defaultText(const std::string& role) {
    TextStyle style = role == "heading" ? headingText() : role == "button" ? buttonText() : bodyText();
    fillHover(style);
    return style;
}

Settings defaultSettings() {
    Settings settings;
    settings.row = defaultRow();
    settings.card = defaultCard();
    settings.picture.ratio = Ratio{3, 2};
    settings.picture.radius = Length();
    settings.picture.margin = sides(Length(), Length());
    for (const char* role : {"heading", "body", "button"})
        settings.text.of(role) = defaultText(role);
    return settings;
}

}  // namespace tenter::project
