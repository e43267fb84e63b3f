// Minimum lines that leave empty lines: every text in the line of cards has fewer. Common practice, no
// source.
#include <algorithm>
#include <map>

#include "checks/alignable.h"
#include "checks/check.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// Narrower ranges are not reported, CSS px.
constexpr double leastSpan = 5;

/// The spans that are in both lists.
std::vector<sweep::Interval> inBoth(const std::vector<sweep::Interval>& one,
                                    const std::vector<sweep::Interval>& other) {
    std::vector<sweep::Interval> both;
    for (const sweep::Interval& a : one)
        for (const sweep::Interval& b : other)
            if (std::max(a.from, b.from) < std::min(a.to, b.to))
                both.push_back({std::max(a.from, b.from), std::min(a.to, b.to)});
    return both;
}

void checkMinimumLines(const Subject& subject, Findings& out) {
    std::map<std::string, Cause> found;  // by role
    std::map<std::string, int> lines;
    double from = subject.least;
    for (std::size_t i = 0; i < subject.row.bandCount(); ++i) {
        const layout::BandPlan& band = subject.row.band(i);
        const sweep::Interval widths{from, std::min(subject.most, band.upTo.value_or(subject.most))};
        from = std::max(from, widths.to);
        if (!(widths.from < widths.to) || band.columns < 2) continue;
        // For each role and line of cards: the spans in which every text has fewer lines than kept.
        std::map<std::pair<std::string, std::size_t>, std::vector<sweep::Interval>> fewer;
        std::map<std::pair<std::string, std::size_t>, const CheckedPart*> first;
        for (const CheckedPart& part : subject.parts) {
            if (part.text == nullptr) continue;
            const int kept = *band.settings.text.find(part.text->role)->keepLines;
            if (kept < 2) continue;
            std::vector<sweep::Interval> here;
            for (const sweep::Piece& piece : part.pieces.pieces)
                if (static_cast<int>(piece.lines) < kept)
                    if (const auto cut = within(piece, widths)) here.push_back(*cut);
            join(here);
            const std::pair key{part.text->role, part.place.card / static_cast<std::size_t>(band.columns)};
            lines[part.text->role] = kept;
            if (first.emplace(key, &part).second)
                fewer[key] = std::move(here);
            else
                fewer[key] = inBoth(fewer[key], here);
        }
        for (const auto& [key, spans] : fewer)
            for (const sweep::Interval& span : spans)
                if (span.to - span.from >= leastSpan)
                    found[key.first].add(first[key]->place, span, span.to - span.from);
    }
    for (auto& [role, cause] : found) {
        join(cause.widths);
        if (lengthOf(cause.widths) < subject.limits().leastRun) continue;
        report(
            out, cause,
            {Severity::Note,
             commonPractice(),
             {wording::say("%1, %2 and its neighbours reserve space for %3, but none of them needs %4",
                           {atWidths(subject, cause.there), named(subject, cause.place),
                            lineCount(static_cast<std::size_t>(lines[role])), std::to_string(lines[role])}),
              wording::say("Each of these cards has an empty line"),
              canAlignParts(subject)
                  ? wording::say("Reduce the minimum at these widths (Text › Minimum lines), or align the "
                                 "parts instead (Row › Align parts)")
                  : wording::say("Reduce the minimum at these widths (Text › Minimum lines)")},
             "kept-" + role});
    }
}

void remedyMinimumLines(Candidates& out) {
    for (const std::string& role : out.roles()) {
        if (!out.isFor("kept-" + role)) continue;
        int most = 0;
        for (const std::size_t band : out.bands())
            most = std::max(most, out.settings(band).text.find(role)->keepLines.value_or(0));
        // One line is what every text has.
        for (int kept = most - 1; kept >= 0; kept = kept > 2 ? kept - 1 : kept - 2)
            out.set(
                kept > 0 ? wording::say("Reserve space for %1 of %2 at least",
                                        {lineCount(static_cast<std::size_t>(kept)), roleText(role)})
                         : wording::say("Reserve no lines of %1", {roleText(role)}),
                Candidates::Scope::Layout,
                [&](project::Settings& settings, std::size_t band) {
                    if (out.settings(band).text.find(role)->keepLines.value_or(0) > kept)
                        settings.text.of(role).keepLines = kept;
                },
                "minimum-lines");
        out.set(wording::say("Align parts of neighbouring cards instead of reserving lines"),
                Candidates::Scope::Layout, [&](project::Settings& settings, std::size_t) {
                    settings.text.of(role).keepLines = 0;
                    settings.row.level = project::Level::Subgrid;
                });
    }
}

}  // namespace

extern const Check minimumLinesCheck{
    .name = "spare-room", .run = checkMinimumLines, .dependsOnBreaks = true, .remedies = remedyMinimumLines};

}  // namespace tenter::checks
