#include "emit/escape.h"
#include "units/ascii.h"

#include <array>
#include <charconv>
#include <cstdint>

namespace tenter::emit {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";
constexpr char hexDigits[] = "0123456789abcdef";

unsigned char byteAt(std::string_view text, std::size_t i) {
    return static_cast<unsigned char>(text[i]);
}

/// The length of the sequence of a lead byte, and the range of its second byte. Unicode 15, table 3-7.
struct Lead {
    std::size_t length;
    unsigned char least;
    unsigned char most;
};

Lead lead(unsigned char byte) {
    if (byte < 0x80) return {1, 0, 0};
    if (byte >= 0xC2 && byte <= 0xDF) return {2, 0x80, 0xBF};
    if (byte == 0xE0) return {3, 0xA0, 0xBF};
    if (byte == 0xED) return {3, 0x80, 0x9F};
    if (byte >= 0xE1 && byte <= 0xEF) return {3, 0x80, 0xBF};
    if (byte == 0xF0) return {4, 0x90, 0xBF};
    if (byte == 0xF4) return {4, 0x80, 0x8F};
    if (byte >= 0xF1 && byte <= 0xF3) return {4, 0x80, 0xBF};
    return {0, 0, 0};
}

/// The length of the well-formed character at `start`; or 0, then `subpart` is the number of bytes to
/// replace.
std::size_t wellFormed(std::string_view text, std::size_t start, std::size_t& subpart) {
    const Lead head = lead(byteAt(text, start));
    subpart = 1;
    if (head.length < 2) return head.length;
    for (std::size_t i = 1; i < head.length; ++i) {
        if (start + i >= text.size()) return 0;
        const unsigned char next = byteAt(text, start + i);
        const bool fits = i == 1 ? next >= head.least && next <= head.most : (next & 0xC0) == 0x80;
        if (!fits) return 0;
        subpart = i + 1;
    }
    return head.length;
}

void appendHexEscape(std::string& out, char c) {
    const auto byte = static_cast<unsigned char>(c);
    out += '\\';
    if (byte >= 0x10) out += hexDigits[byte >> 4];
    out += hexDigits[byte & 0xF];
    out += ' ';
}

bool isControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
}
bool isMarkup(char c) {
    return c == '<' || c == '>' || c == '&';
}
bool isName(char c) {
    return static_cast<unsigned char>(c) >= 0x80 || units::isWordCharacter(c);
}

void replaceAll(std::string& text, std::string_view what, std::string_view with) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

}  // namespace

std::string repaired(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (std::size_t i = 0; i < text.size();) {
        std::size_t subpart = 1;
        const std::size_t length = text[i] == '\0' ? 0 : wellFormed(text, i, subpart);
        if (length == 0) {
            out += replacement;
            i += subpart;
        } else {
            out += text.substr(i, length);
            i += length;
        }
    }
    return out;
}

std::string cssString(std::string_view text) {
    std::string out = "\"";
    for (const char c : repaired(text)) {
        if (isControl(c) || isMarkup(c)) {
            appendHexEscape(out, c);
        } else {
            if (c == '"' || c == '\\') out += '\\';
            out += c;
        }
    }
    return out + '"';
}

std::string cssIdentifier(std::string_view text) {
    const std::string whole = repaired(text);
    std::string out;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const char c = whole[i];
        const bool leads = i == 0 || (i == 1 && whole[0] == '-');
        if (isControl(c) || isMarkup(c) || (leads && units::isDigit(c))) {
            appendHexEscape(out, c);
        } else {
            if (!isName(c) || whole == "-") out += '\\';
            out += c;
        }
    }
    return out;
}

std::string cssComment(std::string_view text) {
    std::string out;
    for (const char c : repaired(text)) {
        if (isControl(c)) {
            out += ' ';
        } else if (c == '<') {
            out += '(';
        } else if (c == '>') {
            out += ')';
        } else if (c == '&') {
            out += '+';
        } else {
            out += c;
        }
    }
    replaceAll(out, "*/", "* /");
    replaceAll(out, "/*", "/ *");
    return out;
}

std::string html(std::string_view text) {
    std::string out;
    for (const char c : repaired(text)) {
        switch (c) {
            case '<':
                out += "&lt;";
                break;
            case '>':
                out += "&gt;";
                break;
            case '&':
                out += "&amp;";
                break;
            case '"':
                out += "&quot;";
                break;
            default:
                out += c;
        }
    }
    return out;
}

std::string jsonString(std::string_view text) {
    std::string out = "\"";
    for (const char c : repaired(text)) {
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (c == '\n') {
            out += "\\n";
        } else if (isControl(c)) {
            out += "\\u00";
            out += hexDigits[static_cast<unsigned char>(c) >> 4];
            out += hexDigits[static_cast<unsigned char>(c) & 0xF];
        } else {
            out += c;
        }
    }
    return out + '"';
}

std::string jsonNumber(double value) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    return {digits.data(), end.ptr};
}

}  // namespace tenter::emit
