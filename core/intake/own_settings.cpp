#include "intake/own_settings.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "css/longhands.h"
#include "css/token_cursor.h"
#include "emit/page_fonts.h"
#include "intake/own_picture.h"
#include "intake/own_values.h"
#include "intake/printed_ramp.h"
#include "intake/size_reading.h"
#include "project/titles.h"
#include "project/words.h"
#include "wording/say.h"

namespace tenter::intake {

using units::Length;
using units::Unit;

namespace {

class Reader {
public:
    Reader(const RowValues& values, const OwnContext& context, std::vector<std::string>& unread)
        : values_(values), context_(context), unread_(unread) {}

    project::Settings read() {
        readRow();
        readCard();
        for (const std::string& role : context_.roles)
            readText(role, out_.text.of(role));
        return std::move(out_);
    }

private:
    const Values& of(const std::string& element) const {
        static const Values none;
        const auto found = values_.find(element);
        return found == values_.end() ? none : found->second;
    }
    void note(const std::string& element, const std::string& property, const std::string& value) {
        unread_.push_back(
            wording::say("The value “%1” of %2 of the %3 was not understood.",
                         {value, property, project::roleName(element.empty() ? "row" : element)}));
    }

    std::optional<Length> length(const std::string& element, const std::string& property,
                                 const std::string& usual) {
        const std::string text = valueOf(of(element), property, usual);
        std::optional<Length> found = Length::parse(text);
        if (!found) note(element, property, text);
        return found;
    }
    std::optional<units::Colour> colour(const Values& values, const std::string& property) {
        const std::string text = valueOf(values, property, "transparent");
        std::optional<units::Colour> found = units::Colour::parse(text);
        if (!found) note("row", property, text);
        return found;
    }

    void sides(const std::string& element, const std::string& property, project::Sides& out) {
        const std::array<std::string, 4> texts = sidesIn(valueOf(of(element), property, "0"));
        std::optional<Length>* members[] = {&out.top, &out.right, &out.bottom, &out.left};
        for (std::size_t i = 0; i < 4; ++i) {
            *members[i] = Length::parse(texts[i]);
            if (!*members[i]) note(element, property, texts[i]);
        }
    }
    void border(const std::string& element, project::Border& out) {
        const std::vector<std::string> parts = css::valueParts(valueOf(of(element), "border", "0"));
        out.width = Length();
        out.colour = units::Colour{0, 0, 0, 0};
        if (parts.size() < 3) return;
        if (const auto width = Length::parse(parts[0])) out.width = width;
        if (const auto colour = units::Colour::parse(parts[2])) out.colour = colour;
    }
    template <class E>
    static E word(const std::string& text, E usual) {
        for (const auto& [known, value] : project::Words<E>::table)
            if (known == text) return value;
        return usual;
    }

    void readRow() {
        const Values& row = of("");
        project::RowSettings& out = out_.row;
        const bool centred = valueOf(row, "display", "grid") == "flex";
        out.lastLine = centred ? project::LastLine::Center : project::LastLine::Start;
        out.columns = centred ? columnsOfShare(valueOf(of("card"), "width", "100%"))
                              : columnsOfTracks(valueOf(row, "grid-template-columns", "none"));
        out.columnGap = length("", "column-gap", "0");
        out.rowGap = length("", "row-gap", "0");
        out.width = length("", "width", "100%");
        out.maxWidth = length("", "max-width", "none");
        sides("", "padding", out.padding);
        out.background = colour(row, "background");
        const bool levelled = valueOf(of("card"), "grid-template-rows", "none") == "subgrid";
        out.level = levelled ? project::Level::Subgrid : project::Level::None;
    }
    /// `repeat(3, minmax(0, 1fr))`: 3; a single track: 1.
    static int columnsOfTracks(const std::string& tracks) {
        if (!tracks.starts_with("repeat(")) return 1;
        return static_cast<int>(numberIn(tracks.substr(7, tracks.find(',') - 7)).value_or(1));
    }
    /// `calc((100% - 4rem) / 3 - 0.02px)`: 3.
    static int columnsOfShare(const std::string& width) {
        const std::size_t slash = width.find('/');
        if (slash == std::string::npos) return 1;
        const std::vector<std::string> parts = css::valueParts(width.substr(slash + 1));
        return parts.empty() ? 1 : static_cast<int>(numberIn(parts[0]).value_or(1));
    }

