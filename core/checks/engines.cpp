// Texts to which browser engines give different line counts, and the character that causes it.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "layout/inline_sizes.h"
#include "project/wording.h"
#include "text/unicode.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

std::set<std::uint32_t> breaksOf(const text::Paragraph& paragraph) {
    std::set<std::uint32_t> breaks;
    for (const text::Opportunity& at : paragraph.opportunities())
        if (at.cluster < paragraph.clusters().size()) breaks.insert(paragraph.clusters()[at.cluster].begin);
    return breaks;
}

/// The part's lines at `width`.
std::vector<text::Line> brokenAt(const Subject& subject, const CheckedPart& part, double width) {
    const layout::IntervalPlan& interval = subject.row.at(width);
    const layout::PartPlan& plan = interval.part(part.place);
    std::vector<text::Line> lines;
    text::breakLines(*plan.paragraph,
                     layout::textInlineSizes<double>(interval.roles[plan.role], *plan.paragraph,
                                                     layout::inlineSizesAt(interval, width))
                         .query,
                     subject.row.profile(), lines);
    return lines;
}

const text::Paragraph& paragraphOf(const Subject& subject, const CheckedPart& part, double width) {
    return *subject.row.band(subject.row.bandAt(width)).part(part.place).paragraph;
}

/// The offsets in UTF-16 units at which the part's lines start at `width`.
std::vector<std::uint32_t> startsAt(const Subject& subject, const CheckedPart& part, double width) {
    const text::Paragraph& paragraph = paragraphOf(subject, part, width);
    const std::vector<text::Line> lines = brokenAt(subject, part, width);
    std::vector<std::uint32_t> starts;
    starts.reserve(lines.size());
    for (const text::Line& line : lines)
        starts.push_back(paragraph.clusters()[line.first].begin);
    return starts;
}

/// A line break that some profiles allow and others do not.
struct PartialBreak {
    std::string after;                  ///< the character before it; empty if all allow the same breaks
    std::string written;                ///< the word around it, with `<wbr>` at the break
    std::vector<std::string> allowing;  ///< the browsers that allow it
};

/// The first such break among the lines of the part at `width`.
PartialBreak partialBreak(const Subjects& subjects, const CheckedPart& part, double width) {
    const std::u16string& text = paragraphOf(subjects.front(), part, width).text();
    std::vector<std::set<std::uint32_t>> allowed;  // by subject
    for (const Subject& subject : subjects) {
        const text::Paragraph& paragraph = paragraphOf(subject, part, width);
        if (paragraph.text() != text) return {};
        allowed.push_back(breaksOf(paragraph));
    }
    const auto allows = [](std::uint32_t at) {
        return [at](const std::set<std::uint32_t>& breaks) { return breaks.contains(at); };
    };
    std::set<std::uint32_t> made;
    for (const Subject& subject : subjects)
        for (const std::uint32_t start : startsAt(subject, part, width))
            if (start > 0 && std::ranges::any_of(allowed, allows(start)) &&
                !std::ranges::all_of(allowed, allows(start)))
                made.insert(start);
    if (made.empty()) return {};
    const std::uint32_t at = *made.begin();
    std::size_t before = at - 1;
    if (before > 0 && (text[before] & 0xFC00) == 0xDC00) --before;
    const std::size_t space = text.rfind(u' ', before);
    const std::size_t from = space == std::u16string::npos ? 0 : space + 1;
    const std::size_t to = std::min(text.find(u' ', at), text.size());
    PartialBreak found{
        text::toUtf8(text.substr(before, at - before)),
        text::toUtf8(text.substr(from, at - from)) + "<wbr>" + text::toUtf8(text.substr(at, to - at)),
        {}};
    for (std::size_t i = 0; i < subjects.size(); ++i)
        if (allowed[i].contains(at)) found.allowing.emplace_back(subjects[i].row.profile().title());
    return found;
}

/// A range of widths and the line counts of one part there, by subject.
struct Counts {
    sweep::Interval widths;
    std::vector<std::uint32_t> lines;
};

