#include "start/pieces.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

#include "project/address.h"
#include "project/rules.h"
#include "project/utf8.h"
#include "project/wording.h"
#include "units/ascii.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

// Common practice, no source.
constexpr std::size_t longestShortText = 60;  // letters
constexpr std::size_t longestLabel = 40;      // letters
constexpr std::size_t mostPartsOfCard = 20;
static_assert(mostPartsOfCard < project::mostParts);

std::string textOf(const Piece& piece) {
    return project::plainText(piece.part.copy);
}

bool endsWithAny(std::string_view text, std::initializer_list<std::string_view> ends) {
    return std::ranges::any_of(ends, [&](std::string_view end) { return text.ends_with(end); });
}

bool endsSentence(std::string_view text) {
    return endsWithAny(text, {".", "…", ":", ";", ",", "。", "．", "؛", "،", "।", "።"});
}

bool hasRole(const PastedCard& card, std::string_view role) {
    return std::ranges::any_of(card.parts, [&](const project::TextPart& part) { return part.role == role; });
}

bool hasOnlyHeading(const PastedCard& card) {
    return card.parts.size() == 1 && card.parts[0].role == "heading";
}

/// Adds pieces to cards, one after the other.
class CardMaker {
public:
    explicit CardMaker(PastedText& out) : out_(out) {}

    [[nodiscard]] bool hasCard() const { return !out_.cards.empty(); }
    [[nodiscard]] PastedCard& card() {
        if (out_.cards.empty()) out_.cards.emplace_back();
        return out_.cards.back();
    }
    void startCard() { out_.cards.emplace_back(); }
    void add(const Piece& piece, const std::string& role) {
        if (piece.isPicture) {
            if (card().alt.empty()) card().alt = piece.alt;
            return;
        }
        if (card().parts.size() >= mostPartsOfCard) {
            dropped_ = true;
            return;
        }
        project::TextPart part = piece.part;
        part.role = role;
        if (role != "button") part.link.clear();
        if (role == "button" && part.link.empty()) part.link = "#";
        card().parts.push_back(std::move(part));
    }
    void finish() {
        if (dropped_)
            out_.notes.push_back(wording::say(
                "A card has more than %1 paragraphs. The others were left out. Check where cards start.",
                {std::to_string(mostPartsOfCard)}));
    }

private:
    PastedText& out_;
    bool dropped_ = false;
};

/// Cards that start where a piece says so or is a heading.
void addStatedCards(const std::vector<Piece>& pieces, PastedText& out) {
    CardMaker maker(out);
    std::vector<std::string> before;
    bool started = false;
    bool alone = false;  // a card was started by a piece that is not its heading
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        const bool isHeading = piece.part.role == "heading";
        if (piece.startsCard || (isHeading && !(alone && !hasRole(maker.card(), "heading")))) {
            maker.startCard();
            started = true;
            alone = !isHeading;
        }
        const bool isUnknown = piece.part.role.empty() && !piece.isPicture;
        if (!started && isUnknown) {
            before.push_back(project::inQuotes(textOf(piece)));
            continue;
        }
        // The last short line of a card with text is its button.
        const bool isLast = i + 1 == pieces.size() || pieces[i + 1].startsCard || pieces[i + 1].isPicture ||
                            pieces[i + 1].part.role == "heading";
        const bool isButton = isUnknown && isLast && hasRole(maker.card(), "body") &&
                              !hasRole(maker.card(), "button") && isLabel(textOf(piece)) &&
                              piece.part.copy.size() == 1;
        maker.add(piece, isButton ? "button" : isUnknown ? "body" : piece.part.role);
    }
    if (!before.empty())
        out.notes.push_back(
            wording::say("The text before the first heading is in no card: %1.", {project::listed(before)}));
    maker.finish();
}

using Block = std::vector<Piece>;

std::vector<Block> blocksOf(const std::vector<Piece>& pieces) {
    std::vector<Block> blocks;
    for (const Piece& piece : pieces) {
        if (blocks.empty() || piece.afterGap) blocks.emplace_back();
        blocks.back().push_back(piece);
    }
    return blocks;
}

