// The settings of a row: everything that style, variant and band may say, each optional, so that one
// mechanism serves the cascade. `resolve` (cascade.h) gives settings in which every member is set.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "project/described.h"
#include "units/colour.h"
#include "units/length.h"
#include "units/ramp.h"

namespace tenter::project {

using units::Colour;
using units::Length;
using units::LineHeight;
using units::Ramp;

enum class Slant { Normal, Italic };
enum class Follow { Viewport, Card };                     ///< what a ramp's widths are: vw or cqi
enum class LetterCase { None, Uppercase, Capitalize };    // CSS Text 3 § 2.1
enum class Align { Start, Center, End };                  // CSS Text 3 § 6.1
enum class Wrap { Wrap, Balance };                        // CSS Text 4 § 5
enum class OverflowWrap { Normal, BreakWord, Anywhere };  // CSS Text 3 § 5.5
enum class Hyphens { None, Manual };                      // CSS Text 3 § 5.4
enum class Place { Stretch, Start, Center, End };         // a part's box across the card
enum class LastLine { Start, Center };                    // cards of a grid line that is not full
enum class Level { None, Subgrid };                       // do parts of neighbouring cards start in line
enum class Direction { Stacked, Beside };                 // picture above the rest, or beside it

/// Four sides; margins, paddings. Top and bottom percentages are of a width, as in CSS Box 4 § 4.
struct Sides {
    std::optional<Length> top, right, bottom, left;
    Remembered remembered = {};
    template <class V>
    static void members(V&& v) {
        v("top", &Sides::top);
        v("right", &Sides::right);
        v("bottom", &Sides::bottom);
        v("left", &Sides::left);
    }
    friend bool operator==(const Sides&, const Sides&) = default;
};

struct Border {
    std::optional<Length> width;  ///< px, rem or em
    std::optional<Colour> colour;
    Remembered remembered = {};
    template <class V>
    static void members(V&& v) {
        v("width", &Border::width);
        v("colour", &Border::colour);
    }
    friend bool operator==(const Border&, const Border&) = default;
};

/// An outer box shadow. CSS Backgrounds 3 § 6. Lengths in px.
struct Shadow {
    std::optional<Length> x, y, blur, spread;
    std::optional<Colour> colour;
    Remembered remembered = {};
    template <class V>
    static void members(V&& v) {
        v("x", &Shadow::x);
        v("y", &Shadow::y);
        v("blur", &Shadow::blur);
        v("spread", &Shadow::spread);
        v("colour", &Shadow::colour);
    }
    friend bool operator==(const Shadow&, const Shadow&) = default;
};

/// A button's colours under the pointer.
struct Hover {
    std::optional<Colour> colour, background, borderColour;
    Remembered remembered = {};
    template <class V>
    static void members(V&& v) {
        v("colour", &Hover::colour);
        v("background", &Hover::background);
        v("borderColour", &Hover::borderColour);
    }
    friend bool operator==(const Hover&, const Hover&) = default;
};

/// The ring around a button that has the keyboard.
struct FocusRing {
    std::optional<Colour> colour;
    std::optional<Length> width, offset;  ///< px, rem or em
    Remembered remembered = {};
    template <class V>
    static void members(V&& v) {
        v("colour", &FocusRing::colour);
        v("width", &FocusRing::width);
        v("offset", &FocusRing::offset);
    }
    friend bool operator==(const FocusRing&, const FocusRing&) = default;
};

/// How a role's text looks. `background`, `border`, `radius`, `place`, `hover` and `focus` make a button of
/// it and may be used by any role.
struct TextStyle {
    std::optional<std::vector<std::string>> family;  ///< first that exists wins
    std::optional<double> weight;                    ///< 1 to 1000
    std::optional<Slant> slant;
    std::optional<Ramp> size;  ///< CSS px at root size as the project says
    std::optional<Follow> follow;
    std::optional<LineHeight> lineHeight;
    std::optional<Length> letterSpacing, wordSpacing;
    std::optional<LetterCase> letterCase;
    std::optional<Align> align;
    std::optional<Colour> colour;
    std::optional<Wrap> wrap;
    std::optional<OverflowWrap> overflowWrap;
    std::optional<Hyphens> hyphens;
    std::optional<int> keepLines;  ///< room kept for at least this many lines; 0: as many as there are
    Sides margin;                  ///< `top` may be auto: the part stands at the card's end
    Sides padding;
    std::optional<Place> place;
    std::optional<Colour> background;
    Border border;
    std::optional<Length> radius;
    Hover hover;
    FocusRing focus;
    Remembered remembered;
    template <class V>
    static void members(V&& v) {
        v("family", &TextStyle::family);
        v("weight", &TextStyle::weight);
        v("slant", &TextStyle::slant);
        v("size", &TextStyle::size);
        v("follow", &TextStyle::follow);
        v("lineHeight", &TextStyle::lineHeight);
        v("letterSpacing", &TextStyle::letterSpacing);
        v("wordSpacing", &TextStyle::wordSpacing);
        v("case", &TextStyle::letterCase);
        v("align", &TextStyle::align);
        v("colour", &TextStyle::colour);
        v("wrap", &TextStyle::wrap);
        v("overflowWrap", &TextStyle::overflowWrap);
        v("hyphens", &TextStyle::hyphens);
        v("keepLines", &TextStyle::keepLines);
        v("margin", &TextStyle::margin);
        v("padding", &TextStyle::padding);
        v("place", &TextStyle::place);
        v("background", &TextStyle::background);
        v("border", &TextStyle::border);
        v("radius", &TextStyle::radius);
        v("hover", &TextStyle::hover);
        v("focus", &TextStyle::focus);
    }
    friend bool operator==(const TextStyle&, const TextStyle&) = default;
};

/// Text styles by role, in the file's order.
struct RoleStyles {
    std::vector<std::pair<std::string, TextStyle>> roles;
    Remembered remembered = {};
    [[nodiscard]] const TextStyle* find(const std::string& role) const;
    /// The role's style, added if it is not there.
    TextStyle& of(const std::string& role);
    friend bool operator==(const RoleStyles&, const RoleStyles&) = default;
};

struct RowSettings {
    std::optional<int> columns;       ///< 1 to 12
    std::optional<Length> width;      ///< of the container's content width if a percentage
    std::optional<Length> maxWidth;   ///< or none
    std::optional<Length> columnGap;  ///< a percentage is of the row's content width
    std::optional<Length> rowGap;     ///< no percentage
    Sides padding;
    std::optional<Colour> background;
    std::optional<LastLine> lastLine;
    std::optional<Level> level;
    Remembered remembered;
    template <class V>
    static void members(V&& v) {
        v("columns", &RowSettings::columns);
        v("width", &RowSettings::width);
        v("maxWidth", &RowSettings::maxWidth);
        v("columnGap", &RowSettings::columnGap);
        v("rowGap", &RowSettings::rowGap);
        v("padding", &RowSettings::padding);
        v("background", &RowSettings::background);
        v("lastLine", &RowSettings::lastLine);
        v("level", &RowSettings::level);
    }
    friend bool operator==(const RowSettings&, const RowSettings&) = default;
};

struct CardSettings {
    Sides padding;
    std::optional<Colour> background;
    Border border;
    std::optional<Length> radius;
    Shadow shadow;
    std::optional<Direction> direction;
    std::optional<Length>
        pictureShare;            ///< percent of the card's content width, where the picture stands beside
    std::optional<bool> bleed;   ///< the picture runs to the card's edges, over its padding
    std::optional<bool> linked;  ///< the whole card is its button's link
    Remembered remembered;
    template <class V>
    static void members(V&& v) {
        v("padding", &CardSettings::padding);
        v("background", &CardSettings::background);
        v("border", &CardSettings::border);
        v("radius", &CardSettings::radius);
        v("shadow", &CardSettings::shadow);
        v("direction", &CardSettings::direction);
        v("pictureShare", &CardSettings::pictureShare);
        v("bleed", &CardSettings::bleed);
        v("linked", &CardSettings::linked);
    }
    friend bool operator==(const CardSettings&, const CardSettings&) = default;
};

/// A picture's width to height, or its file's own.
struct Ratio {
    double width = 0;
    double height = 0;
    [[nodiscard]] bool isOwn() const { return width == 0; }
    friend bool operator==(const Ratio&, const Ratio&) = default;
};

struct PictureSettings {
    std::optional<Ratio> ratio;  ///< "3/2", or "own"
    std::optional<Length> radius;
    Sides margin;
    Remembered remembered;
    template <class V>
    static void members(V&& v) {
        v("ratio", &PictureSettings::ratio);
        v("radius", &PictureSettings::radius);
        v("margin", &PictureSettings::margin);
    }
    friend bool operator==(const PictureSettings&, const PictureSettings&) = default;
};

/// One layer of the cascade, or, resolved, what holds in a band.
struct Settings {
    RowSettings row;
    CardSettings card;
    PictureSettings picture;
    RoleStyles text;
    Remembered remembered;
    template <class V>
    static void members(V&& v) {
        v("row", &Settings::row);
        v("card", &Settings::card);
        v("picture", &Settings::picture);
        v("text", &Settings::text);
    }
    friend bool operator==(const Settings&, const Settings&) = default;
};

}  // namespace tenter::project
