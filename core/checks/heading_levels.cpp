// Headings of a page's own markup that skip a level. WCAG 2.2 SC 1.3.1, techniques H42 and G141. In Tenter's
// markup every card has the same level, and the headings before the row are unknown, so nothing is checked.
#include <algorithm>
#include <map>

#include "checks/check.h"
#include "checks/phrases.h"
#include "markup/given.h"
#include "markup/headings.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

using markup::NodeId;

/// The part that the heading element is, contains or is in; the card's first part if there is none. Empty if
/// the heading is outside the cards.
std::optional<project::PartRef> placeOf(const markup::GivenRow& row, NodeId heading) {
    for (std::size_t card = 0; card < row.cards.size(); ++card) {
        if (!row.tree.isWithin(heading, row.cards[card].node)) continue;
        const std::vector<markup::GivenPart>& parts = row.cards[card].parts;
        const auto part = std::ranges::find_if(parts, [&](const markup::GivenPart& one) {
            return row.tree.isWithin(one.node, heading) || row.tree.isWithin(heading, one.node);
        });
        return project::PartRef{card,
                                part == parts.end() ? 0 : static_cast<std::size_t>(part - parts.begin())};
    }
    return std::nullopt;
}

/// The level of the heading before, and the level that skips one or more.
using Skip = std::pair<int, int>;

Statement statementOf(const Subject& subject, const Cause& cause, const Skip& skip) {
    const auto tag = [](int level) { return "h" + std::to_string(level); };
    return {wording::say("%1 is an %2, but the heading before it is an %3",
                         {worstAndOthers(subject, cause), tag(skip.second), tag(skip.first)}),
            wording::say("Readers who navigate by headings notice a missing level"),
            wording::say("Make it an %1 in the page’s markup; its look can stay the same",
                         {tag(skip.first + 1)})};
}

void checkHeadingLevels(const Subject& subject, Findings& out) {
    if (!subject.project.row().given) return;
    project::Problems unused;
    const std::optional<markup::GivenRow> row = markup::givenRow(subject.project, unused);
    if (!row) return;
    std::map<Skip, Cause> causes;
    int before = subject.project.row().given->levelBefore.value_or(0);
    for (NodeId at = row->classElement; at != markup::noNode;
         at = row->tree.following(at, row->classElement)) {
        const int level = markup::headingLevelOf(row->tree[at]);
        if (level == 0) continue;
        const std::optional<project::PartRef> place = placeOf(*row, at);
        if (before > 0 && level > before + 1 && place && place->card < subject.project.row().cards.size() &&
            place->part < subject.project.row().cards[place->card].parts.size())
            causes[{before, level}].add(*place, subject.whole(), 0);
        before = level;
    }
    for (const auto& [skip, cause] : causes)
        report(out, cause,
               {Severity::Warning, "WCAG 2.2 SC 1.3.1, G141", statementOf(subject, cause, skip),
                std::to_string(skip.first) + std::to_string(skip.second)});
}

}  // namespace

extern const Check headingLevelsCheck{
    .name = "heading-levels", .run = checkHeadingLevels, .dependsOnBreaks = false};

}  // namespace tenter::checks
