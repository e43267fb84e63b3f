// The document: what a project file holds. Plain values; copying one is how undo keeps it.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "project/checking.h"
#include "project/settings.h"
#include "project/shared_text.h"
#include "project/wishes.h"

namespace tenter::project {

/// A stretch of copy in one manner, or a forced line break (then `text` is empty). UTF-8.
struct Run {
    enum class Kind { Plain, Strong, Emphasis, Link, Break };
    Kind kind = Kind::Plain;
    SharedText text;
    std::string to;  ///< a link's address
    friend bool operator==(const Run&, const Run&) = default;
};
using Copy = std::vector<Run>;

struct TextPart {
    std::string role;  ///< heading, body, button, or one the project adds
    Copy copy;
    std::string link;  ///< where a button leads
    std::string name;  ///< accessible name, if it is to differ from the copy
    FileKeys fileKeys;
    friend bool operator==(const TextPart&, const TextPart&) = default;
};

struct PicturePart {
    std::string file;  ///< relative to the project file
    double width = 0;  ///< the file's own size in pixels
    double height = 0;
    std::optional<Ratio> ratio;  ///< instead of the settings'
    double focusX = 0.5;         ///< focal point, 0 to 1 from the left
    double focusY = 0.5;         ///< and from the top
    std::string alt;             ///< empty: decorative
    FileKeys fileKeys;
    friend bool operator==(const PicturePart&, const PicturePart&) = default;
};

using Part = std::variant<PicturePart, TextPart>;

struct Card {
    std::vector<Part> parts;
    FileKeys fileKeys;
    friend bool operator==(const Card&, const Card&) = default;
};

/// Widths up to and including `upTo` (CSS px); the last band of a variant has none and is open above.
struct Band {
    std::optional<double> upTo;
    Settings set;
    FileKeys fileKeys;
    friend bool operator==(const Band&, const Band&) = default;
};

struct Variant {
    std::string className;  ///< without a leading dot
    std::string name;       ///< as the window shows it
    Settings set;
    std::vector<Band> bands;  ///< at least one, breakpoints rising
    FileKeys fileKeys;
    friend bool operator==(const Variant&, const Variant&) = default;
};

struct Scrollbar {
    double width = 0;     ///< CSS px; 0: it lies over the page
    bool always = false;  ///< the root shows it whether or not the page is long
    FileKeys fileKeys;
    friend bool operator==(const Scrollbar&, const Scrollbar&) = default;
};

/// What the row sits in; the whole page unless said otherwise.
struct Container {
    Length width = Length::percent(100);
    Length maxWidth = Length::ofNone();
    Sides padding;  ///< unset: 0
    Colour background{255, 255, 255, 255};
    FileKeys fileKeys;
    friend bool operator==(const Container&, const Container&) = default;
};

struct Page {
    Scrollbar scrollbar;
    double rootSize = 16;    ///< the theme's `html { font-size }` at the usual preference, CSS px
    double readerSize = 16;  ///< the reader's preference to preview, CSS px
    Container container;
    FileKeys fileKeys;
    /// The root font size in force, CSS px: the theme's, scaled by the reader's preference.
    [[nodiscard]] double rem() const { return rootSize * readerSize / 16; }
    friend bool operator==(const Page&, const Page&) = default;
};

/// A font file that comes with the project.
struct FontEntry {
    std::string family;
    std::string file;  ///< TTF, OTF, WOFF or WOFF2, relative to the project file
    double leastWeight = 400;
    double mostWeight = 400;  ///< equal to least unless the font has a weight axis
    Slant slant = Slant::Normal;
    FileKeys fileKeys;
    friend bool operator==(const FontEntry&, const FontEntry&) = default;
};

/// The row as a page prints it already: its markup, and which elements are what.
struct Given {
    SharedText markup;  ///< HTML of the row within its chain of ancestors, nothing in it that runs
    /// A CSS selector by role: `row` (the grid; empty for the element with the variant's class itself),
    /// `card`, `picture`, and roles of text; in the file's order. Matched within the element with the
    /// variant's class.
    std::vector<std::pair<std::string, std::string>> selectors;
    SharedText theme;                ///< CSS of the page's theme that concerns the row
    std::optional<int> levelBefore;  ///< of the last heading before the row on its page, 1 to 6
    FileKeys fileKeys, selectorsFileKeys;
    /// The selector of a role; null without one.
    [[nodiscard]] const std::string* find(const std::string& role) const;
    friend bool operator==(const Given&, const Given&) = default;
};

struct Project {
    std::string name;
    std::string row = "cards";    ///< the row's name, from which part classes are made
    std::string language = "en";  ///< BCP 47
    bool rightToLeft = false;
    int headingLevel = 3;
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px: how font sizes are emitted
    double leastWidth = 320;              ///< range of viewport widths, CSS px
    double mostWidth = 1920;
    Page page;
    std::vector<FontEntry> fonts;
    Settings style;
    std::vector<Card> cards;
    std::vector<Variant> variants;  ///< at least one
    std::optional<Wishes> wishes;   ///< unset: the usual ones
    Checking checking;
    std::optional<Given> given;  ///< if the row's markup is a page's own
    FileKeys fileKeys, rangeFileKeys;
    friend bool operator==(const Project&, const Project&) = default;

    /// The variant of that class, by index; empty if there is none.
    [[nodiscard]] std::optional<std::size_t> findVariant(const std::string& className) const;
};

/// The band that holds viewport width `w`: the first whose `upTo` is not below it.
std::size_t bandAt(const Variant& variant, double w);

/// Every variant, by index.
std::vector<std::size_t> everyVariant(const Project& project);

/// A run list as plain text; forced breaks are line feeds.
std::string plainText(const Copy& copy);

/// Every role the settings or the cards of the project use, heading, body and button first.
std::vector<std::string> roles(const Project& project);

}  // namespace tenter::project
