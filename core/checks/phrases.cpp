#include "checks/phrases.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "project/titles.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

constexpr std::size_t mostQuoted = 34;  // bytes, roughly characters

bool startsCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
}

/// True if the text of a finding starts with a width or a range, as `atWidths` writes them.
bool namesPartOfWidths(std::string_view says) {
    const auto startsLike = [says](const std::string& phrase) {
        const std::string start = capitalised(phrase.substr(0, phrase.find('0')));
        return says.starts_with(start) && says.size() > start.size() && says[start.size()] >= '0' &&
               says[start.size()] <= '9';
    };
    return startsLike(units::fromPxToPx(0, 0)) || startsLike(units::fromPxToPx(0, 1));
}

/// The first and last whole width of a span, or its end twice if it holds none.
std::pair<double, double> firstAndLastWhole(const project::Project& project, const sweep::Interval& span) {
    const double last = widestWholeWidth(span);
    // A breakpoint belongs to the band below it, so a span starts past its `from`; the project's first width
    // has no band below it.
    const double first = span.from == project.leastWidth ? std::ceil(span.from) : std::floor(span.from) + 1;
    return {std::min(first, last), last};
}

}  // namespace

std::string inQuotation(std::string_view text) {
    // A reader does not see where a word may break.
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
    return wording::say("“%1”", {plain});
}

std::string named(const Subject& subject, project::PartRef place) {
    return named(subject.namesFrom(), place);
}

std::string named(const project::Project& project, project::PartRef place) {
    const project::Part& there = project.part(place);
    if (const auto* picture = std::get_if<project::PicturePart>(&there)) {
        const std::size_t slash = picture->file.find_last_of("/\\");
        return wording::say("the picture %1",
                            {slash == std::string::npos ? picture->file : picture->file.substr(slash + 1)});
    }
    const auto& text = std::get<project::TextPart>(there);
    const std::string kind = partKind(text.role);
    const std::string copy = project::plainText(text.copy);
    if (copy.find_first_not_of(" \t\r\n\f") == std::string::npos)
        return wording::say("the empty %1 of card %2", {kind, std::to_string(place.card + 1)});
    //: A part and its text in quotes: the heading “Low tide”
    return wording::say("the %1 %2", {kind, inQuotation(copy)});
}

std::string worstAndOthers(const Subject& subject, const Cause& cause) {
    std::string worst = named(subject, cause.place);
    const std::size_t others = cause.places.size() - 1;
    if (others == 0) return worst;
    return wording::sayCount("%1 (and %n other)", "%1 (and %n others)", others, {worst});
}

std::string capitalised(std::string text) {
    // à to þ of Latin-1 in UTF-8, without ÷.
    const auto isSmall = [&](std::size_t at, unsigned char least, unsigned char most) {
        const auto byte = static_cast<unsigned char>(text[at]);
        return byte >= least && byte <= most;
    };
    const bool isPair = text.size() > 1 && text[0] == '\xC3' && isSmall(1, 0xA0, 0xBE) && text[1] != '\xB7';
    if (!text.empty() && isSmall(0, 'a', 'z')) text[0] = static_cast<char>(text[0] - 'a' + 'A');
    if (isPair) text[1] = static_cast<char>(text[1] - 0x20);
    return text;
}

std::string lineCount(std::size_t lines) {
    return wording::sayCount("%n line", "%n lines", lines);
}

double widestWholeWidth(const sweep::Interval& span) {
    const double whole = std::floor(span.to);
    return whole > span.from || whole == span.to ? whole : span.to;
}

std::string atWidths(const project::Project& project, const sweep::Interval& span) {
    if (span.from <= project.leastWidth && span.to >= project.mostWidth)
        return wording::say("at every width");
    const auto [first, last] = firstAndLastWhole(project, span);
    return units::fromPxToPx(first, last, 1);
}

std::string atWidths(const Subject& subject, const sweep::Interval& span) {
    return atWidths(subject.project, span);
}

std::string widthsBeyondText(const project::Project& project, const Finding& finding, std::size_t most) {
    const std::vector<sweep::Interval>& all = finding.widths;
    if (all.empty()) return {};
    if (all.size() == 1) {
        const bool everywhere = all[0].from <= project.leastWidth && all[0].to >= project.mostWidth;
        const bool single = all[0].from == all[0].to;
        const std::string range = single ? units::px(all[0].to) : atWidths(project, all[0]);
        if (everywhere) return namesPartOfWidths(finding.says) ? wording::say("every width") : std::string();
        if (finding.says.find(range) != std::string::npos ||
            finding.says.find(capitalised(range)) != std::string::npos)
            return {};
    }
    std::string text;
    const std::size_t shown = std::min(most, all.size());
    for (std::size_t i = 0; i < shown; ++i) {
        const auto [first, last] = firstAndLastWhole(project, all[i]);
        // The unit follows the last range only.
        std::string range = units::pxRange(first, last, 1);
        if (i + 1 < shown) range.erase(range.rfind("\u00A0"));
        text = i > 0 ? wording::say("%1, %2", {text, range}) : range;
    }
    const std::size_t left = all.size() - shown;
    if (left == 0) return text;
    return wording::sayCount("%1 and %n more range", "%1 and %n more ranges", left, {text});
}

std::string partKind(const std::string& role) {
    return role == "body" ? wording::say("paragraph") : project::roleName(role);
}

std::string roleText(std::string_view role) {
    if (role == "heading") return wording::say("heading text");
    if (role == "body") return wording::say("body text");
    if (role == "button") return wording::say("button text");
    //: The text of a role with this name
    return wording::say("%1 text", {role});
}

std::string changeSizeSlightly() {
    return wording::say("Change the font size slightly at these widths (Text › Font size)");
}

std::string commonPractice() {
    return wording::say("common practice, no source");
}

}  // namespace tenter::checks
