// Declarations of a page's theme that no stylesheet can override: `!important` in a cascade layer or in a
// style attribute. CSS Cascade 5 § 6.1 and § 6.4.
#include <map>
#include <mutex>

#include "checks/check.h"
#include "checks/phrases.h"
#include "markup/obstacles.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

using markup::Obstacle;

/// The obstacles of a given row. Rows are checked after every edit, and few edits change the markup or the
/// theme, so the last answer is kept.
std::vector<Obstacle> obstaclesOf(const project::Project& project) {
    static std::mutex mutex;
    static project::Given asked;
    static std::vector<Obstacle> answer;
    const std::lock_guard lock(mutex);
    if (asked == *project.row().given) return answer;
    project::Problems unused;
    const std::optional<markup::GivenRow> row = markup::givenRow(project, unused);
    if (!row) return {};
    answer = markup::obstaclesOf(*row, project.row().given->theme);
    asked = *project.row().given;
    return answer;
}

/// The properties that a rule sets for the elements of a role.
struct Conflict {
    Cause cause;
    std::string properties;
    Obstacle first;
};

std::string namedElements(const std::string& role) {
    if (role.empty()) return wording::say("elements around the parts");
    if (role == "row") return wording::say("the row");
    if (role == "card") return wording::say("the card");
    if (role == "picture") return wording::say("the picture");
    if (role == "body") return wording::say("the body");
    if (role == "heading") return wording::say("the heading");
    if (role == "button") return wording::say("the button");
    //: The elements of a role that the project names: the price
    return wording::say("the %1", {role});
}

/// What could not be read of the page around the row.
void reportUnread(const Subject& subject, Findings& out) {
    for (const wording::Sentence& unread : subject.project.row().given->unread) {
        std::string sentence = unread.worded();
        Cause cause;
        cause.add({0, 0}, subject.whole(), 0);
        // The advice at its end is that of the report of the import; earlier files have it in its language.
        constexpr std::string_view advice = wording::noted("Check the container in the project.");
        for (const std::string& end : {std::string(advice), wording::say(advice)})
            if (sentence.ends_with(". " + end)) sentence.resize(sentence.size() - end.size() - 2);
        if (sentence.ends_with('.')) sentence.pop_back();
        report(
            out, cause,
            {Severity::Error,
             "CSS 2 § 10.3, CSS Values 4",
             {sentence,
              wording::say("So the row on its page can be at another place, with another width than here"),
              wording::say("Import the row again and measure the page in a browser, or set the container of "
                           "the page")},
             sentence});
    }
}

void checkThemeObstacles(const Subject& subject, Findings& out) {
    if (!subject.project.row().given) return;
    const project::Given& given = *subject.project.row().given;
    reportUnread(subject, out);
    // A style attribute can have it too.
    const auto hasImportant = [](const std::string& text) {
        return text.find("important") != std::string::npos;
    };
    if (!hasImportant(given.theme) && !hasImportant(given.markup)) return;
    std::map<std::pair<std::string, std::string>, Conflict> conflicts;
    for (const Obstacle& obstacle : obstaclesOf(subject.project)) {
        Conflict& conflict = conflicts[{obstacle.selector, obstacle.role}];
        if (conflict.properties.empty()) conflict.first = obstacle;
        conflict.properties = conflict.properties.empty()
                                  ? obstacle.property
                                  : wording::say("%1, %2", {conflict.properties, obstacle.property});
        const std::size_t card = std::min(obstacle.card, subject.project.row().cards.size() - 1);
        const std::size_t parts = subject.project.row().cards[card].parts.size();
        conflict.cause.add({card, parts == 0 ? 0 : std::min(obstacle.part, parts - 1)}, subject.whole(), 0);
    }
    for (const auto& [key, conflict] : conflicts) {
        const std::string& origin = conflict.first.origin;
        const bool inAttribute = conflict.first.selector == wording::noted("style attribute");
        const std::string selector =
            inQuotation(inAttribute ? wording::say("style attribute") : conflict.first.selector);
        report(out, conflict.cause,
               {Severity::Error,
                "CSS Cascade 5 § 6.1, § 6.4",
                {wording::say(
                     "the theme’s rule %1 sets %2 of %3 with !important in a cascade layer or in a style "
                     "attribute",
                     {origin.empty() ? selector : wording::say("%1 in %2", {selector, origin}),
                      conflict.properties, namedElements(conflict.first.role)}),
                 wording::say(
                     "No stylesheet for the row can override it, so the row on the page differs from the "
                     "one here"),
                 wording::say("Remove !important from that rule in the theme")},
                key.first + key.second});
    }
}

}  // namespace

extern const Check themeObstaclesCheck{
    .name = "theme-obstacle", .run = checkThemeObstacles, .dependsOnBreaks = false};

}  // namespace tenter::checks
