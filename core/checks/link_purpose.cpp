// Links with the same name and different addresses. WCAG 2.2 SC 2.4.4, SC 2.4.9 (AAA).
#include <map>

#include "checks/check.h"
#include "checks/labels.h"
#include "checks/phrases.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// `card 1 and 3 others have links named “More” that lead to 2 different addresses`.
std::string whatOf(const Cause& cause, const std::string& name, std::size_t addresses) {
    std::set<std::size_t> cards;
    for (const project::PartRef& place : cause.places)
        cards.insert(place.card);
    const std::string first = std::to_string(*cards.begin() + 1);
    const std::string quoted = inQuotation(name);
    const std::string count = std::to_string(addresses);
    if (cards.size() == 1)
        return wording::say("card %1 has links named %2 that lead to %3 different addresses",
                            {first, quoted, count});
    return wording::sayCount("card %1 and %n other have links named %2 that lead to %3 different addresses",
                             "card %1 and %n others have links named %2 that lead to %3 different addresses",
                             cards.size() - 1, {first, quoted, count});
}

void checkLinkPurpose(const Subject& subject, Findings& out) {
    std::map<std::string, std::vector<const CheckedPart*>> byName;
    for (const CheckedPart& part : subject.parts)
        if (part.text != nullptr && isLink(*part.text))
            byName[plainLabel(nameOf(*part.text))].push_back(&part);
    for (const auto& [name, parts] : byName) {
        std::set<std::string> addresses;
        Cause cause;
        for (const CheckedPart* part : parts) {
            addresses.insert(part->text->link);
            cause.add(part->place, subject.whole(), 0);
        }
        if (name.empty() || addresses.size() < 2) continue;
        report(out, cause,
               {Severity::Note,
                "WCAG 2.2 SC 2.4.4",
                {whatOf(cause, nameOf(*parts.front()->text), addresses.size()),
                 wording::say("In a list of links they look the same"),
                 wording::say("Give each link its own text, or a name that starts with this text (Words › "
                              "Accessible name)")},
                name});
    }
}

/// The text of the card's heading; empty if it has none.
std::string headingTextOf(const project::Card& card) {
    for (const project::Part& part : card.parts)
        if (const auto* text = std::get_if<project::TextPart>(&part);
            text != nullptr && text->role == "heading")
            return project::plainText(text->copy);
    return {};
}

void remedyLinkPurpose(Candidates& out) {
    const project::Project& project = out.subject().project;
    std::map<std::size_t, std::string> headings;
    for (const project::PartRef& place : out.finding().places)
        headings[place.card] = headingTextOf(project.row().cards[place.card]);
    for (const auto& [card, heading] : headings)
        if (plainLabel(heading).empty()) return;
    out.editTexts(wording::say("Add the heading of the card to the accessible name"),
                  [headings](project::TextPart& text, project::PartRef place) {
                      text.name = nameOf(text) + ": " + headings.at(place.card);
                  });
}

}  // namespace

extern const Check linkPurposeCheck{
    .name = "link-purpose", .run = checkLinkPurpose, .dependsOnBreaks = false, .remedies = remedyLinkPurpose};

}  // namespace tenter::checks
