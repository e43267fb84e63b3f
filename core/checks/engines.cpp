// Where two browser engines make other numbers of lines of the same copy, and which character does it.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"
#include "text/unicode.h"

namespace tenter::checks {

namespace {

/// Where the two part's numbers of lines differ; `found(span, one, other)`.
template <class Found>
void whereUnlike(const std::vector<sweep::Piece>& one, const std::vector<sweep::Piece>& other,
                 Found&& found) {
    std::size_t k = 0;
    for (const sweep::Piece& piece : one) {
        while (k < other.size() && other[k].to <= piece.from)
            ++k;
        for (std::size_t i = k; i < other.size() && other[i].from < piece.to; ++i) {
            const sweep::Interval both{std::max(piece.from, other[i].from), std::min(piece.to, other[i].to)};
            // Nearer than any engine's grid the two are one.
            if (both.to - both.from > 1e-3 && piece.lines != other[i].lines)
                found(both, piece.lines, other[i].lines);
        }
    }
}

std::set<std::uint32_t> breaksOf(const text::Paragraph& paragraph) {
    std::set<std::uint32_t> breaks;
    for (const text::Opportunity& at : paragraph.opportunities())
        if (at.cluster < paragraph.clusters().size()) breaks.insert(paragraph.clusters()[at.cluster].begin);
    return breaks;
}

/// The character after which only one of the two may break; empty if they may break alike.
std::string unlikeCharacter(const text::Paragraph& one, const text::Paragraph& other) {
    if (one.text() != other.text()) return {};
    const std::set<std::uint32_t> first = breaksOf(one);
    const std::set<std::uint32_t> second = breaksOf(other);
    std::vector<std::uint32_t> unlike;
    std::ranges::set_symmetric_difference(first, second, std::back_inserter(unlike));
    if (unlike.empty() || unlike.front() == 0) return {};
    std::size_t at = unlike.front() - 1;
    const std::u16string& text = one.text();
    if (at > 0 && (text[at] & 0xFC00) == 0xDC00) --at;
    return text::toUtf8(text.substr(at, unlike.front() - at));
}

struct UnlikeLines {
    Cause cause;
    std::uint32_t one = 0, other = 0;
};

}  // namespace

void checkEngines(const Subject& one, const Subject& other, Findings& out) {
    std::map<std::string, UnlikeLines> causes;
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        const PartSeen& part = one.parts[i];
        if (part.text == nullptr) continue;
        whereUnlike(part.pieces.pieces, other.parts[i].pieces.pieces,
                    [&](const sweep::Interval& span, std::uint32_t a, std::uint32_t b) {
                        const std::size_t band = one.row.bandAt(span.to);
                        const auto paragraphOf = [&](const Subject& subject) -> const text::Paragraph& {
                            return *subject.row.band(band).cards[part.card].parts[part.part].paragraph;
                        };
                        UnlikeLines& found = causes[unlikeCharacter(paragraphOf(one), paragraphOf(other))];
                        if (!found.cause.add(part.card, part.part, span, span.to - span.from)) return;
                        found.one = a;
                        found.other = b;
                    });
    }
    for (const auto& [character, found] : causes) {
        std::string counts = " takes " + std::to_string(found.one) + " lines in ";
        counts += one.row.profile().title();
        counts += " and " + std::to_string(found.other) + " in ";
        counts += other.row.profile().title();
        counts += " " + atWidths(found.cause.there);
        if (character.empty())
            counts += ": they shape or balance its lines otherwise. A slightly other size there settles it.";
        else
            counts += ": they break otherwise after " + inQuotation(character) +
                      ". A word joiner or a space there settles it.";
        tell(out, found.cause,
             {"engines", Severity::Warning, "measured in two browser engines",
              sentence(worstAndOthers(one, found.cause)) + counts, character});
    }
}

}  // namespace tenter::checks
