#include "checks/phrases.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "units/quantities.h"

namespace tenter::checks {

namespace {

constexpr std::size_t mostQuoted = 34;  // bytes, roughly characters

bool startsCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
}

/// True if the text of a finding starts with a width or a range, as `atWidths` writes them.
bool namesPartOfWidths(std::string_view says) {
    const auto startsWithFigure = [says](std::string_view word) {
        return says.starts_with(word) && says.size() > word.size() && says[word.size()] >= '0' &&
               says[word.size()] <= '9';
    };
    return startsWithFigure("From ") || startsWithFigure("At ");
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
    return "“" + plain + "”";
}

std::string named(const Subject& subject, project::PartRef place) {
    return named(subject.namesFrom(), place);
}

std::string named(const project::Project& project, project::PartRef place) {
    const project::Part& there = project.part(place);
    if (const auto* picture = std::get_if<project::PicturePart>(&there)) {
        const std::size_t slash = picture->file.find_last_of("/\\");
        return "the picture " +
               (slash == std::string::npos ? picture->file : picture->file.substr(slash + 1));
    }
    const auto& text = std::get<project::TextPart>(there);
    const std::string kind = partKind(text.role);
    const std::string copy = project::plainText(text.copy);
    if (copy.find_first_not_of(" \t\r\n\f") == std::string::npos)
        return "the empty " + kind + " of card " + std::to_string(place.card + 1);
    return "the " + kind + " " + inQuotation(copy);
}

std::string worstAndOthers(const Subject& subject, const Cause& cause) {
    std::string worst = named(subject, cause.place);
    const std::size_t others = cause.places.size() - 1;
    if (others == 0) return worst;
    return worst + " (and " + std::to_string(others) + (others == 1 ? " other)" : " others)");
}

std::string capitalised(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string lineCount(std::size_t lines) {
    return std::to_string(lines) + (lines == 1 ? " line" : " lines");
}

double widestWholeWidth(const sweep::Interval& span) {
    const double whole = std::floor(span.to);
    return whole > span.from || whole == span.to ? whole : span.to;
}

std::string atWidths(const project::Project& project, const sweep::Interval& span) {
    if (span.from <= project.leastWidth && span.to >= project.mostWidth) return "at every width";
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
        if (everywhere) return namesPartOfWidths(finding.says) ? "every width" : std::string();
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
        text += (i > 0 ? ", " : "") + range;
    }
    const std::size_t left = all.size() - shown;
    if (left > 0) text += " and " + std::to_string(left) + " more " + (left == 1 ? "range" : "ranges");
    return text;
}

std::string partKind(const std::string& role) {
    return role == "body" ? "paragraph" : role;
}

std::string roleText(std::string_view role) {
    return std::string(role) + " text";
}

}  // namespace tenter::checks
