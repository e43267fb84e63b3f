// The pieces of a pasted text before they are divided into cards.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "start/pasted_text.h"

namespace tenter::start {

/// One line, paragraph or heading.
struct Piece {
    project::TextPart part;  ///< its role is empty if it is not known
    std::string alt;         ///< for a picture: its alternative text; the part has no text
    bool isPicture = false;
    bool afterGap = false;    ///< an empty line, or a rule, is before it
    bool startsCard = false;  ///< a new card starts here
};

/// A piece of plain text, white space collapsed, with that role; empty: not known.
Piece pieceOf(std::string_view text, std::string role = {});

/// Divides `pieces` into cards and gives a role to those that have none. Adds the title and the notes.
void addCards(std::vector<Piece> pieces, PastedText& out);

/// The width of a text in letters: an ideograph counts as two.
std::size_t letterCount(std::string_view text);
/// True for a text as short as a heading or a label, which does not end like a sentence.
bool isShort(std::string_view text);
/// True for a text that can be the label of a button.
bool isLabel(std::string_view text);

/// Removes an address at the end of `text` and returns it; empty if there is none, or if it is not safe.
std::string takeAddress(std::string& text);

/// The role that a label or the title of a column names, such as `heading` for `Title`; `link` and `picture`
/// for those. Empty if the word is not known.
std::string roleNamed(std::string_view word);

// One reader for each format. `text` is UTF-8 without control characters.
void readPlain(std::string_view text, PastedText& out);
void readMarkdown(std::string_view text, PastedText& out);
void readHtml(std::string_view text, PastedText& out);
void readTable(std::string_view text, PastedText& out);

/// The rows of a table in `text`; empty if it is not one. At least two cells in each row.
using TableRows = std::vector<std::vector<std::string>>;
TableRows tableIn(std::string_view text);
/// The same for a text that is known to be a table: rows may differ in length, or have one cell.
TableRows tableRows(std::string_view text);
void addTable(const TableRows& rows, PastedText& out);

}  // namespace tenter::start