    void readCard() {
        const Values& card = of("card");
        const OwnPictures pictures(values_);
        project::CardSettings& out = out_.card;
        out.direction = pictures.areBeside() ? project::Direction::Beside : project::Direction::Stacked;
        std::array<std::string, 4> padding = sidesIn(valueOf(card, "padding", "0"));
        if (out_.row.lastLine == project::LastLine::Center)
            for (std::string& side : padding)
                side = ofColumn(side);
        std::string& start = padding[context_.rightToLeft ? 1 : 3];
        if (!pictures.areBeside()) readRoomOfPicture(start);
        if (pictures.areBeside()) out.pictureShare = Length::percent(pictures.share());
        if (out.direction == project::Direction::Beside) {
            // The padding, the picture, and unless it is full-bleed the same padding again.
            if (auto sum = sumIn(start)) {
                (*sum)[static_cast<std::size_t>(Unit::Percent)] -= out.pictureShare->value();
                if (!pictures.touchEdgesBeside())
                    for (double& term : *sum)
                        term /= 2;
                if (const auto one = single(*sum)) start = one->css();
            }
        }
        std::optional<Length>* members[] = {&out.padding.top, &out.padding.right, &out.padding.bottom,
                                            &out.padding.left};
        for (std::size_t i = 0; i < 4; ++i) {
            *members[i] = Length::parse(padding[i]);
            if (!*members[i]) note("card", "padding", padding[i]);
        }
        out.background = colour(card, "background");
        border("card", out.border);
        out.radius = length("card", "border-radius", "0");
        shadow(valueOf(card, "box-shadow", "none"), out.shadow);
        out.linked = valueOf(of("button::after"), "content", "none") != "none";
        out.bleed = pictures.areBled(out);
        out_.picture = pictures.settings(out, contentInRow());
    }
    /// How many cqi of the row the content of a card is wide, as emit::contentInRow has it; 0 outside
    /// a subgrid, where no margin needs it.
    [[nodiscard]] double contentInRow() const {
        const auto percentOf = [](const std::optional<Length>& length) {
            return length && length->unit() == Unit::Percent ? length->value() : 0;
        };
        if (out_.row.level != project::Level::Subgrid) return 0;
        const project::CardSettings& card = out_.card;
        const double count = out_.row.columns.value_or(1);
        double share = percentOf(card.padding.left) + percentOf(card.padding.right);
        if (card.direction == project::Direction::Beside) {
            const double start = percentOf(context_.rightToLeft ? card.padding.right : card.padding.left);
            share += percentOf(card.pictureShare) + (card.bleed.value_or(false) ? 0 : start);
        }
        return (100 - (count - 1) * percentOf(out_.row.columnGap)) / count * (1 - share / 100);
    }
    /// Cards without a picture at their start have the room for one beside their text, too, but no rule for
    /// it.
    void readRoomOfPicture(const std::string& start) {
        const auto sum = sumIn(start);
        if (!sum || single(*sum) || (*sum)[static_cast<std::size_t>(Unit::Percent)] <= 0) return;
        out_.card.direction = project::Direction::Beside;
        out_.card.pictureShare = Length::percent((*sum)[static_cast<std::size_t>(Unit::Percent)]);
    }
    /// A padding of a card in a row with a centred last line, whose percentages refer to the row, as one
    /// whose percentages refer to the column. Other values stay.
    [[nodiscard]] std::string ofColumn(const std::string& side) const {
        constexpr auto percent = static_cast<std::size_t>(Unit::Percent);
        auto sum = sumIn(side);
        if (!sum || (*sum)[percent] == 0) return side;
        const double count = out_.row.columns.value_or(1);
        const Length gap = out_.row.columnGap.value_or(Length());
        // The column is (100 % − (N − 1) gaps) / N.
        double share = (*sum)[percent] * count;
        if (gap.unit() == Unit::Percent)
            share = (*sum)[percent] / (1 - (count - 1) * gap.value() / 100) * count;
        (*sum)[percent] = share;
        if (gap.unit() != Unit::Percent)
            (*sum)[static_cast<std::size_t>(gap.unit())] += share / 100 * (count - 1) / count * gap.value();
        return sumCss(*sum);
    }
    static void shadow(const std::string& text, project::Shadow& out) {
        out = {Length(), Length(), Length(), Length(), units::Colour{0, 0, 0, 0}, {}};
        if (text == "none") return;
        std::vector<std::string> parts = css::valueParts(text);
        if (parts.size() < 4) return;
        if (const auto colour = units::Colour::parse(parts.back())) out.colour = colour;
        parts.pop_back();
        std::optional<Length>* members[] = {&out.x, &out.y, &out.blur, &out.spread};
        for (std::size_t i = 0; i < std::min<std::size_t>(parts.size(), 4); ++i)
            if (const auto length = Length::parse(parts[i])) *members[i] = length;
    }

    /// Family names without quotation marks. CSS Fonts 4 § 2.1.
    static std::vector<std::string> familiesIn(const std::string& value) {
        std::vector<std::string> out;
        std::string name;
        css::TokenCursor cursor(value);
        for (; !cursor.is(css::TokenKind::End); cursor.step()) {
            const css::Token& token = cursor.token();
            if (token.is(css::TokenKind::Comma)) {
                out.push_back(std::exchange(name, {}));
            } else if (token.is(css::TokenKind::String) || token.is(css::TokenKind::Ident)) {
                name += (name.empty() ? "" : " ") + token.text;
            }
        }
        if (!name.empty()) out.push_back(std::move(name));
        // Of the fonts with names of an exported page, only those of a named family are a setting.
        const std::vector<std::string> all = out;
        std::erase_if(out, [](const std::string& family) {
            return family.ends_with(" fallback") ||
                   (family.starts_with(pageName) && !family.starts_with(emit::namedFallback));
        });
        // Earlier pages name no other font if others draw all characters.
        if (out.empty()) out = all;
        for (std::string& family : out)
            for (const std::string_view prefix : {emit::namedFallback, emit::otherFallback, pageName})
                if (family.starts_with(prefix)) {
                    family.erase(0, prefix.size());
                    break;
                }
        return out;
    }
    /// What precedes a family in the names of fonts that only an exported page has.
    static constexpr std::string_view pageName = "Tenter ";

