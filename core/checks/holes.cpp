// A last line of cards with holes; worse where another column count of the project would fill it. Common
// practice, no source.
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "layout/prepared.h"
#include "project/cascade.h"

namespace tenter::checks {

namespace {

/// Column counts above 1 that the project's variants use.
std::set<std::size_t> columnCounts(const project::Project& project) {
    std::set<std::size_t> counts;
    for (const project::Variant& variant : project.variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const int columns = project::resolve(project, variant, band).row.columns.value_or(1);
            if (columns > 1) counts.insert(static_cast<std::size_t>(columns));
        }
    return counts;
}

}  // namespace

void checkHoles(const Subject& subject, Findings& out) {
    const std::size_t cards = subject.project.cards.size();
    std::map<std::size_t, std::vector<sweep::Interval>> spans;  // by column count
    sweep::overBands(subject.row, subject.least, subject.most, [&](std::size_t at, double from, double to) {
        const layout::BandPlan& band = subject.row.band(at);
        const auto columns = static_cast<std::size_t>(band.columns);
        // A centred last line is meant to be one.
        if (!band.centred && cards % columns != 0) spans[columns].push_back({from, to});
        return to;
    });
    if (spans.empty()) return;
    const auto empty = [&](std::size_t columns) { return (columns - cards % columns) % columns; };
    const auto places = [](std::size_t count) {
        return std::to_string(count) + (count == 1 ? " place" : " places");
    };
    Cause cause;
    std::string worst;
    std::size_t least = cards;  // places left empty by the best of the counts there are
    std::size_t best = 0;
    for (const std::size_t count : columnCounts(subject.project))
        if (empty(count) <= least) {
            least = empty(count);
            best = count;
        }
    std::size_t most = 0;
    for (const auto& [columns, there] : spans)
        for (const sweep::Interval& span : there)
            if (cause.add(cards - 1, 0, span, static_cast<double>(empty(columns)))) {
                most = empty(columns);
                worst = std::to_string(cards) + " cards in " + std::to_string(columns) + " columns leave " +
                        places(most) + " of the last line empty ";
            }
    std::string mend = " Centre the last line.";
    if (best > 0 && least == 0)
        mend = " " + std::to_string(best) + " columns fill every line; or centre the last one.";
    else if (best > 0 && least < most)
        mend = " " + std::to_string(best) + " columns leave " + std::to_string(least) +
               "; or centre the last line.";
    tell(out, cause,
         {"holes", least == 0 ? Severity::Warning : Severity::Note, "common practice, no source",
          worst + atWidths(subject, cause.there) + ": it looks unfinished." + mend, ""});
}

}  // namespace tenter::checks
