// The settings of a row. Style, variant and band each have one set of them, in which every member is
// optional. `resolve` (cascade.h) makes settings in which every member is set.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "project/members.h"
#include "units/colour.h"
#include "units/length.h"
#include "units/ramp.h"

namespace tenter::project {

using units::Colour;
using units::Length;
using units::LineHeight;
using units::Ramp;

enum class Slant { Normal, Italic };
enum class Follow { Viewport, Card };                     ///< the width that a ramp follows: vw or cqi
enum class LetterCase { None, Uppercase, Capitalize };    // CSS Text 3 § 2.1
enum class Align { Start, Center, End };                  // CSS Text 3 § 6.1
enum class Wrap { Wrap, Balance };                        // CSS Text 4 § 5
enum class OverflowWrap { Normal, BreakWord, Anywhere };  // CSS Text 3 § 5.5
enum class Hyphens { None, Manual };                      // CSS Text 3 § 5.4
enum class Place { Stretch, Start, Center, End };         // alignment of a part's box across the card
enum class LastLine { Start, Center };             // alignment of the last line of cards if it is not full
enum class ContainerPlace { Start, Center, End };  // where the container is in the page
enum class Level { None, Subgrid };                // whether parts of neighbouring cards are aligned
enum class Direction { Stacked, Beside };          // the picture above the other parts, or beside them

/// The four sides of a margin or a padding. Percentages refer to a width, for top and bottom too. CSS Box 4
/// § 4.
struct Sides {
    std::optional<Length> top, right, bottom, left;
    FileKeys fileKeys = {};
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
    FileKeys fileKeys = {};
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
    FileKeys fileKeys = {};
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

/// The colours of a part under the pointer.
struct Hover {
    std::optional<Colour> colour, background, borderColour;
    FileKeys fileKeys = {};
    template <class V>
    static void members(V&& v) {
        v("colour", &Hover::colour);
        v("background", &Hover::background);
        v("borderColour", &Hover::borderColour);
    }
    friend bool operator==(const Hover&, const Hover&) = default;
};

/// The outline of a part that has the keyboard focus.
struct FocusRing {
    std::optional<Colour> colour;
    std::optional<Length> width, offset;  ///< px, rem or em
    FileKeys fileKeys = {};
    template <class V>
    static void members(V&& v) {
        v("colour", &FocusRing::colour);
        v("width", &FocusRing::width);
        v("offset", &FocusRing::offset);
    }
    friend bool operator==(const FocusRing&, const FocusRing&) = default;
};

/// The style of a role's text. Any role can have the members that make a button: `background`, `border`,
/// `radius`, `place`, `hover` and `focus`.
struct TextStyle {
    std::optional<std::vector<std::string>> family;  ///< the first that exists is used
    std::optional<double> weight;                    ///< 1 to 1000
    std::optional<Slant> slant;
    std::optional<Ramp> size;  ///< CSS px at the root size of the project
    std::optional<Follow> follow;
    std::optional<LineHeight> lineHeight;
    std::optional<Length> letterSpacing, wordSpacing;
    std::optional<LetterCase> letterCase;
    std::optional<Align> align;
    std::optional<Colour> colour;
    std::optional<Wrap> wrap;
    std::optional<OverflowWrap> overflowWrap;
    std::optional<Hyphens> hyphens;
    std::optional<int> keepLines;  ///< smallest line count that the box has room for; 0: that of the text
    Sides margin;                  ///< `top` can be auto: the part moves to the end of the card
    Sides padding;
    std::optional<Place> place;
    std::optional<Colour> background;
    Border border;
    std::optional<Length> radius;
    Hover hover;
    FocusRing focus;
    FileKeys fileKeys;
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

/// Text styles by role, in the order of the file.
struct RoleStyles {
    std::vector<std::pair<std::string, TextStyle>> roles;
    FileKeys fileKeys = {};
    [[nodiscard]] const TextStyle* find(const std::string& role) const;
    /// The style of the role; it is added if there is none.
    TextStyle& of(const std::string& role);
    friend bool operator==(const RoleStyles&, const RoleStyles&) = default;
};

struct RowSettings {
    std::optional<int> columns;       ///< 1 to 12
    std::optional<Length> width;      ///< a percentage refers to the content width of the container
    std::optional<Length> maxWidth;   ///< or none
    std::optional<Length> columnGap;  ///< a percentage refers to the content width of the row
    std::optional<Length> rowGap;     ///< no percentage
    Sides padding;
    std::optional<Colour> background;
    std::optional<LastLine> lastLine;
    std::optional<Level> level;
    FileKeys fileKeys;
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
        pictureShare;           ///< percent of the card's content width, where the picture is beside the text
    std::optional<bool> bleed;  ///< the picture extends over the padding to the edges of the card
    std::optional<bool> linked;  ///< the whole card is a link: that of its button
    FileKeys fileKeys;
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

/// The ratio of width to height of a picture. 0 to 0: that of its file.
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
    FileKeys fileKeys;
    template <class V>
    static void members(V&& v) {
        v("ratio", &PictureSettings::ratio);
        v("radius", &PictureSettings::radius);
        v("margin", &PictureSettings::margin);
    }
    friend bool operator==(const PictureSettings&, const PictureSettings&) = default;
};

/// One layer of the cascade; or, resolved, the settings that hold in a band.
struct Settings {
    RowSettings row;
    CardSettings card;
    PictureSettings picture;
    RoleStyles text;
    FileKeys fileKeys;
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