/// The ranges in which the part with index `index` has the same line counts under all profiles or differing
/// ones, rising.
std::vector<Counts> countsOf(const Subjects& subjects, std::size_t index) {
    std::vector<Counts> all;
    for (const sweep::Piece& piece : subjects.front().parts[index].pieces.pieces)
        all.push_back({{piece.from, piece.to}, {piece.lines}});
    for (std::size_t i = 1; i < subjects.size(); ++i) {
        const std::vector<sweep::Piece>& pieces = subjects[i].parts[index].pieces.pieces;
        std::vector<Counts> finer;
        std::size_t k = 0;
        for (const Counts& counts : all) {
            while (k < pieces.size() && pieces[k].to <= counts.widths.from)
                ++k;
            for (std::size_t j = k; j < pieces.size() && pieces[j].from < counts.widths.to; ++j) {
                const auto both = within(pieces[j], counts.widths);
                if (!both) continue;
                finer.push_back({*both, counts.lines});
                finer.back().lines.push_back(pieces[j].lines);
            }
        }
        all = std::move(finer);
    }
    return all;
}

/// Widths at which the line counts differ for one reason.
struct DifferentLines {
    Cause cause;
    std::vector<std::uint32_t> lines;  ///< line counts at the worst place, by subject
    PartialBreak at;                   ///< there
};

/// `3 lines in Chromium and 2 in Firefox`: each line count with the browsers that have it.
std::string countsByBrowser(const Subjects& subjects, const std::vector<std::uint32_t>& lines) {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (std::find(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(i), lines[i]) !=
            lines.begin() + static_cast<std::ptrdiff_t>(i))
            continue;
        std::vector<std::string> browsers;
        for (std::size_t j = i; j < lines.size(); ++j)
            if (lines[j] == lines[i]) browsers.emplace_back(subjects[j].row.profile().title());
        //: A line count, in a browser: 3 lines in Chromium and 2 in Firefox
        all.push_back(wording::say("%1 in %2", {all.empty() ? lineCount(lines[i]) : std::to_string(lines[i]),
                                                project::listed(browsers)}));
    }
    return project::listed(all);
}

Statement statementOf(const Subjects& subjects, const DifferentLines& found) {
    const Subject& one = subjects.front();
    const bool two = subjects.size() == 2;
    const std::string what =
        wording::say("%1, %2 has %3", {atWidths(one, found.cause.there), worstAndOthers(one, found.cause),
                                       countsByBrowser(subjects, found.lines)});
    if (found.at.after.empty())
        return {what,
                two ? wording::say("The two browsers shape or balance its lines differently")
                    : wording::say("The browsers shape or balance its lines differently"),
                changeSizeSlightly()};
    const std::string written = inQuotation(found.at.written);
    const std::string allowing = project::listed(found.at.allowing);
    const std::string after = inQuotation(found.at.after);
    // Another character may be the hyphen that does not break.
    const bool hyphen = found.at.after == "-";
    return {what,
            found.at.allowing.size() == 1 ? wording::say("Only %1 breaks a line after %2", {allowing, after})
                                          : wording::say("Only %1 break a line after %2", {allowing, after}),
            two && hyphen ? wording::say("Write %1 to allow the break in both browsers, or write &#8209; "
                                         "instead of “-” to prevent it",
                                         {written})
            : two         ? wording::say("Write %1 to allow the break in both browsers", {written})
            : hyphen
                ? wording::say("Write %1 to allow the break in all browsers, or write &#8209; instead of "
                               "“-” to prevent it",
                               {written})
                : wording::say("Write %1 to allow the break in all browsers", {written})};
}

/// Narrower ranges in which line counts differ are not reported: browsers lay out at whole px, and their
/// rounding moves wrap points by as much. CSS px.
constexpr double narrowestDifference = 0.5;

/// True if rounding alone can cause another line count at `width`: a line has next to no slack there.
bool isRounding(const Subjects& subjects, const CheckedPart& part, double width) {
    return std::ranges::any_of(subjects, [&](const Subject& subject) {
        const std::vector<text::Line> lines = brokenAt(subject, part, width);
        return std::ranges::any_of(lines, [](const auto& line) { return line.slack < text::roundingSlack; });
    });
}

