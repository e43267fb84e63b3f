// Plain lines as pieces.
#include <array>

#include "start/pieces.h"

namespace tenter::start {

namespace {

std::string_view trimmed(std::string_view line) {
    constexpr std::string_view noBreakSpace = "\u00A0";
    for (bool found = true; found && !line.empty();) {
        found = true;
        if (line.front() == ' ' || line.front() == '\t')
            line.remove_prefix(1);
        else if (line.back() == ' ' || line.back() == '\t')
            line.remove_suffix(1);
        else if (line.starts_with(noBreakSpace))
            line.remove_prefix(noBreakSpace.size());
        else if (line.ends_with(noBreakSpace))
            line.remove_suffix(noBreakSpace.size());
        else
            found = false;
    }
    return line;
}

/// Removes one of these from the start of a line.
template <std::size_t count>
bool takeMark(std::string_view& line, const std::array<std::string_view, count>& marks) {
    for (const std::string_view mark : marks) {
        if (!line.starts_with(mark) || trimmed(line.substr(mark.size())).empty()) continue;
        line = trimmed(line.substr(mark.size()));
        return true;
    }
    return false;
}

constexpr std::array<std::string_view, 4> bullets{"- ", "* ", "• ", "· "};
constexpr std::array<std::string_view, 7> arrows{"→", "->", "=>", ">", "»", "›", "←"};

/// `Low tide – Two slow miles` in a list: a heading and its text.
bool addDivided(std::string_view line, std::vector<Piece>& pieces) {
    for (const std::string_view dash : {" – ", " — ", ": "}) {
        const std::size_t at = line.find(dash);
        if (at == std::string_view::npos || !isShort(line.substr(0, at))) continue;
        pieces.push_back(pieceOf(line.substr(0, at), "heading"));
        pieces.push_back(pieceOf(line.substr(at + dash.size())));
        return true;
    }
    return false;
}

/// `Heading: Low tide`: a line that states its role.
bool addLabelled(std::string_view line, std::vector<Piece>& pieces) {
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos) return false;
    const std::string role = roleNamed(trimmed(line.substr(0, colon)));
    const std::string_view rest = trimmed(line.substr(colon + 1));
    if (role.empty()) return false;
    if (role == "picture") {
        Piece piece;
        piece.isPicture = true;
        piece.alt = rest;
        pieces.push_back(std::move(piece));
    } else if (role == "link") {
        std::string address(rest);
        address = takeAddress(address);
        if (!pieces.empty() && pieces.back().part.role == "button") pieces.back().part.link = address;
    } else {
        pieces.push_back(pieceOf(rest, role));
    }
    return true;
}

void addLine(std::string_view line, std::vector<Piece>& pieces) {
    if (addLabelled(line, pieces)) return;
    const bool isBullet = takeMark(line, bullets);
    const std::size_t before = pieces.size();
    if (isBullet && addDivided(line, pieces)) {
        pieces[before].startsCard = true;
        return;
    }
    bool isButton = takeMark(line, arrows);
    if (line.size() > 2 && line.front() == '[' && line.back() == ']') {
        line = trimmed(line.substr(1, line.size() - 2));
        isButton = true;
    }
    std::string text(line);
    std::string address = takeAddress(text);
    if (text.empty() && !pieces.empty()) {
        // An address alone belongs to the label above it.
        project::TextPart& above = pieces.back().part;
        const bool isLabelAbove = above.role.empty() && isLabel(project::plainText(above.copy));
        if (isLabelAbove || (above.role == "button" && above.link.empty())) {
            above.role = "button";
            above.link = address;
            return;
        }
    }
    isButton = isButton || (!address.empty() && isLabel(text));
    if (!address.empty() && !isButton) text = line;
    Piece piece = pieceOf(text.empty() ? std::string_view(address) : text, isButton ? "button" : "");
    piece.part.link = address;
    pieces.push_back(std::move(piece));
}

}  // namespace

void readPlain(std::string_view text, PastedText& out) {
    std::vector<Piece> pieces;
    bool gap = false;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = trimmed(text.substr(at, end - at));
        at = end + 1;
        const bool isRule = line.size() >= 3 && line.find_first_not_of("-=_*") == std::string_view::npos;
        if (line.empty() || isRule) {
            gap = true;
            continue;
        }
        const std::size_t before = pieces.size();
        addLine(line, pieces);
        if (before < pieces.size()) pieces[before].afterGap = gap;
        gap = false;
    }
    addCards(std::move(pieces), out);
}

}  // namespace tenter::start
