#include "checks/phrases.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "units/number.h"

namespace tenter::checks {

namespace {

constexpr std::size_t mostQuoted = 34;  // bytes of copy, near enough to characters

bool startsCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
}

}  // namespace

std::string inQuotation(std::string_view text) {
    // Where a word may break is not for the eye.
    constexpr std::string_view softHyphen = "\xC2\xAD";
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.substr(i).starts_with(softHyphen)) {
            i += softHyphen.size() - 1;
            continue;
        }
        const char c = text[i];
        const bool blank = c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
        if (!blank)
            plain += c;
        else if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    while (!plain.empty() && plain.back() == ' ')
        plain.pop_back();
    if (plain.size() > mostQuoted) {
        std::size_t end = mostQuoted;
        while (end > 0 && !startsCharacter(plain[end]))
            --end;
        const std::size_t space = plain.rfind(' ', end);
        if (space != std::string::npos && space > mostQuoted / 2) end = space;
        plain = plain.substr(0, end) + "…";
    }
    return "“" + plain + "”";
}

std::string named(const Subject& subject, std::size_t card, std::size_t part) {
    return named(subject.namesFrom(), card, part);
}

std::string named(const project::Project& project, std::size_t card, std::size_t part) {
    const project::Part& there = project.cards[card].parts[part];
    if (const auto* picture = std::get_if<project::PicturePart>(&there)) {
        const std::size_t slash = picture->file.find_last_of("/\\");
        return "the picture " +
               (slash == std::string::npos ? picture->file : picture->file.substr(slash + 1));
    }
    const auto& text = std::get<project::TextPart>(there);
    const std::string role = text.role == "body" ? "paragraph" : text.role;
    const std::string copy = project::plainText(text.copy);
    if (copy.find_first_not_of(" \t\r\n\f") == std::string::npos)
        return "the empty " + role + " of card " + std::to_string(card + 1);
    return "the " + role + " " + inQuotation(copy);
}

std::string worstAndOthers(const Subject& subject, const Cause& cause) {
    std::string worst = named(subject, cause.card, cause.part);
    const std::size_t others = cause.places.size() - 1;
    if (others == 0) return worst;
    return worst + " (and " + std::to_string(others) + (others == 1 ? " other)" : " others)");
}

std::string sentence(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string figure(double value, int decimals) {
    const double step = std::pow(10.0, decimals);
    return units::number(std::floor(value * step + 1e-6) / step, decimals);
}

std::string about(double value, int decimals) {
    return units::number(value, decimals);
}

std::string percent(double share) {
    return units::number(share * 100, 0) + "\u00A0%";
}

std::string spaced(double value, int decimals) {
    std::string text = units::number(value, decimals);
    const std::size_t first = text[0] == '-' ? 1 : 0;
    for (std::size_t at = std::min(text.find('.'), text.size()); at > first + 3;) {
        at -= 3;
        text.insert(at, "\u202F");
    }
    return text;
}

std::string px(double value, int decimals) {
    return inPx(spaced(value, decimals));
}

std::string inPx(std::string number) {
    return std::move(number) + "\u00A0px";
}

double wholeIn(const sweep::Interval& span) {
    const double whole = std::floor(span.to);
    return whole > span.from || whole == span.to ? whole : span.to;
}

std::string atWidths(const Subject& subject, const sweep::Interval& span) {
    const double last = wholeIn(span);
    // Past its start: a breakpoint is the band's below. The range's own first width is in it.
    const double first = span.from == subject.least ? std::ceil(span.from) : std::floor(span.from) + 1;
    if (first >= last) return "at " + px(last);
    return "from " + spaced(first, 0) + " to " + px(last, 0);
}

std::string typeOf(std::string_view role) {
    if (role == "body") return "body type";
    if (role == "button") return "the button’s label";
    return "the " + std::string(role);
}

}  // namespace tenter::checks
