// Markdown as pieces, through the HTML that it stands for.
#include <cmark.h>

#include <cstdlib>
#include <memory>

#include "start/pieces.h"

namespace tenter::start {

void readMarkdown(std::string_view text, PastedText& out) {
    // Elements of HTML in the text, and addresses that could run something, are left out by default.
    const std::unique_ptr<char, void (*)(void*)> html(
        cmark_markdown_to_html(text.data(), text.size(), CMARK_OPT_VALIDATE_UTF8), std::free);
    if (html) readHtml(html.get(), out);
}

namespace {

/// Text in which no character has a meaning in Markdown.
std::string escaped(std::string_view text) {
    constexpr std::string_view special = "\\`*_{}[]<>()#+-.!|&~\"'=:";
    std::string out;
    for (const char c : text) {
        if (special.find(c) != std::string_view::npos && c != '.' && c != '-' && c != '\'' && c != '"' &&
            c != '(' && c != ')' && c != '!' && c != ':' && c != '|' && c != '=' && c != '+')
            out += '\\';
        out += c;
    }
    // At the start of a line a number or a mark would start a list, and a line of marks a rule.
    const std::size_t digits = std::min(out.find_first_not_of("0123456789"), out.size());
    if (digits > 0 && digits < out.size() && (out[digits] == '.' || out[digits] == ')'))
        out.insert(digits, "\\");
    else if (!out.empty() && std::string_view("-+=").find(out[0]) != std::string_view::npos)
        out.insert(0, "\\");
    return out;
}

std::string markdownOfCopy(const project::Copy& copy) {
    std::string out;
    for (const project::Run& run : copy) {
        const std::string text = escaped(run.text.str());
        switch (run.kind) {
            case project::Run::Kind::Plain:
                out += text;
                break;
            case project::Run::Kind::Strong:
                out += "**" + text + "**";
                break;
            case project::Run::Kind::Emphasis:
                out += "*" + text + "*";
                break;
            case project::Run::Kind::Link:
                out += "[" + text + "](<" + run.to + ">)";
                break;
            case project::Run::Kind::Break:
                out += "\\\n";
                break;
        }
    }
    return out;
}

}  // namespace

std::string markdownOf(const PastedText& text) {
    std::string out;
    if (!text.title.empty()) out += "# " + escaped(text.title) + "\n\n";
    for (std::size_t i = 0; i < text.cards.size(); ++i) {
        const PastedCard& card = text.cards[i];
        // A card without a heading needs a rule to show where it starts.
        const bool hasHeading = !card.parts.empty() && card.parts.front().role == "heading";
        if (i > 0 && !hasHeading) out += "***\n\n";
        if (!card.alt.empty() && !hasHeading) out += "![" + escaped(card.alt) + "](picture)\n\n";
        for (const project::TextPart& part : card.parts) {
            const std::string words = markdownOfCopy(part.copy);
            if (part.role == "heading")
                out += "## " + words + "\n\n";
            else if (part.role == "button")
                out += "[" + words + "](<" + part.link + ">)\n\n";
            else
                out += words + "\n\n";
            if (part.role == "heading" && !card.alt.empty())
                out += "![" + escaped(card.alt) + "](picture)\n\n";
        }
    }
    return out;
}

}  // namespace tenter::start