    void readText(const std::string& role, project::TextStyle& out) {
        const Values& text = of(role);
        out.family = familiesIn(valueOf(text, "font-family", "sans-serif"));
        out.weight = numberIn(valueOf(text, "font-weight", "400")).value_or(400);
        out.slant = valueOf(text, "font-style", "normal") == "italic" ? project::Slant::Italic
                                                                      : project::Slant::Normal;
        readSize(role, out);
        if (const auto height = units::LineHeight::parse(valueOf(text, "line-height", "1.4")))
            out.lineHeight = height;
        const auto spacing = [&](const char* property) {
            const std::string value = valueOf(text, property, "normal");
            return value == "normal" ? Length() : Length::parse(value).value_or(Length());
        };
        out.letterSpacing = spacing("letter-spacing");
        out.wordSpacing = spacing("word-spacing");
        out.letterCase = word(valueOf(text, "text-transform", "none"), project::LetterCase::None);
        out.align = word(valueOf(text, "text-align", "start"), project::Align::Start);
        out.colour = colour(text, "color");
        out.wrap = word(valueOf(text, "text-wrap", "wrap"), project::Wrap::Wrap);
        out.overflowWrap = word(valueOf(text, "overflow-wrap", "normal"), project::OverflowWrap::Normal);
        out.hyphens = word(valueOf(text, "hyphens", "manual"), project::Hyphens::Manual);
        out.keepLines = linesKept(valueOf(text, "min-height", "auto"), *out.lineHeight);
        sides(role, "margin", out.margin);
        sides(role, "padding", out.padding);
        out.place = placeOf(text);
        out.background = colour(text, "background");
        border(role, out.border);
        out.radius = length(role, "border-radius", "0");
        readStates(role, out);
    }

    void readSize(const std::string& role, project::TextStyle& out) {
        const std::string value = valueOf(of(role), "font-size", "16px");
        SizeContext context;
        context.least = 0;
        context.most = 10000;
        context.root = context_.rem;
        // As printed, not rounded.
        context.negligible = 1e-9;
        project::Problems problems;
        const std::optional<SizeReading> reading = intake::readSize(value, context, problems);
        if (!reading) return note(role, "font-size", value);
        if (!reading->exact) note(role, "font-size", value);
        const std::optional<units::Ramp> printed =
            rampPrintedAs(value, reading->ramp, context_.rem, reading->follow);
        out.size = printed.value_or(reading->ramp);
        out.follow = reading->follow;
    }

    static int linesKept(const std::string& height, const units::LineHeight& line) {
        const std::optional<Length> room = Length::parse(height);
        if (!room || room->isKeyword() || room->isZero()) return 0;
        const double one = line.isNumber() ? line.number() : line.length().value();
        return one > 0 ? static_cast<int>(std::lround(room->value() / one)) : 0;
    }

    [[nodiscard]] project::Place placeOf(const Values& text) const {
        const bool levelled = out_.row.level == project::Level::Subgrid;
        const std::string value = valueOf(text, levelled ? "justify-self" : "align-self", "auto");
        if (value == "flex-start") return project::Place::Start;
        if (value == "center") return project::Place::Center;
        return value == "flex-end" ? project::Place::End : project::Place::Stretch;
    }

    void readStates(const std::string& role, project::TextStyle& out) {
        const std::string link = role == "button" ? role : role + " a";
        const Values& hover = of(link + ":hover");
        if (hover.contains("color")) out.hover.colour = colour(hover, "color");
        if (hover.contains("background")) out.hover.background = colour(hover, "background");
        if (hover.contains("border-color")) out.hover.borderColour = colour(hover, "border-color");
        const Values& focus = of(link + ":focus-visible");
        const std::vector<std::string> outline = css::valueParts(valueOf(focus, "outline", ""));
        if (outline.size() < 3) return;
        out.focus.width = Length::parse(outline[0]);
        out.focus.colour = units::Colour::parse(outline[2]);
        out.focus.offset = Length::parse(valueOf(focus, "outline-offset", "0"));
    }

    const RowValues& values_;
    const OwnContext& context_;
    std::vector<std::string>& unread_;
    project::Settings out_;
};

}  // namespace

project::Settings settingsOf(const RowValues& values, const OwnContext& context,
                             std::vector<std::string>& unread) {
    return Reader(values, context, unread).read();
}

}  // namespace tenter::intake
