// Where two browser engines make other numbers of lines of the same copy, and which character does it.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/across.h"
#include "text/unicode.h"

namespace tenter::checks {

namespace {

std::set<std::uint32_t> breaksOf(const text::Paragraph& paragraph) {
    std::set<std::uint32_t> breaks;
    for (const text::Opportunity& at : paragraph.opportunities())
        if (at.cluster < paragraph.clusters().size()) breaks.insert(paragraph.clusters()[at.cluster].begin);
    return breaks;
}

/// Where the part's lines start at `width`: offsets in UTF-16 units.
std::vector<std::uint32_t> startsAt(const Subject& subject, const PartSeen& part, double width) {
    const layout::BandPlan& band = subject.row.band(subject.row.bandAt(width));
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    const text::Paragraph& paragraph = *plan.paragraph;
    std::vector<text::Line> lines;
    text::breakLines(
        paragraph,
        layout::textAcross<double>(band.roles[plan.role], paragraph, layout::acrossAt(band, width)).query,
        subject.row.profile(), lines);
    std::vector<std::uint32_t> starts;
    starts.reserve(lines.size());
    for (const text::Line& line : lines)
        starts.push_back(paragraph.clusters()[line.first].begin);
    return starts;
}

/// A break that one of the two makes and the other may not.
struct UnlikeBreak {
    std::string after;    ///< the character before it; empty if they may break alike
    std::string written;  ///< the word around it, `<wbr>` where it is
};

const text::Paragraph& paragraphOf(const Subject& subject, const PartSeen& part, double width) {
    return *subject.row.band(subject.row.bandAt(width)).cards[part.card].parts[part.part].paragraph;
}

/// The first such break of the part's lines at `width`.
UnlikeBreak unlikeBreak(const Subject& one, const Subject& other, const PartSeen& part, double width) {
    const text::Paragraph& paragraph = paragraphOf(one, part, width);
    const text::Paragraph& beside = paragraphOf(other, part, width);
    const std::u16string& text = paragraph.text();
    if (text != beside.text()) return {};
    const std::set<std::uint32_t> first = breaksOf(paragraph);
    const std::set<std::uint32_t> second = breaksOf(beside);
    std::set<std::uint32_t> made;
    for (const Subject* subject : {&one, &other})
        for (const std::uint32_t start : startsAt(*subject, part, width))
            if (start > 0 && first.contains(start) != second.contains(start)) made.insert(start);
    if (made.empty()) return {};
    const std::size_t at = *made.begin();
    std::size_t before = at - 1;
    if (before > 0 && (text[before] & 0xFC00) == 0xDC00) --before;
    const std::size_t space = text.rfind(u' ', before);
    const std::size_t from = space == std::u16string::npos ? 0 : space + 1;
    const std::size_t to = std::min(text.find(u' ', at), text.size());
    return {text::toUtf8(text.substr(before, at - before)),
            text::toUtf8(text.substr(from, at - from)) + "<wbr>" + text::toUtf8(text.substr(at, to - at))};
}

struct UnlikeLines {
    Cause cause;
    std::uint32_t one = 0, other = 0;
    std::string written;  ///< of the worst
};

/// What to write instead: a hyphen that keeps its word whole, or a place at which both may break.
std::string mendOf(const std::string& after, const std::string& written) {
    const std::string hyphen =
        after == "-" ? "With &#8209; (a hyphen that does not break, if the font has it) neither does. " : "";
    return hyphen + "Written as " + inQuotation(written) + " both may.";
}

}  // namespace

void checkEngines(const Subject& one, const Subject& other, Findings& out) {
    std::map<std::string, UnlikeLines> causes;
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        const PartSeen& part = one.parts[i];
        if (part.text == nullptr) continue;
        whereUnlike(part.pieces.pieces, other.parts[i].pieces.pieces,
                    [&](const sweep::Interval& span, std::uint32_t a, std::uint32_t b) {
                        const UnlikeBreak unlike = unlikeBreak(one, other, part, (span.from + span.to) / 2);
                        UnlikeLines& found = causes[unlike.after];
                        if (!found.cause.add(part.card, part.part, span, span.to - span.from)) return;
                        found.written = unlike.written;
                        found.one = a;
                        found.other = b;
                    });
    }
    for (const auto& [character, found] : causes) {
        std::string counts =
            " takes " + std::to_string(found.one) + (found.one == 1 ? " line in " : " lines in ");
        counts += one.row.profile().title();
        counts += " and " + std::to_string(found.other) + " in ";
        counts += other.row.profile().title();
        counts += " " + atWidths(one, found.cause.there);
        if (character.empty())
            counts += ": they shape or balance its lines otherwise. A slightly other size there settles it.";
        else
            counts += ": only one of them breaks after " + inQuotation(character) + ". " +
                      mendOf(character, found.written);
        tell(out, found.cause,
             {"engines", Severity::Warning, "measured in two browser engines",
              sentence(worstAndOthers(one, found.cause)) + counts, character});
    }
}

}  // namespace tenter::checks
