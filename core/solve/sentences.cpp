#include <algorithm>

#include "checks/phrases.h"
#include "project/cascade.h"
#include "project/wording.h"
#include "solve/solve.h"
#include "units/number.h"

namespace tenter::solve {

namespace {

std::string atWidth(const project::Project& project, const Binding& binding) {
    std::string text = "at " + units::number(binding.width, 1) + " px";
    if (project.variants.size() > 1) text += " in " + project.variants[binding.variant].className;
    return text;
}

std::string sentenceOf(const project::Project& project, const Binding& binding) {
    const std::string wish = checks::sentence(said(binding.demand)) + ": ";
    const std::string where = atWidth(project, binding);
    const std::string size = checks::figure(binding.size, 2) + " px";
    if (binding.demand.kind == Kind::Zoom)
        return wish + "just kept by the largest size, " + size + ", " + where + ".";
    if (!binding.by.copy) return wish + "just kept, with " + size + ", " + where + ".";
    const std::string copy = checks::named(project, binding.by.card, binding.by.part);
    if (binding.word.empty()) return wish + copy + " allows " + size + " " + where + ", and sizes use it.";
    std::string text = wish + where + ", " + checks::inQuotation(binding.word) + " in " + copy +
                       " allows no more than " + size;
    if (binding.withShorter)
        text += "; with three letters less in it, " + checks::figure(*binding.withShorter, 2) + " px";
    return text + ".";
}

/// Of type that is to be the same in every variant: where it is decided for all of them.
std::string sharedSentence(const project::Project& project, const Answer& answer, const Binding& binding) {
    std::vector<std::string> places;
    for (const Binding& one : answer.bindings) {
        if (one.demand.role != binding.demand.role || one.demand.kind == Kind::SameInVariants) continue;
        std::string place = atWidth(project, one);
        if (std::ranges::find(places, place) == places.end()) places.push_back(std::move(place));
    }
    const std::string wish = checks::sentence(said(binding.demand)) + ": ";
    if (places.empty())
        return wish + "just kept, with " + checks::figure(binding.size, 2) + " px, " +
               atWidth(project, binding) + ".";
    return wish + "decided " + project::listed(places) + ".";
}

bool followsCard(const project::Project& project, const std::string& role) {
    for (const project::Variant& variant : project.variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            if (project::resolve(project, variant, band).text.find(role)->follow == project::Follow::Card)
                return true;
    return false;
}

std::string loosened(const Loosening& loosening) {
    if (loosening.out && loosening.demand.kind == Kind::Words)
        return "a soft hyphen in the word, or a shorter one";
    if (loosening.out) return "leave out “" + said(loosening.demand) + "”";
    return "ask for " + said(loosening.demand);
}

std::string whatHelps(const Conflict& conflict) {
    const std::vector<Loosening> ways = offered(conflict);
    if (ways.empty())
        return "No type that can be read keeps the others: shorter copy helps, or fewer columns there.";
    std::string text = ways.front().leavesOthers
                           ? "There is another conflict beside this one. This one ends with: "
                       : ways.size() == 1 ? "This helps: "
                                          : "Any one of these helps: ";
    for (std::size_t i = 0; i < ways.size(); ++i)
        text += (i == 0 ? "" : i + 1 == ways.size() ? ", or " : ", ") + loosened(ways[i]);
    return text + ".";
}

}  // namespace

std::vector<Told> told(const project::Project& project, const Answer& answer) {
    std::vector<Told> all;
    const auto say = [&](std::string text, std::optional<Binding> at = {}) {
        all.push_back({std::move(text), std::move(at)});
    };
    if (answer.offGrid) say("There are sizes, but none on the grid: a finer grid helps.");
    for (const Demand& demand : answer.unkept)
        say("As laid out, the row still breaks “" + said(demand) + "” somewhere: ask for a little more.");
    for (const Binding& binding : answer.bindings)
        say(binding.demand.kind == Kind::SameInVariants ? sharedSentence(project, answer, binding)
                                                        : sentenceOf(project, binding),
            binding);
    for (const SharedRamp& one : answer.shared)
        say(checks::sentence(checks::typeOf(one.role)) + " has one ramp from " +
            units::number(one.widths.from, 2) + " to " + units::number(one.widths.to, 2) +
            " px in every variant, since their breakpoints there differ. With breakpoints in common it could "
            "have a ramp for each band.");
    const Conflict& conflict = answer.conflict;
    if (conflict.demands.empty()) return all;
    std::vector<std::string> wishes;
    wishes.reserve(conflict.demands.size());
    for (const Demand& demand : conflict.demands)
        wishes.push_back("“" + said(demand) + "”");
    say(wishes.size() == 1 ? "No sizes keep this wish: " + wishes.front() + "."
                           : "No sizes keep these wishes together: " + project::listed(wishes) + ".");
    for (const Binding& place : conflict.places) {
        if (!place.by.copy) continue;
        const std::string copy = checks::named(project, place.by.card, place.by.part);
        const bool floor = place.demand.kind == Kind::MostMeasure;
        say(checks::sentence(atWidth(project, place)) + ", " +
                (place.word.empty() ? copy : checks::inQuotation(place.word) + " in " + copy) +
                (floor ? " allows no less than " : " allows no more than ") + checks::figure(place.size, 2) +
                " px.",
            place);
    }
    for (const Demand& demand : conflict.demands)
        if (demand.kind == Kind::SameInVariants && followsCard(project, demand.role))
            say("Type that follows the card is of the same size in cards of unlike widths only where it does "
                "not change with them. Let " +
                checks::typeOf(demand.role) + " follow the page.");
    if (conflict.byReserve) say("Without room for longer copy they could be kept.");
    say(whatHelps(conflict));
    return all;
}

std::vector<std::string> sentences(const project::Project& project, const Answer& answer) {
    std::vector<Told> found = told(project, answer);
    std::vector<std::string> all;
    all.reserve(found.size());
    for (Told& one : found)
        all.push_back(std::move(one.says));
    return all;
}

}  // namespace tenter::solve
