// A last line of cards with holes where another column count of the project would fill it. Common practice,
// no source.
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
    double from = subject.least;
    for (std::size_t i = 0; i < subject.row.bandCount(); ++i) {
        const layout::BandPlan& band = subject.row.band(i);
        const double to = std::min(subject.most, band.upTo.value_or(subject.most));
        const auto columns = static_cast<std::size_t>(band.columns);
        // A centred last line is meant to be one.
        if (to > from && !band.centred && cards % columns != 0) spans[columns].push_back({from, to});
        from = std::max(from, to);
    }
    if (spans.empty()) return;
    std::string filling;
    for (const std::size_t count : columnCounts(subject.project))
        if (cards % count == 0) filling = std::to_string(count);
    if (filling.empty()) return;
    Cause cause;
    std::string worst;
    for (const auto& [columns, there] : spans)
        for (const sweep::Interval& span : there)
            if (cause.add(cards - 1, 0, span, static_cast<double>(columns - cards % columns)))
                worst = std::to_string(cards) + " cards in " + std::to_string(columns) + " columns leave " +
                        std::to_string(columns - cards % columns) +
                        (columns - cards % columns == 1 ? " place" : " places") + " of the last line empty ";
    tell(out, cause,
         {"holes", Severity::Warning, "common practice, no source",
          worst + atWidths(cause.there) + ": it looks unfinished. " + filling +
              " columns fill every line; or centre the last one.",
          ""});
}

}  // namespace tenter::checks