/// Joins `next` to the end of `piece`: a line that was broken by hand.
void join(Piece& piece, const Piece& next) {
    project::Copy& copy = piece.part.copy;
    if (!copy.empty() && !next.part.copy.empty()) {
        copy.back().text += " " + next.part.copy.front().text.str();
        copy.insert(copy.end(), next.part.copy.begin() + 1, next.part.copy.end());
    }
}

/// Adds the pieces of a block after its heading: the text, its lines joined, and a button.
void addRest(CardMaker& maker, const Block& block, std::size_t from) {
    const Piece& last = block.back();
    const bool hasLabel = block.size() >= from + 2 && last.part.role.empty() && isLabel(textOf(last));
    Piece body;
    for (std::size_t i = from; i < block.size(); ++i) {
        const bool isLabelled = !block[i].part.role.empty() || (hasLabel && i + 1 == block.size());
        if (!isLabelled && body.part.copy.empty()) {
            body = block[i];
        } else if (!isLabelled) {
            join(body, block[i]);
        } else {
            if (!body.part.copy.empty()) maker.add(std::exchange(body, {}), "body");
            maker.add(block[i], block[i].part.role.empty() ? "button" : block[i].part.role);
        }
    }
    if (!body.part.copy.empty()) maker.add(body, "body");
}

/// Cards from blocks of lines between empty lines.
void addBlocks(const std::vector<Block>& blocks, PastedText& out) {
    CardMaker maker(out);
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const Block& block = blocks[i];
        const std::string first = textOf(block.front());
        const bool isOne = block.size() == 1;
        const bool isAfterText =
            maker.hasCard() && hasRole(maker.card(), "body") && !hasRole(maker.card(), "button");
        const bool statesItsRole = !block.front().part.role.empty();
        const bool isButton = isOne && isAfterText && isLabel(first);
        if (maker.hasCard() && (statesItsRole || (!isButton && !isShort(first)))) {
            addRest(maker, block, 0);
        } else if (isButton) {
            maker.add(block.front(), "button");
        } else if (i == 0 && isOne && blocks.size() > 2 && isShort(first) && blocks[1].size() > 1 &&
                   isShort(textOf(blocks[1].front()))) {
            out.title = first;
        } else {
            maker.startCard();
            const bool isHeading = isShort(first) || !isOne;
            if (isHeading) maker.add(block.front(), "heading");
            if (!isOne || !isHeading) addRest(maker, block, isHeading ? 1 : 0);
        }
    }
    maker.finish();
}

/// Cards from lines of which none, or each, has an empty line before it.
void addLines(const std::vector<Piece>& pieces, PastedText& out) {
    CardMaker maker(out);
    bool anyButton = false;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        const std::string text = textOf(piece);
        const bool isLast = i + 1 == pieces.size();
        if (!piece.part.role.empty()) {
            maker.add(piece, piece.part.role);
            anyButton = anyButton || piece.part.role == "button";
        } else if (!isShort(text)) {
            maker.add(piece, "body");
        } else if (!maker.hasCard() || maker.card().parts.empty()) {
            maker.startCard();
            maker.add(piece, "heading");
        } else if (hasRole(maker.card(), "body") && !hasRole(maker.card(), "button") && isLabel(text) &&
                   (isLast ? anyButton || out.cards.size() == 1 : isShort(textOf(pieces[i + 1])))) {
            maker.add(piece, "button");
            anyButton = true;
        } else {
            // A first line without text below it is the title of what follows.
            if (out.cards.size() == 1 && hasOnlyHeading(out.cards[0]) && !isLast &&
                !isShort(textOf(pieces[i + 1])) && out.title.empty()) {
                out.title = project::plainText(out.cards[0].parts[0].copy);
                out.cards.clear();
            }
            maker.startCard();
            maker.add(piece, "heading");
        }
    }
    maker.finish();
}

}  // namespace

