#include "checks/phrases.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "project/titles.h"
#include "units/quantities.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

constexpr std::size_t mostQuoted = 34;  // bytes, roughly characters

/// How a phrase names a part: as the subject of a sentence, or as the place of something.
enum class Form { Subject, Inside };

/// The phrases for parts of one role. Each is a text of its own, because other languages have articles for
/// genders and cases.
struct RolePhrases {
    std::string_view role;
    std::string_view subject;  ///< `%1` is its text in quotes
    std::string_view inside;
    std::string_view emptySubject;  ///< `%1` is the number of its card
    std::string_view emptyInside;
    std::string_view shorten;
};
constexpr std::array rolePhrases{
    RolePhrases{"heading", wording::noted("the heading %1"), wording::noted("in the heading %1"),
                wording::noted("the empty heading of card %1"),
                wording::noted("in the empty heading of card %1"), wording::noted("shorten the heading")},
    RolePhrases{"body", wording::noted("the paragraph %1"), wording::noted("in the paragraph %1"),
                wording::noted("the empty paragraph of card %1"),
                wording::noted("in the empty paragraph of card %1"), wording::noted("shorten the paragraph")},
    RolePhrases{"button", wording::noted("the button %1"), wording::noted("in the button %1"),
                wording::noted("the empty button of card %1"),
                wording::noted("in the empty button of card %1"), wording::noted("shorten the button")}};

/// The phrases of a role that Tenter knows; null for one that the project names.
const RolePhrases* phrasesOf(std::string_view role) {
    const auto* const found = std::ranges::find(rolePhrases, role, &RolePhrases::role);
    return found == rolePhrases.end() ? nullptr : found;
}

std::string pictureNamed(const project::PicturePart& picture, Form form) {
    const std::string file = picture.file.substr(picture.file.find_last_of("/\\") + 1);
    return form == Form::Inside ? wording::say("in the picture %1", {file})
                                : wording::say("the picture %1", {file});
}

std::string textNamed(const project::TextPart& part, std::size_t card, Form form) {
    const RolePhrases* const known = phrasesOf(part.role);
    const bool inside = form == Form::Inside;
    const std::string copy = project::plainText(part.copy);
    if (copy.find_first_not_of(" \t\r\n\f") == std::string::npos) {
        const std::string number = std::to_string(card + 1);
        if (known != nullptr) {
            const std::string_view phrase = inside ? known->emptyInside : known->emptySubject;
            return wording::say(phrase, {number});
        }
        return inside ? wording::say("in the empty %1 of card %2", {part.role, number})
                      : wording::say("the empty %1 of card %2", {part.role, number});
    }
    const std::string text = inQuotation(copy);
    if (known != nullptr) {
        const std::string_view phrase = inside ? known->inside : known->subject;
        return wording::say(phrase, {text});
    }
    //: A role that the project names, and a text in quotes: the price “12 €”
    if (!inside) return wording::say("the %1 %2", {part.role, text});
    //: A role that the project names, and a text in quotes: in the price “12 €”
    return wording::say("in the %1 %2", {part.role, text});
}

std::string namedIn(const project::Project& project, project::PartRef place, Form form) {
    const project::Part& there = project.part(place);
    if (const auto* picture = std::get_if<project::PicturePart>(&there)) return pictureNamed(*picture, form);
    return textNamed(std::get<project::TextPart>(there), place.card, form);
}

std::string withOthers(const Subject& subject, const Cause& cause, Form form) {
    std::string worst = namedIn(subject.namesFrom(), cause.place, form);
    const std::size_t others = cause.places.size() - 1;
    if (others == 0) return worst;
    return wording::sayCount("%1 (and %n other)", "%1 (and %n others)", others, {worst});
}

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
    const double first =
        span.from == project.leastWidth ? std::ceil(span.from) : units::firstWholeWidthAbove(span.from);
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
    return namedIn(project, place, Form::Subject);
}

std::string inNamed(const Subject& subject, project::PartRef place) {
    return namedIn(subject.namesFrom(), place, Form::Inside);
}

std::string worstAndOthers(const Subject& subject, const Cause& cause) {
    return withOthers(subject, cause, Form::Subject);
}

std::string inWorstAndOthers(const Subject& subject, const Cause& cause) {
    return withOthers(subject, cause, Form::Inside);
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

std::string shortening(const std::string& role) {
    const RolePhrases* const known = phrasesOf(role);
    return known != nullptr ? wording::say(known->shorten) : wording::say("shorten the %1", {role});
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
