// Empty places in the last line of cards. It is a warning if another column count of the project fills the
// line. Common practice, no source.
#include <map>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "project/cascade.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// The column counts above 1 that the project's variants use.
std::set<std::size_t> columnCounts(const project::Project& project) {
    std::set<std::size_t> counts;
    for (const project::Variant& variant : project.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const int columns = project::resolve(project, variant, band).row.columns.value_or(1);
            if (columns > 1) counts.insert(static_cast<std::size_t>(columns));
        }
    return counts;
}

/// Empty places in the last line of `cards` cards in `columns` columns.
std::size_t emptyPlaces(std::size_t cards, std::size_t columns) {
    return (columns - cards % columns) % columns;
}

/// The widest column count of the project that leaves the fewest places empty.
struct BestCount {
    std::size_t columns = 0;  ///< 0 if the project has no count above 1
    std::size_t empty = 0;
};

BestCount bestCountOf(const project::Project& project) {
    BestCount best;
    for (const std::size_t count : columnCounts(project)) {
        const std::size_t empty = emptyPlaces(project.row().cards.size(), count);
        if (best.columns == 0 || empty <= best.empty) best = {count, empty};
    }
    return best;
}

std::string fixOf(const BestCount& best, std::size_t empty) {
    const std::string columns = std::to_string(best.columns);
    if (best.columns > 0 && best.empty == 0)
        return wording::say(
            "Use %1 columns (Row › Columns), which fill every line, or centre the last line of "
            "cards (Row › Last line of cards)",
            {columns});
    if (best.columns > 0 && best.empty < empty)
        return wording::sayCount(
            "Use %1 columns (Row › Columns), which leave %n place empty, or centre the last "
            "line of cards (Row › Last line of cards)",
            "Use %1 columns (Row › Columns), which leave %n places empty, or centre the "
            "last line of cards (Row › Last line of cards)",
            best.empty, {columns});
    return wording::say("Centre the last line of cards (Row › Last line of cards)");
}

void checkHoles(const Subject& subject, Findings& out) {
    const std::size_t cards = subject.project.row().cards.size();
    std::map<std::size_t, std::vector<sweep::Interval>> spans;  // by column count
    sweep::walkBands(subject.row, subject.least, subject.most, [&](std::size_t at, double from, double to) {
        const layout::BandPlan& band = subject.row.band(at);
        const auto columns = static_cast<std::size_t>(band.columns);
        // A centred last line is a choice.
        if (!band.centred && cards % columns != 0) spans[columns].push_back({from, to});
        return to;
    });
    if (spans.empty()) return;
    Cause cause;
    std::size_t worst = 1;  // column count
    for (const auto& [columns, there] : spans)
        for (const sweep::Interval& span : there)
            if (cause.add({cards - 1, 0}, span, static_cast<double>(emptyPlaces(cards, columns))))
                worst = columns;
    const BestCount best = bestCountOf(subject.project);
    const std::size_t empty = emptyPlaces(cards, worst);
    const bool canFill = best.columns > 0 && best.empty == 0;
    report(out, cause,
           {canFill ? Severity::Warning : Severity::Note,
            commonPractice(),
            {wording::sayCount("%1, %n of %2 places in the last line of cards is empty",
                               "%1, %n of %2 places in the last line of cards are empty", empty,
                               {atWidths(subject, cause.there), std::to_string(worst)}),
             wording::say("The row looks unfinished"), fixOf(best, empty)}});
}

void remedyHoles(Candidates& out) {
    const std::size_t cards = out.subject().project.row().cards.size();
    // The nearest counts first.
    for (const int step : {-1, 1, -2, 2, -3, 3})
        out.set(
            step < 0 ? wording::say("Use fewer columns that fill every line of cards")
                     : wording::say("Use more columns that fill every line of cards"),
            Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t band) {
                const int now = out.settings(band).row.columns.value_or(1);
                const int columns = now + step;
                if (emptyPlaces(cards, static_cast<std::size_t>(now)) == 0 || columns < 2) return;
                if (columns <= 12 && emptyPlaces(cards, static_cast<std::size_t>(columns)) == 0)
                    settings.row.columns = columns;
            },
            step < 0 ? "fewer-columns" : "more-columns");
    out.set(
        wording::say("Centre the last line of cards"), Candidates::Scope::Layout,
        [&](project::Settings& settings, std::size_t) { settings.row.lastLine = project::LastLine::Center; });
}

}  // namespace

extern const Check holesCheck{
    .name = "holes", .run = checkHoles, .dependsOnBreaks = false, .remedies = remedyHoles};

}  // namespace tenter::checks