Piece pieceOf(std::string_view text, std::string role) {
    std::string words;
    bool spaced = false;
    for (std::size_t at = 0; at < text.size();) {
        const project::Decoded one = project::decode(text, at);
        const bool isSpace = one.character == ' ' || one.character == '\t' || one.character == '\n' ||
                             ((at == 0 || at + one.length == text.size()) && one.character == 0xA0);
        if (isSpace) {
            spaced = !words.empty();
        } else {
            if (std::exchange(spaced, false)) words += ' ';
            words += text.substr(at, one.length);
        }
        at += one.length;
    }
    Piece piece;
    piece.part.role = std::move(role);
    if (!words.empty()) piece.part.copy.push_back({project::Run::Kind::Plain, words, {}});
    return piece;
}

std::size_t letterCount(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t at = 0; at < text.size();) {
        const project::Decoded one = project::decode(text, at);
        count += one.character >= 0x2E80 && one.character < 0xFE00 ? 2 : 1;
        at += one.length;
    }
    return count;
}

bool isShort(std::string_view text) {
    return letterCount(text) <= longestShortText && !endsSentence(text);
}

bool isLabel(std::string_view text) {
    return letterCount(text) <= longestLabel && !endsSentence(text);
}

std::string takeAddress(std::string& text) {
    const std::size_t space = text.find_last_of(" \t");
    std::string word = space == std::string::npos ? text : text.substr(space + 1);
    const bool isWrapped = word.size() > 2 && (word.front() == '(' || word.front() == '<') &&
                           (word.back() == ')' || word.back() == '>');
    if (isWrapped) word = word.substr(1, word.size() - 2);
    const auto scheme = project::addressScheme(word);
    const bool isAddress =
        (scheme && (*scheme == "http" || *scheme == "https" || *scheme == "mailto" || *scheme == "tel")) ||
        word.starts_with("www.") || (word.size() > 1 && word[0] == '/') ||
        (word.size() > 1 && word[0] == '#');
    if (!isAddress || word.find_first_of("\"<>") != std::string::npos) return {};
    text.resize(space == std::string::npos ? 0 : space);
    while (!text.empty() && (text.back() == ' ' || text.back() == '|' || text.back() == ':'))
        text.pop_back();
    return word.starts_with("www.") ? "https://" + word : word;
}

std::string roleNamed(std::string_view word) {
    static const std::map<std::string, std::string, std::less<>> roles{{"heading", "heading"},
                                                                       {"headline", "heading"},
                                                                       {"title", "heading"},
                                                                       {"name", "heading"},
                                                                       {"text", "body"},
                                                                       {"body", "body"},
                                                                       {"copy", "body"},
                                                                       {"description", "body"},
                                                                       {"paragraph", "body"},
                                                                       {"button", "button"},
                                                                       {"label", "button"},
                                                                       {"cta", "button"},
                                                                       {"button text", "button"},
                                                                       {"button label", "button"},
                                                                       {"link", "link"},
                                                                       {"url", "link"},
                                                                       {"address", "link"},
                                                                       {"href", "link"},
                                                                       {"picture", "picture"},
                                                                       {"image", "picture"},
                                                                       {"photo", "picture"},
                                                                       {"alt", "picture"},
                                                                       {"alternative text", "picture"},
                                                                       {"alt text", "picture"},
                                                                       {"kicker", "kicker"},
                                                                       {"price", "price"}};
    std::string lower;
    for (const char c : word)
        lower += units::isUpperLetter(c) ? static_cast<char>(c - 'A' + 'a') : c;
    const auto at = roles.find(lower);
    return at == roles.end() ? std::string() : at->second;
}

void addCards(std::vector<Piece> pieces, PastedText& out) {
    std::erase_if(pieces, [](const Piece& piece) { return !piece.isPicture && textOf(piece).empty(); });
    if (pieces.empty()) return;
    const bool isStated = std::ranges::any_of(
        pieces, [](const Piece& piece) { return piece.startsCard || piece.part.role == "heading"; });
    if (isStated) {
        addStatedCards(pieces, out);
        return;
    }
    const std::vector<Block> blocks = blocksOf(pieces);
    const bool hasBlocks =
        blocks.size() > 1 && std::ranges::any_of(blocks, [](const Block& block) { return block.size() > 1; });
    if (hasBlocks)
        addBlocks(blocks, out);
    else
        addLines(pieces, out);
}

}  // namespace tenter::start