void compareEngines(const Subjects& subjects, Findings& out) {
    const std::vector<CheckedPart>& parts = subjects.front().parts;
    std::map<std::string, DifferentLines> causes;  // by the character before the break
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i].text == nullptr) continue;
        for (const Counts& counts : countsOf(subjects, i)) {
            const sweep::Interval& span = counts.widths;
            const bool same = std::ranges::all_of(
                counts.lines, [&](std::uint32_t lines) { return lines == counts.lines.front(); });
            if (same || span.to - span.from <= narrowestDifference) continue;
            const double middle = (span.from + span.to) / 2;
            const PartialBreak at = partialBreak(subjects, parts[i], middle);
            if (at.after.empty() && isRounding(subjects, parts[i], middle)) continue;
            DifferentLines& found = causes[at.after];
            if (!found.cause.add(parts[i].place, span, span.to - span.from)) continue;
            found.lines = counts.lines;
            found.at = at;
        }
    }
    const std::string source =
        subjects.size() == 2
            ? wording::say("measured in two browsers")
            : wording::sayCount("measured in %n browser", "measured in %n browsers", subjects.size());
    for (const auto& [character, found] : causes)
        report(out, found.cause, {Severity::Warning, source, statementOf(subjects, found), character});
}

/// The words with such a break after `character`, in the texts of the finding.
std::set<std::string> wordsToWrite(const Candidates& out, const std::string& character) {
    std::set<std::string> words;
    const std::vector<project::PartRef>& places = out.finding().places;
    const std::vector<CheckedPart>& parts = out.subjects().front().parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (std::ranges::find(places, parts[i].place) == places.end()) continue;
        for (const Counts& counts : countsOf(out.subjects(), i)) {
            const sweep::Interval& span = counts.widths;
            if (std::ranges::count(counts.lines, counts.lines.front()) ==
                static_cast<std::ptrdiff_t>(counts.lines.size()))
                continue;
            const PartialBreak at = partialBreak(out.subjects(), parts[i], (span.from + span.to) / 2);
            if (at.after == character) words.insert(at.written);
        }
    }
    return words;
}

/// Writes `mark` at the break of each of `words` in the text.
void writeAtBreaks(project::TextPart& text, const std::set<std::string>& words, const std::string& mark) {
    constexpr std::string_view breakMark = "<wbr>";
    for (const std::string& word : words) {
        const std::size_t at = word.find(breakMark);
        const std::string before = word.substr(0, at);
        const std::string after = word.substr(at + breakMark.size());
        for (project::Run& run : text.copy) {
            const std::string& own = run.text;
            const std::size_t found = own.find(before + after);
            if (found == std::string::npos) continue;
            std::string marked = own.substr(0, found);
            marked.append(before).append(mark).append(own, found + before.size());
            run.text = marked;
        }
    }
}

void remedyEngines(Candidates& out) {
    std::set<std::string> characters;
    for (const CheckedPart& part : out.subject().parts)
        if (part.text != nullptr)
            for (const char16_t unit : text::toUtf16(project::plainText(part.text->copy)))
                characters.insert(text::toUtf8(std::u16string(1, unit)));
    for (const std::string& character : characters) {
        if (character.empty() || !out.isFor(character)) continue;
        const std::set<std::string> words = wordsToWrite(out, character);
        if (words.empty()) continue;
        const std::string quoted = inQuotation(character);
        for (const auto& [mark, label] :
             {std::pair{"\u200B", wording::say("Allow a line break after %1 in every browser", {quoted})},
              std::pair{"\u2060", wording::say("Prevent a line break after %1 in every browser", {quoted})}})
            out.editTexts(label,
                          [words, mark = std::string(mark)](project::TextPart& text, project::PartRef) {
                              writeAtBreaks(text, words, mark);
                          });
    }
    for (const std::string& role : out.roles())
        proposeSlightSizes(out, role);
}

}  // namespace

extern const Check enginesCheck{
    .name = "engines", .dependsOnBreaks = true, .compare = compareEngines, .remedies = remedyEngines};

}  // namespace tenter::checks
