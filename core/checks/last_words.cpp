// Headings whose last line is one short word, or the end of one, over a wide range. Common practice, no
// source.
#include <map>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/line_layouts.h"
#include "checks/phrases.h"
#include "text/unicode.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

enum class LastLine { Fine, OneWord, EndOfWord };

/// The kind of last line that starts at cluster `first`; a word of more than `most` characters is fine.
LastLine lastLineOf(const text::Paragraph& paragraph, std::uint32_t first, double most) {
    const auto end = static_cast<std::uint32_t>(paragraph.clusters().size());
    if (first == 0 || paragraph.graphemes(first, end) > most) return LastLine::Fine;
    for (std::uint32_t i = first; i < end; ++i) {
        const char16_t unit = paragraph.text()[paragraph.clusters()[i].begin];
        if (paragraph.clusters()[i].space || unit == u'\u00A0') return LastLine::Fine;
    }
    if (paragraph.clusters()[first - 1].space) return LastLine::OneWord;
    const char16_t before = paragraph.text()[paragraph.clusters()[first - 1].begin];
    return before == u'\u00AD' || before == u'-' || before == u'\u2010' ? LastLine::EndOfWord
                                                                        : LastLine::Fine;
}

/// A range of widths and the last line there.
struct LastWord {
    sweep::Interval widths;
    std::string word;
};

/// The widths at which the part ends with a line of each kind, rising.
std::map<LastLine, std::vector<LastWord>> lastWordsOf(const Subject& subject, const CheckedPart& part) {
    std::map<LastLine, std::vector<LastWord>> found;
    for (const sweep::Piece& piece : part.pieces.pieces) {
        if (piece.lines < 2) continue;
        const text::Paragraph& paragraph = paragraphIn(subject, part, piece);
        forEachLineLayout(
            subject, part, piece, [&](const sweep::Interval& span, const std::vector<std::uint32_t>& starts) {
                const LastLine last = lastLineOf(paragraph, starts.back(), subject.limits().shortWord);
                if (last == LastLine::Fine) return;
                found[last].push_back(
                    {span, text::toUtf8(paragraph.text().substr(paragraph.clusters()[starts.back()].begin))});
            });
    }
    return found;
}

/// Headings that end with such a line.
struct ShortEnding {
    Cause cause;
    std::string word;  ///< of the worst place
};

Statement statementOf(const Subject& subject, LastLine last, const ShortEnding& found) {
    const std::string widths = atWidths(subject, found.cause.there);
    const std::string heading = worstAndOthers(subject, found.cause);
    const std::string word = inQuotation(found.word);
    if (last == LastLine::OneWord)
        return {wording::say("%1, %2 has only %3 on its last line", {widths, heading, word}),
                wording::say("A single short word looks lost there"),
                wording::say("Put a no-break space before it, or change the text in the Words panel")};
    return {
        wording::say("%1, %2 has only the end of a word, %3, on its last line", {widths, heading, word}),
        wording::say("The end of a word is hard to read alone"),
        wording::say("Remove the soft hyphen or hyphen before it in the Words panel, so that the whole word "
                     "moves down")};
}

void checkLastWords(const Subject& subject, Findings& out) {
    std::map<LastLine, ShortEnding> endings;
    for (const CheckedPart& part : subject.parts) {
        if (!part.is("heading") || !subject.isOwnCopy(part)) continue;
        // A break in the text is a choice.
        const project::Copy& copy = part.text->copy;
        if (std::ranges::find(copy, project::Run::Kind::Break, &project::Run::kind) != copy.end()) continue;
        for (const auto& [last, words] : lastWordsOf(subject, part)) {
            std::vector<sweep::Interval> spans;
            for (const LastWord& one : words)
                spans.push_back(one.widths);
            join(spans);
            const double length = lengthOf(spans);
            if (length < subject.limits().lastWordRun) continue;
            ShortEnding& ending = endings[last];
            for (const sweep::Interval& span : spans) {
                if (!ending.cause.add(part.place, span, length + (span.to - span.from) / 1e6)) continue;
                const auto there = std::ranges::find_if(
                    words, [&](const LastWord& one) { return one.widths.to > ending.cause.at; });
                ending.word = there->word;
            }
        }
    }
    for (const auto& [last, found] : endings)
        report(out, found.cause,
               {Severity::Note, commonPractice(), statementOf(subject, last, found),
                last == LastLine::OneWord ? "" : "end"});
}

/// Replaces the last space of the text by a no-break space.
void joinLastWords(project::TextPart& text) {
    for (std::size_t i = text.copy.size(); i-- > 0;) {
        const std::string& own = text.copy[i].text;
        const std::size_t end = own.find_last_not_of(' ');
        const std::size_t space = end == std::string::npos ? end : own.rfind(' ', end);
        if (space == std::string::npos) continue;
        text.copy[i].text = own.substr(0, space) + "\u00A0" + own.substr(space + 1);
        return;
    }
}

/// Removes the last soft hyphen of the text.
void removeLastSoftHyphen(project::TextPart& text) {
    constexpr std::string_view hyphen = "\u00AD";
    for (std::size_t i = text.copy.size(); i-- > 0;) {
        const std::string& own = text.copy[i].text;
        const std::size_t at = own.rfind(hyphen);
        if (at == std::string::npos) continue;
        text.copy[i].text = own.substr(0, at) + own.substr(at + hyphen.size());
        return;
    }
}

void remedyLastWords(Candidates& out) {
    if (out.isFor("end"))
        out.editTexts(wording::say("Remove the last soft hyphen"),
                      [](project::TextPart& text, project::PartRef) { removeLastSoftHyphen(text); });
    else
        out.editTexts(wording::say("Put a no-break space before the last word"),
                      [](project::TextPart& text, project::PartRef) { joinLastWords(text); });
    for (const std::string& role : out.roles()) {
        out.set(wording::say("Balance the lines of %1", {roleText(role)}), Candidates::Scope::Look,
                [&](project::Settings& settings, std::size_t) {
                    settings.text.of(role).wrap = project::Wrap::Balance;
                });
        proposeSlightSizes(out, role);
    }
}

}  // namespace

extern const Check lastWordCheck{
    .name = "last-word", .run = checkLastWords, .dependsOnBreaks = true, .remedies = remedyLastWords};

}  // namespace tenter::checks
