// Headings that skip a level, in the markup that a page prints: who moves by headings looks for what is
// between. WCAG 2.2 SC 1.3.1, techniques H42 and G141. In markup of our own all cards have one level, and
// nothing is known of what stands before them.
#include <algorithm>
#include <map>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "markup/given.h"
#include "markup/headings.h"

namespace tenter::checks {

namespace {

using markup::NodeId;

/// A part of a card, by its place in the project.
using Place = std::pair<std::size_t, std::size_t>;

/// The part that a heading is, or holds, or stands in; the card's first if it is none. Empty outside cards.
std::optional<Place> placeOf(const markup::GivenRow& row, NodeId heading) {
    for (std::size_t card = 0; card < row.cards.size(); ++card) {
        if (!row.tree.isWithin(heading, row.cards[card].node)) continue;
        const std::vector<markup::GivenPart>& parts = row.cards[card].parts;
        const auto part = std::ranges::find_if(parts, [&](const markup::GivenPart& one) {
            return row.tree.isWithin(one.node, heading) || row.tree.isWithin(heading, one.node);
        });
        return Place(card, part == parts.end() ? 0 : part - parts.begin());
    }
    return std::nullopt;
}

/// The level before, and the one that skips.
using Skip = std::pair<int, int>;

std::string says(const Subject& subject, const Cause& cause, const Skip& skip) {
    const auto tag = [](int level) { return "h" + std::to_string(level); };
    return sentence(worstAndOthers(subject, cause)) + " is an " + tag(skip.second) +
           " where the heading before it is an " + tag(skip.first) +
           ": whoever moves through the page by its headings looks for what is between. An " +
           tag(skip.first + 1) + " mends it, and may look as it does now.";
}

}  // namespace

void checkHeadingLevels(const Subject& subject, Findings& out) {
    if (!subject.project.given) return;
    project::Problems untold;
    const std::optional<markup::GivenRow> row = markup::givenRow(subject.project, untold);
    if (!row) return;
    std::map<Skip, Cause> causes;
    int before = subject.project.given->levelBefore.value_or(0);
    for (NodeId at = row->classElement; at != markup::noNode;
         at = row->tree.following(at, row->classElement)) {
        const int level = markup::headingLevelOf(row->tree[at]);
        if (level == 0) continue;
        const std::optional<Place> place = placeOf(*row, at);
        if (before > 0 && level > before + 1 && place && place->first < subject.project.cards.size() &&
            place->second < subject.project.cards[place->first].parts.size())
            causes[{before, level}].add(place->first, place->second, subject.whole(), 0);
        before = level;
    }
    for (const auto& [skip, cause] : causes)
        tell(out, cause,
             {"heading-levels", Severity::Warning, "WCAG 2.2 SC 1.3.1, G141", says(subject, cause, skip),
              std::to_string(skip.first) + std::to_string(skip.second)});
}

}  // namespace tenter::checks
