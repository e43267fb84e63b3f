// Texts to which two browser engines give different line counts, and the character that causes it.
#include <algorithm>
#include <cmath>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/inline_sizes.h"
#include "text/unicode.h"

namespace tenter::checks {

namespace {

std::set<std::uint32_t> breaksOf(const text::Paragraph& paragraph) {
    std::set<std::uint32_t> breaks;
    for (const text::Opportunity& at : paragraph.opportunities())
        if (at.cluster < paragraph.clusters().size()) breaks.insert(paragraph.clusters()[at.cluster].begin);
    return breaks;
}

/// The offsets in UTF-16 units at which the part's lines start at `width`.
std::vector<std::uint32_t> startsAt(const Subject& subject, const CheckedPart& part, double width) {
    const layout::BandPlan& band = subject.row.band(subject.row.bandAt(width));
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    const text::Paragraph& paragraph = *plan.paragraph;
    std::vector<text::Line> lines;
    text::breakLines(
        paragraph,
        layout::textInlineSizes<double>(band.roles[plan.role], paragraph, layout::inlineSizesAt(band, width))
            .query,
        subject.row.profile(), lines);
    std::vector<std::uint32_t> starts;
    starts.reserve(lines.size());
    for (const text::Line& line : lines)
        starts.push_back(paragraph.clusters()[line.first].begin);
    return starts;
}

/// A line break that only one of two profiles allows.
struct OneSidedBreak {
    std::string after;          ///< the character before it; empty if both allow the same breaks
    std::string written;        ///< the word around it, with `<wbr>` at the break
    std::string_view allowing;  ///< the browser that allows it
};

const text::Paragraph& paragraphOf(const Subject& subject, const CheckedPart& part, double width) {
    return *subject.row.band(subject.row.bandAt(width)).cards[part.card].parts[part.part].paragraph;
}

/// The first such break among the lines of the part at `width`.
OneSidedBreak oneSidedBreak(const Subject& one, const Subject& other, const CheckedPart& part, double width) {
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
    const std::uint32_t at = *made.begin();
    std::size_t before = at - 1;
    if (before > 0 && (text[before] & 0xFC00) == 0xDC00) --before;
    const std::size_t space = text.rfind(u' ', before);
    const std::size_t from = space == std::u16string::npos ? 0 : space + 1;
    const std::size_t to = std::min(text.find(u' ', at), text.size());
    return {text::toUtf8(text.substr(before, at - before)),
            text::toUtf8(text.substr(from, at - from)) + "<wbr>" + text::toUtf8(text.substr(at, to - at)),
            (first.contains(at) ? one : other).row.profile().title()};
}

/// Widths at which the two line counts differ for one reason.
struct DifferentLines {
    Cause cause;
    std::uint32_t one = 0, other = 0;  ///< line counts at the worst place
    OneSidedBreak at;                  ///< there
};

Statement statementOf(const Subject& one, const Subject& other, const DifferentLines& found) {
    const std::string what = atWidths(one, found.cause.there) + " " + worstAndOthers(one, found.cause) +
                             " has " + lineCount(found.one) + " in " +
                             std::string(one.row.profile().title()) + " and " + std::to_string(found.other) +
                             " in " + std::string(other.row.profile().title());
    if (found.at.after.empty())
        return {what, "The two browsers shape or balance its lines differently",
                "Change the font size a little there (Text › Font size)"};
    // Another character may be the hyphen that does not break.
    const std::string hyphen =
        found.at.after == "-" ? ", or &#8209; instead of “-” to prevent it" : std::string();
    return {what,
            "Only " + std::string(found.at.allowing) + " breaks a line after " + inQuotation(found.at.after),
            "Write " + inQuotation(found.at.written) + " to allow the break in both" + hyphen};
}

}  // namespace

void checkEngines(const Subject& one, const Subject& other, Findings& out) {
    std::map<std::string, DifferentLines> causes;  // by the character before the break
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        const CheckedPart& part = one.parts[i];
        if (part.text == nullptr) continue;
        whereLineCountsDiffer(part.pieces.pieces, other.parts[i].pieces.pieces,
                              [&](const sweep::Interval& span, std::uint32_t a, std::uint32_t b) {
                                  const OneSidedBreak at =
                                      oneSidedBreak(one, other, part, (span.from + span.to) / 2);
                                  DifferentLines& found = causes[at.after];
                                  if (!found.cause.add(part.card, part.part, span, span.to - span.from))
                                      return;
                                  found.one = a;
                                  found.other = b;
                                  found.at = at;
                              });
    }
    for (const auto& [character, found] : causes)
        report(out, found.cause,
               {"engines", Severity::Warning, "measured in two browser engines",
                statementOf(one, other, found), character});
}

}  // namespace tenter::checks
