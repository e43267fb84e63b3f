// Pasted text as the cards of a row: plain lines, Markdown, HTML, or the rows of a table.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/project.h"

namespace tenter::start {

/// The size in bytes of the longest text that is read; what follows is left out.
inline constexpr std::size_t longestPaste = 1U << 20U;
/// The largest number of cards that are made from a text.
inline constexpr std::size_t mostPastedCards = 100;

enum class TextFormat { Plain, Markdown, Html, Table };

/// The formats in the order of the enumeration: `plain`, `markdown`, `html`, `table`.
const std::vector<std::string>& textFormatNames();
/// The format with that name; empty if there is none.
std::optional<TextFormat> textFormatOf(std::string_view name);

/// The text of one card.
struct PastedCard {
    std::vector<project::TextPart> parts;  ///< with text, in reading order
    std::string alt;                       ///< alternative text of the card's picture; empty: none was given
    friend bool operator==(const PastedCard&, const PastedCard&) = default;
};

/// A text as it was understood.
struct PastedText {
    TextFormat format = TextFormat::Plain;
    std::string title;     ///< a heading above all cards; empty if there is none
    std::string language;  ///< BCP 47, if the HTML states one
    std::vector<PastedCard> cards;
    std::vector<std::string> notes;  ///< what the person should check, one or two sentences each
    friend bool operator==(const PastedText&, const PastedText&) = default;
};

/// The format of a text: a table if each line has the same number of cells, HTML if it has elements, Markdown
/// if it has headings, links or strong text in its notation; else plain lines.
TextFormat guessedFormat(std::string_view text);

/// The cards in `text`, which can be any bytes: what is not UTF-8 becomes U+FFFD. Never fails; a text of
/// white space only gives no cards. `format`: instead of the guessed one.
///
/// - Plain lines: an empty line, or the next short line after a card's text, starts a card. Its first line is
///   the heading. A short last line is the button. `Heading:`, `Text:` and `Button:` at the start of a line
///   state its role. An address at the end of a line becomes the link of the button.
/// - Markdown (CommonMark) and HTML: each heading of the most frequent level starts a card. Without headings,
///   each list item or each part between rules does. A paragraph that is one link is a button.
/// - Table: a row for each card. Cells are heading, text, button and address of the button, unless the first
///   row names the columns. Cells are separated by tabs, commas, semicolons or bars; RFC 4180.
PastedText readPasted(std::string_view text, std::optional<TextFormat> format = {});

/// The cards as Markdown that `readPasted` understands as the same cards, so that rich text can be edited.
std::string markdownOf(const PastedText& text);

}  // namespace tenter::start
