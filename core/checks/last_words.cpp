// Headings whose last line is one short word, or the end of one, over a long run of widths. Common practice,
// no source.
#include <map>

#include "checks/laid_lines.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "text/unicode.h"

namespace tenter::checks {

namespace {

/// Why a last line looks lost.
enum class LastLine { Fine, OneWord, WordsEnd };

/// What the last line is that starts at cluster `first`.
LastLine lastLineOf(const text::Paragraph& paragraph, std::uint32_t first, double most) {
    const auto end = static_cast<std::uint32_t>(paragraph.clusters().size());
    if (first == 0 || paragraph.graphemes(first, end) > most) return LastLine::Fine;
    for (std::uint32_t i = first; i < end; ++i) {
        const char16_t unit = paragraph.text()[paragraph.clusters()[i].begin];
        if (paragraph.clusters()[i].space || unit == u'\u00A0') return LastLine::Fine;
    }
    if (paragraph.clusters()[first - 1].space) return LastLine::OneWord;
    const char16_t before = paragraph.text()[paragraph.clusters()[first - 1].begin];
    return before == u'\u00AD' || before == u'-' || before == u'\u2010' ? LastLine::WordsEnd : LastLine::Fine;
}

/// Widths at which headings end in such a line.
struct Lost {
    Cause cause;
    std::string word;  ///< of the worst
};

}  // namespace

void checkLastWords(const Subject& subject, Findings& out) {
    std::map<LastLine, Lost> lost;
    for (const PartSeen& part : subject.parts) {
        if (!part.is("heading") || !subject.isOwnCopy(part)) continue;
        // A break that the copy forces is meant.
        const project::Copy& copy = part.text->copy;
        if (std::ranges::find(copy, project::Run::Kind::Break, &project::Run::kind) != copy.end()) continue;
        std::map<LastLine, std::vector<sweep::Interval>> spans;
        std::map<LastLine, std::string> words;
        for (const sweep::Piece& piece : part.pieces.pieces) {
            if (piece.lines < 2) continue;
            const text::Paragraph& paragraph = paragraphIn(subject, part, piece);
            overLaidLines(
                subject, part, piece,
                [&](const sweep::Interval& span, const std::vector<std::uint32_t>& starts) {
                    const LastLine last = lastLineOf(paragraph, starts.back(), subject.limits().shortWord);
                    if (last == LastLine::Fine) return;
                    spans[last].push_back(span);
                    words[last] =
                        text::toUtf8(paragraph.text().substr(paragraph.clusters()[starts.back()].begin));
                });
        }
        for (auto& [last, there] : spans) {
            join(there);
            const double length = lengthOf(there);
            if (length < subject.limits().lastWordRun) continue;
            for (const sweep::Interval& span : there)
                if (lost[last].cause.add(part.card, part.part, span, length + (span.to - span.from) / 1e6))
                    lost[last].word = words[last];
        }
    }
    for (const auto& [last, found] : lost) {
        const std::string over = ", over " + px(std::floor(found.cause.worst), 0) + " of widths. ";
        const bool word = last == LastLine::OneWord;
        tell(out, found.cause,
             {"last-word", Severity::Note, "common practice, no source",
              sentence(worstAndOthers(subject, found.cause)) +
                  (word ? " ends in a line of one short word, "
                        : " ends in a line that is only the end of a word, ") +
                  inQuotation(found.word) + over +
                  (word ? "A no-break space before it keeps it company."
                        : "Without the place to hyphenate before it the word moves down whole."),
              word ? "" : "end"});
    }
}

}  // namespace tenter::checks
