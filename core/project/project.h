// The document: the content of a project file. Plain values, so that undo can keep copies.
#pragma once

#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <variant>
#include <vector>

#include "project/checking.h"
#include "project/page.h"
#include "project/settings.h"
#include "project/shared_text.h"
#include "project/wishes.h"
#include "wording/sentence.h"

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

/// A part of a card, by indices into the row's cards, the card's parts and the project's rows.
struct PartRef {
    std::size_t card = 0;
    std::size_t part = 0;
    std::size_t row = 0;
    friend bool operator==(const PartRef&, const PartRef&) = default;
    /// By row, then card, then part.
    friend auto operator<=>(const PartRef& a, const PartRef& b) {
        // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of <=> for a pointer.
        return std::tie(a.row, a.card, a.part) <=> std::tie(b.row, b.card, b.part);
    }
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

/// A variant, by indices into the row's variants and the project's rows. A number is a variant of the first
/// row.
struct VariantRef {
    std::size_t variant = 0;
    std::size_t row = 0;
    // NOLINTNEXTLINE(google-explicit-constructor): a number is a variant of the first row.
    VariantRef(std::size_t variantIndex, std::size_t rowIndex = 0) : variant(variantIndex), row(rowIndex) {}
    friend bool operator==(const VariantRef&, const VariantRef&) = default;
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
    /// What Tenter could not read of the page around the row, a sentence each: the row on its page can have
    /// another place and width than the project says.
    std::vector<wording::Sentence> unread;
    FileKeys fileKeys, selectorsFileKeys;
    /// The selector of a role; null if there is none.
    [[nodiscard]] const std::string* find(const std::string& role) const;
    friend bool operator==(const Given&, const Given&) = default;
};

/// A row of cards with its variants.
struct Row {
    std::string name = "cards";  ///< the classes of its parts start with it
    int headingLevel = 3;
    Settings style;
    std::vector<Card> cards;
    std::vector<Variant> variants;  ///< at least one
    std::optional<Wishes> wishes;   ///< unset: the default wishes
    std::optional<Given> given;     ///< set if the row was imported from a page
    friend bool operator==(const Row&, const Row&) = default;
    /// The index of the variant with that class; empty if there is none.
    [[nodiscard]] std::optional<std::size_t> findVariant(const std::string& className) const;
};

/// A project file: a page and the rows on it.
struct Project {
    std::string name;
    std::string language = "en";  ///< BCP 47
    bool rightToLeft = false;
    units::Unit unit = units::Unit::Rem;  ///< Rem or Px: the unit of font sizes in the stylesheet
    double leastWidth = 320;              ///< range of viewport widths, CSS px
    double mostWidth = 1920;
    Page page;
    std::vector<FontEntry> fonts;
    std::vector<Row> rows = std::vector<Row>(1);  ///< one; files have its members at their top level
    Checking checking;
    FileKeys fileKeys, rangeFileKeys;
    friend bool operator==(const Project&, const Project&) = default;

    /// The row at `index`; a copy if the project is a temporary.
    [[nodiscard]] Row& row(std::size_t index = 0) & { return rows[index]; }
    [[nodiscard]] const Row& row(std::size_t index = 0) const& { return rows[index]; }
    [[nodiscard]] Row row(std::size_t index = 0) && { return std::move(rows[index]); }
    [[nodiscard]] Variant& variant(VariantRef at) { return row(at.row).variants[at.variant]; }
    [[nodiscard]] const Variant& variant(VariantRef at) const { return row(at.row).variants[at.variant]; }
    [[nodiscard]] Part& part(PartRef at) { return row(at.row).cards[at.card].parts[at.part]; }
    [[nodiscard]] const Part& part(PartRef at) const { return row(at.row).cards[at.card].parts[at.part]; }
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
