// The document: the content of a project file. Plain values, so that undo can keep copies.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "project/checking.h"
#include "project/page.h"
#include "project/settings.h"
#include "project/shared_text.h"
#include "project/wishes.h"

namespace tenter::project {

/// A run of text of one kind, or a forced line break with an empty `text`. UTF-8.
struct Run {
    enum class Kind { Plain, Strong, Emphasis, Link, Break };
    Kind kind = Kind::Plain;
    SharedText text;
    std::string to;  ///< the address of a link
    friend bool operator==(const Run&, const Run&) = default;
};
/// The text of a part.
using Copy = std::vector<Run>;

/// A part of text.
struct TextPart {
    std::string role;  ///< heading, body, button, or a role that the project adds
    Copy copy;
    std::string link;  ///< the address of a button or of a part that is a link
    std::string name;  ///< accessible name, if it differs from the text
    FileKeys fileKeys;
    friend bool operator==(const TextPart&, const TextPart&) = default;
};

/// A picture.
struct PicturePart {
    std::string file;  ///< relative to the project file
    double width = 0;  ///< size of the file in pixels; 0: not known
    double height = 0;
    std::optional<Ratio> ratio;  ///< replaces that of the settings
    double focusX = 0.5;         ///< focal point: share of the width from the left, 0 to 1
    double focusY = 0.5;         ///< share of the height from the top
    std::string alt;             ///< alternative text; empty: decorative
    FileKeys fileKeys;
    friend bool operator==(const PicturePart&, const PicturePart&) = default;
};

using Part = std::variant<PicturePart, TextPart>;

/// A card: its parts in document order.
struct Card {
    std::vector<Part> parts;
    FileKeys fileKeys;
    friend bool operator==(const Card&, const Card&) = default;
};

/// A part of a card, by indices into the project's cards and the card's parts.
struct PartRef {
    std::size_t card = 0;
    std::size_t part = 0;
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of a defaulted <=> for a pointer.
    friend auto operator<=>(const PartRef&, const PartRef&) = default;
};

/// A range of viewport widths between two breakpoints, up to and including `upTo` (CSS px). The last band of
/// a variant has no `upTo` and no upper end.
struct Band {
    std::optional<double> upTo;
    Settings set;
    FileKeys fileKeys;
    friend bool operator==(const Band&, const Band&) = default;
};

/// The cards with another column count, its own class and its own sizes.
struct Variant {
    std::string className;  ///< without a leading dot
    std::string name;       ///< the name that the window shows
    Settings set;
    std::vector<Band> bands;  ///< at least one, breakpoints rising
    FileKeys fileKeys;
    friend bool operator==(const Variant&, const Variant&) = default;
};

/// A font file that belongs to the project.
struct FontEntry {
    std::string family;
    std::string file;  ///< TTF, OTF, WOFF or WOFF2, relative to the project file
    double leastWeight = 400;
    double mostWeight = 400;  ///< equal to `leastWeight` unless the font has a weight axis
    Slant slant = Slant::Normal;
    FileKeys fileKeys;
    friend bool operator==(const FontEntry&, const FontEntry&) = default;
};

/// The row of an existing page: its markup, and a selector for the elements of each role.
struct Given {
    SharedText markup;  ///< HTML of the row inside its chain of ancestors, without scripts
    /// Pairs of role and CSS selector, in the order of the file. Roles: `row` (the grid; an empty selector
    /// means the element with the variant's class), `card`, `picture`, and roles of text. Matched inside the
    /// element with the variant's class.
    std::vector<std::pair<std::string, std::string>> selectors;
    SharedText theme;                ///< the rules of the page's stylesheets that affect the row
    std::optional<int> levelBefore;  ///< level of the last heading before the row on its page, 1 to 6
    FileKeys fileKeys, selectorsFileKeys;
    /// The selector of a role; null if there is none.
    [[nodiscard]] const std::string* find(const std::string& role) const;
    friend bool operator==(const Given&, const Given&) = default;
};

/// A project file.
struct Project {
    std::string name;
    std::string row = "cards";    ///< name of the row; the classes of its parts start with it
    std::string language = "en";  ///< BCP 47
    bool rightToLeft = false;
    int headingLevel = 3;
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px: the unit of font sizes in the stylesheet
    double leastWidth = 320;              ///< range of viewport widths, CSS px
    double mostWidth = 1920;
    Page page;
    std::vector<FontEntry> fonts;
    Settings style;
    std::vector<Card> cards;
    std::vector<Variant> variants;  ///< at least one
    std::optional<Wishes> wishes;   ///< unset: the default wishes
    Checking checking;
    std::optional<Given> given;  ///< set if the row was imported from a page
    FileKeys fileKeys, rangeFileKeys;
    friend bool operator==(const Project&, const Project&) = default;

    [[nodiscard]] Part& part(PartRef place) { return cards[place.card].parts[place.part]; }
    [[nodiscard]] const Part& part(PartRef place) const { return cards[place.card].parts[place.part]; }
    /// The index of the variant with that class; empty if there is none.
    [[nodiscard]] std::optional<std::size_t> findVariant(const std::string& className) const;
};

/// The index of the band that contains viewport width `w` (CSS px): the first whose `upTo` is at least `w`.
std::size_t bandAt(const Variant& variant, double w);

/// The indices of all variants.
std::vector<std::size_t> everyVariant(const Project& project);

/// The text of all runs; forced line breaks are line feeds.
std::string plainText(const Copy& copy);

/// All roles in settings and cards of the project; heading, body and button first.
std::vector<std::string> roles(const Project& project);

}  // namespace tenter::project
