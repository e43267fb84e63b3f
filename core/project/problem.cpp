#include "project/problem.h"

#include "project/utf8.h"
#include "units/ascii.h"

namespace tenter::project {

namespace {

bool isLineNumber(const std::string& place) {
    return !place.empty() && units::isDigit(place.front());
}

/// True if `text` starts with a plain word, which can take a capital: not `clamp()`, not `heading.lines=2`.
bool startsWithWord(const std::string& text) {
    std::size_t end = 0;
    while (end < text.size() && units::isLowerLetter(text[end]))
        ++end;
    return end > 0 && end < text.size() && (text[end] == ' ' || text[end] == ',' || text[end] == '\'');
}

/// `text` with a capital at its start and a full stop at its end, where it lacks them.
std::string asSentence(std::string text) {
    if (text.empty()) return text;
    if (startsWithWord(text)) text.front() = static_cast<char>(text.front() - 'a' + 'A');
    const bool ended = text.back() == '.' || text.back() == '?' || text.back() == '!';
    return ended ? text : text + ".";
}

}  // namespace

std::string Problem::sentence() const {
    const std::string after = asSentence(fix);
    return visible(asSentence(what) + (after.empty() ? "" : " ") + after);
}

std::string Problem::sentenceWithPlace() const {
    const std::string& where = position.empty() ? place : position;
    if (where.empty()) return sentence();
    if (!isLineNumber(where)) return visible(where) + ": " + sentence();
    const std::size_t colon = where.find(':');
    std::string words = "Line " + where.substr(0, colon);
    if (colon != std::string::npos) words += ", column " + where.substr(colon + 1);
    return words + ": " + sentence();
}

std::string Problem::line() const {
    const std::string& where = position.empty() ? place : position;
    std::string text = file;
    if (!where.empty()) text += (text.empty() ? "" : isLineNumber(where) ? ":" : ": ") + where;
    return visible(text) + (text.empty() ? "" : ": ") + sentence();
}

}  // namespace tenter::project
