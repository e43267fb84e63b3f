// What a page gives its row in one interval of viewport widths, in which every length is linear.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "css/cascade.h"
#include "markup/given.h"
#include "markup/page_boxes.h"
#include "project/settings.h"
#include "text/fonts.h"

namespace tenter::start {

/// The place of a rule, its selector and the declaration in it.
struct WrittenAt {
    std::string property;
    std::string value;
    std::string selector;
    std::string place;  ///< as FoundDeclaration has it
};

/// What a project cannot hold, and where that is written.
struct PageNote {
    std::string says;  ///< `Warning: …`
    std::optional<WrittenAt> at;
};

/// Sentences about what a project cannot hold, each once, in the order of their first addition.
class PageNotes {
public:
    explicit PageNotes(std::string theme) : theme_(std::move(theme)) {}
    /// Of the sentences with the same `key` the first stays.
    void add(const std::string& key, const std::string& sentence);
    /// `padding-left: calc(1rem + 1vw) (look.css:12)`, with the rule that sets it.
    /// The same after the name of a role: `body: font-weight: 500 (look.css:12)`.
    [[nodiscard]] std::string writtenOf(const std::string& role, css::Styles& styles, markup::NodeId node,
                                        const std::string& property) const;
    [[nodiscard]] std::string written(css::Styles& styles, markup::NodeId node,
                                      const std::string& property) const;
    /// The name as the page spells it. Values are in lower case, in which CSS compares families.
    [[nodiscard]] std::string spelled(const std::string& family) const;
    [[nodiscard]] const std::vector<PageNote>& notes() const { return notes_; }

private:
    std::string theme_;
    std::vector<std::string> keys_;
    std::vector<PageNote> notes_;
    /// The texts that `written` has made, and where each is from.
    mutable std::map<std::string, WrittenAt> texts_;
};

/// The row of a page in an interval of viewport widths.
struct PieceContext {
    const markup::GivenRow& row;
    css::Styles& styles;   ///< at rest
    css::Styles& hovered;  ///< with the pointer over every element
    double from = 0;
    double upTo = 0;
    css::Line root{16, 0};
    markup::PageBox container;  ///< the content box of the row's container
    PageNotes& notes;
    text::Fonts& fonts;

    [[nodiscard]] double middle() const { return (from + upTo) / 2; }
    /// The value in the middle of the interval.
    [[nodiscard]] double at(const css::Line& line) const { return line.atZero + line.perPx * middle(); }
    /// True if two lines differ by at most 0.02 px in the interval.
    [[nodiscard]] bool isSame(const css::Line& one, const css::Line& other) const;
};

/// The settings of the row and the font sizes of its roles in an interval.
struct PieceReading {
    double from = 0;
    double upTo = 0;
    project::Settings settings;              ///< without font sizes
    std::map<std::string, css::Line> sizes;  ///< font size by role, CSS px
};

/// Lengths of a project that are as long as lines.
class LengthFinder {
public:
    /// `em`: the font size of the element; `percentage`: what percentages refer to.
    LengthFinder(const PieceContext& context, const css::Line& em, const css::Line& percentage)
        : context_(context), em_(em), percentage_(percentage) {}

    /// How long a length is.
    [[nodiscard]] css::Line lineOf(const units::Length& length) const;
    /// The length that is as long as `line` in the whole interval: one of `written` if possible, else in px,
    /// rem, vw or percent. Empty if none is.
    [[nodiscard]] std::optional<units::Length> find(const css::Line& line,
                                                    const std::vector<std::string>& written,
                                                    bool percent = true) const;
    /// The same, or the nearest length that is as long in the middle of the interval, in px, vw or percent,
    /// with a sentence about `property` of `node`.
    [[nodiscard]] units::Length nearest(const css::Line& line, const std::vector<std::string>& written,
                                        markup::NodeId node, const std::string& property, bool percent = true,
                                        bool negative = false) const;

private:
    [[nodiscard]] units::Length nearestAtMiddle(const css::Line& line, bool percent, bool negative) const;

    const PieceContext& context_;
    css::Line em_;
    css::Line percentage_;
};

/// Line arithmetic.
inline css::Line sum(const css::Line& one, const css::Line& other) {
    return {one.atZero + other.atZero, one.perPx + other.perPx};
}
inline css::Line less(const css::Line& one, const css::Line& other) {
    return {one.atZero - other.atZero, one.perPx - other.perPx};
}

/// A length of an element in px by width; 0 for keywords and what is not read.
css::Line lengthAt(const PieceContext& context, markup::NodeId node, const std::string& property,
                   const css::Line& percentage);
/// The width of a border; 0 where its style is none. Whole px, as browsers draw it. CSS Values 4 § 5.4.
css::Line borderAt(const PieceContext& context, markup::NodeId node, const std::string& side);
/// True if the borders of all sides of an element have one width.
bool hasEvenBorder(const PieceContext& context, markup::NodeId node);
/// The radius of the corners of an element.
units::Length radiusAt(const PieceContext& context, markup::NodeId node, const LengthFinder& lengths);
/// Reads the row into `reading`: columns, gaps, width and padding. Returns the border box of the first card.
markup::PageBox readRow(const PieceContext& context, PieceReading& reading);
/// Reads cards, pictures and texts. `card`: the border box of the first card.
void readCards(const PieceContext& context, const markup::PageBox& card, PieceReading& reading);
/// Adds a sentence for each element in the cards that is no part and takes room, such as a picture in the
/// background of an empty element.
void noteOthers(const PieceContext& context);
/// The style of the text of an element, without its size, margins and place.
project::TextStyle textStyleAt(const PieceContext& context, markup::NodeId node, const std::string& role,
                               const css::Line& width);

}  // namespace tenter::start
