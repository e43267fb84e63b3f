#include "start/pasted_text.h"

#include <algorithm>
#include <array>
#include <regex>

#include "markup/tree.h"
#include "project/rules.h"
#include "project/utf8.h"
#include "start/pieces.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

constexpr std::size_t guessedBytes = 64U << 10U;  // of a text, from its start

/// `text` as UTF-8 with line feeds at line ends, without a byte order mark and without control characters.
std::string readable(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const project::Decoded one = project::decode(text, at);
        const std::string_view bytes = text.substr(at, one.length);
        at += one.length;
        if (!one.valid) {
            out += "\uFFFD";
        } else if (one.character == '\r' || one.character == 0x2028 || one.character == 0x2029) {
            if (at >= text.size() || text[at] != '\n') out += '\n';
        } else if (one.character == '\n' || one.character == '\t' ||
                   (one.character >= 0x20 && one.character != 0x7F && one.character != 0xFEFF)) {
            out += bytes;
        }
    }
    return out;
}

/// The start of a text, up to a whole line if it is cut.
std::string_view startOf(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text;
    const std::size_t end = text.rfind('\n', most);
    return text.substr(0, end == std::string_view::npos ? most : end);
}

bool hasElements(std::string_view text) {
    static const std::regex element(
        R"(<(!doctype|html|body|head|div|section|article|main|ul|ol|li|p|h[1-6]|a|table|tr|td|strong|em|b|i|br|img|span|button)(\s[^<>]*)?/?>)",
        std::regex::icase | std::regex::optimize);
    return std::regex_search(text.begin(), text.end(), element);
}

bool hasMarkdown(std::string_view text) {
    static const std::array<std::regex, 4> marks{
        std::regex(R"((^|\n) {0,3}#{1,6} +\S)"),                // heading
        std::regex(R"(\[[^\]\n]+\]\([^)\s]*\))"),               // link
        std::regex(R"((\*\*|__)\S[^\n]*?(\*\*|__))"),           // strong text
        std::regex(R"((^|\n)[^\n]+\n {0,3}(=|-){3,} *(\n|$))")  // heading with a line below it
    };
    return std::ranges::any_of(
        marks, [&](const std::regex& mark) { return std::regex_search(text.begin(), text.end(), mark); });
}

bool isEmptyCard(const PastedCard& card) {
    return card.parts.empty() && card.alt.empty();
}

}  // namespace

const std::vector<std::string>& textFormatNames() {
    static const std::vector<std::string> names{"plain", "markdown", "html", "table"};
    return names;
}

std::optional<TextFormat> textFormatOf(std::string_view name) {
    const auto& names = textFormatNames();
    const auto at = std::ranges::find(names, name);
    if (at == names.end()) return std::nullopt;
    return static_cast<TextFormat>(at - names.begin());
}

TextFormat guessedFormat(std::string_view text) {
    // Searching in one very long line would take the stack of the regular expressions.
    const std::string start = readable(startOf(text, guessedBytes));
    std::string lines;
    for (std::size_t at = 0; at < start.size();) {
        const std::size_t end = std::min(start.find('\n', at), start.size());
        lines += start.substr(at, std::min<std::size_t>(end - at, 400)) + '\n';
        at = end + 1;
    }
    if (!tableIn(start).empty()) return TextFormat::Table;
    if (hasElements(lines)) return TextFormat::Html;
    return hasMarkdown(lines) ? TextFormat::Markdown : TextFormat::Plain;
}

namespace {

/// Cuts the text of a part to at most `most` characters. True if it was longer.
bool cut(project::Copy& copy, std::size_t most) {
    const bool hasMore = copy.size() > project::mostRuns;
    if (hasMore) copy.resize(project::mostRuns);
    for (std::size_t i = 0; i < copy.size(); ++i) {
        const std::size_t count = project::characterCount(copy[i].text);
        if (count <= most) {
            most -= count;
            continue;
        }
        const std::string& whole = copy[i].text;
        std::size_t end = 0;
        for (; most > 0; --most)
            end += project::decode(whole, end).length;
        copy[i].text = whole.substr(0, end);
        copy.resize(i + 1);
        return true;
    }
    return hasMore;
}

/// Cuts what is longer than a project may hold.
void shorten(PastedText& text) {
    std::size_t left = project::longestTexts;
    bool shortened = false;
    for (PastedCard& card : text.cards) {
        for (project::TextPart& part : card.parts) {
            shortened = cut(part.copy, std::min(left, project::longestText)) || shortened;
            left -= std::min(left, project::characterCount(project::plainText(part.copy)));
        }
        std::erase_if(card.parts, [](const project::TextPart& part) { return plainText(part.copy).empty(); });
    }
    std::erase_if(text.cards, isEmptyCard);
    if (shortened)
        text.notes.push_back(wording::say(
            "A text is longer than %1 characters, or all texts together than %2. The rest was left out.",
            {std::to_string(project::longestText), std::to_string(project::longestTexts)}));
}

}  // namespace

PastedText readPasted(std::string_view text, std::optional<TextFormat> format) {
    PastedText out;
    const std::string_view start = startOf(text, longestPaste);
    out.format = format.value_or(guessedFormat(start));
    const std::string clean = readable(start);
    switch (out.format) {
        case TextFormat::Plain:
            readPlain(clean, out);
            break;
        case TextFormat::Markdown:
            readMarkdown(clean, out);
            break;
        case TextFormat::Html:
            readHtml(clean, out);
            break;
        case TextFormat::Table:
            readTable(clean, out);
            break;
    }
    std::erase_if(out.cards, isEmptyCard);
    if (out.cards.size() > mostPastedCards) {
        out.notes.push_back(
            wording::say("The text has %1 cards. Only the first %2 were read.",
                         {std::to_string(out.cards.size()), std::to_string(mostPastedCards)}));
        out.cards.resize(mostPastedCards);
    }
    shorten(out);
    if (start.size() < text.size())
        out.notes.push_back(wording::say("The text is longer than %1 MB. Only its start was read.",
                                         {std::to_string(longestPaste >> 20U)}));
    return out;
}

}  // namespace tenter::start
