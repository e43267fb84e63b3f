// The rows of a table as cards: tab separated, CSV (RFC 4180), or with bars.
#include <algorithm>
#include <optional>

#include "project/address.h"
#include "project/rules.h"
#include "start/pieces.h"
#include "units/ascii.h"

namespace tenter::start {

namespace {

constexpr std::size_t mostCells = 24;  // of a row

bool isBlankRow(const std::vector<std::string>& row) {
    return std::ranges::all_of(
        row, [](const std::string& cell) { return cell.find_first_not_of(" \t\n") == std::string::npos; });
}

/// `|---|:--:|`: the line below the head of a table in Markdown.
bool isHeadRule(const std::vector<std::string>& row) {
    return std::ranges::all_of(row, [](const std::string& cell) {
        return cell.find_first_not_of(" :-") == std::string::npos && cell.find('-') != std::string::npos;
    });
}

/// The rows of `text` with cells between `separator`. A cell in quotes may hold separators and line ends.
TableRows split(std::string_view text, char separator) {
    TableRows rows;
    std::vector<std::string> row;
    std::string cell;
    bool isQuoted = false;
    const auto endCell = [&] {
        const std::size_t from = std::min(cell.find_first_not_of(" \t"), cell.size());
        const std::size_t last = cell.find_last_not_of(" \t");
        if (row.size() < mostCells)
            row.push_back(last == std::string::npos ? std::string() : cell.substr(from, last + 1 - from));
        cell.clear();
    };
    const auto endRow = [&] {
        endCell();
        // Bars around a row make an empty cell at both ends.
        if (separator == '|' && row.size() > 2 && row.front().empty()) row.erase(row.begin());
        if (separator == '|' && row.size() > 1 && row.back().empty()) row.pop_back();
        if (!isBlankRow(row) && !(separator == '|' && isHeadRule(row))) rows.push_back(row);
        row.clear();
    };
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        if (isQuoted) {
            if (c != '"')
                cell += c;
            else if (at + 1 < text.size() && text[at + 1] == '"')
                cell += text[++at];
            else
                isQuoted = false;
        } else if (c == '"' && cell.empty()) {
            isQuoted = true;
        } else if (c == separator) {
            endCell();
        } else if (c == '\n') {
            endRow();
        } else {
            cell += c;
        }
    }
    if (!cell.empty() || !row.empty()) endRow();
    return rows;
}

bool isEven(const TableRows& rows) {
    return !rows.empty() && rows[0].size() > 1 &&
           std::ranges::all_of(rows, [&](const auto& row) { return row.size() == rows[0].size(); });
}

/// True if a separator has a space after it outside of quotes, as in prose.
bool readsLikeProse(std::string_view text, char separator) {
    bool isQuoted = false;
    for (std::size_t at = 0; at + 1 < text.size(); ++at) {
        if (text[at] == '"') isQuoted = !isQuoted;
        if (!isQuoted && text[at] == separator && text[at + 1] == ' ') return true;
    }
    return false;
}

/// The role of each column. Empty if the first row does not name the columns.
std::vector<std::string> namedColumns(const TableRows& rows) {
    std::vector<std::string> roles;
    bool isKnown = false;
    for (const std::string& cell : rows.front()) {
        std::string role = roleNamed(cell);
        isKnown = isKnown || !role.empty();
        if (role.empty()) {
            // A role that the project adds, such as `opening-hours`.
            for (const char c : cell)
                role += units::isUpperLetter(c)                        ? static_cast<char>(c - 'A' + 'a')
                        : units::isLowerLetter(c) || units::isDigit(c) ? c
                                                                       : '-';
            if (!project::isRoleName(role) || role.size() > 24) role = "body";
        }
        roles.push_back(std::move(role));
    }
    const auto isTitle = [](const std::string& cell) { return letterCount(cell) <= 24; };
    return isKnown && rows.size() > 1 && std::ranges::all_of(rows.front(), isTitle)
               ? roles
               : std::vector<std::string>();
}

/// The usual roles: heading, text, button, address, then more text.
std::vector<std::string> usualColumns(const TableRows& rows) {
    std::size_t most = 0;
    for (const auto& row : rows)
        most = std::max(most, row.size());
    std::vector<std::string> roles{"heading", "body", "button", "link"};
    roles.resize(std::max<std::size_t>(most, 4), "body");
    return roles;
}

Piece cellPiece(const std::string& cell, const std::string& role) {
    Piece piece;
    piece.part.role = role;
    for (std::size_t at = 0; at <= cell.size();) {
        const std::size_t end = std::min(cell.find('\n', at), cell.size());
        Piece line = pieceOf(std::string_view(cell).substr(at, end - at));
        if (!line.part.copy.empty()) {
            if (!piece.part.copy.empty()) piece.part.copy.push_back({project::Run::Kind::Break, {}, {}});
            piece.part.copy.push_back(line.part.copy.front());
        }
        at = end + 1;
    }
    return piece;
}

}  // namespace

TableRows tableRows(std::string_view text) {
    TableRows best;
    for (const char separator : {'\t', '|', ';', ','}) {
        TableRows rows = split(text, separator);
        if (isEven(rows)) return rows;
        const auto cells = [](const TableRows& all) { return all.empty() ? 0 : all.front().size(); };
        if (best.empty() || cells(rows) > cells(best)) best = std::move(rows);
    }
    return best;
}

TableRows tableIn(std::string_view text) {
    // A spreadsheet leaves out no cell. One line with tabs is a row of a spreadsheet; one with commas is
    // prose.
    const bool hasTab = text.find('\t') != std::string_view::npos;
    if (hasTab)
        if (TableRows rows = split(text, '\t'); isEven(rows)) return rows;
    for (const char separator : {'|', ';', ','}) {
        if (text.find(separator) == std::string_view::npos) continue;
        if (separator != '|' && readsLikeProse(text, separator)) continue;
        if (TableRows rows = split(text, separator); rows.size() > 1 && isEven(rows)) return rows;
    }
    return {};
}

void addTable(const TableRows& rows, PastedText& out) {
    if (rows.empty()) return;
    std::vector<std::string> roles = namedColumns(rows);
    const std::size_t first = roles.empty() ? 0 : 1;
    if (roles.empty()) roles = usualColumns(rows);
    for (std::size_t at = first; at < rows.size(); ++at) {
        PastedCard card;
        std::string address;
        for (std::size_t column = 0; column < std::min(rows[at].size(), roles.size()); ++column) {
            std::string cell = rows[at][column];
            if (cell.empty()) continue;
            if (roles[column] == "picture") {
                card.alt = cell;
                continue;
            }
            if (roles[column] == "link") {
                address = project::isSafeAddress(cell) ? cell : std::string();
                continue;
            }
            std::string own = roles[column] == "button" ? takeAddress(cell) : std::string();
            if (!own.empty() && address.empty()) address = own;
            Piece piece = cellPiece(cell, roles[column]);
            if (!piece.part.copy.empty()) card.parts.push_back(std::move(piece.part));
        }
        for (project::TextPart& part : card.parts)
            if (part.role == "button") part.link = address.empty() ? "#" : address;
        out.cards.push_back(std::move(card));
    }
}

void readTable(std::string_view text, PastedText& out) {
    addTable(tableRows(text), out);
}

}  // namespace tenter::start
