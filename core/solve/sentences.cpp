#include <algorithm>

#include "checks/phrases.h"
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

std::string loosened(const Loosening& loosening) {
    if (loosening.out && loosening.demand.kind == Kind::Words)
        return "a soft hyphen in the word, or a shorter one";
    if (loosening.out) return "leave out “" + said(loosening.demand) + "”";
    return "ask for " + said(loosening.demand);
}

}  // namespace

std::vector<std::string> sentences(const project::Project& project, const Answer& answer) {
    std::vector<std::string> all;
    if (answer.offGrid) all.emplace_back("There are sizes, but none on the grid: a finer grid helps.");
    for (const Demand& demand : answer.unkept)
        all.push_back("As laid out, the row still breaks “" + said(demand) +
                      "” somewhere: ask for a little more.");
    for (const Binding& binding : answer.bindings)
        all.push_back(sentenceOf(project, binding));
    const Conflict& conflict = answer.conflict;
    if (conflict.demands.empty()) return all;
    std::vector<std::string> wishes;
    for (const Demand& demand : conflict.demands)
        wishes.push_back("“" + said(demand) + "”");
    all.push_back(wishes.size() == 1
                      ? "No sizes keep this wish: " + wishes.front() + "."
                      : "No sizes keep these wishes together: " + project::listed(wishes) + ".");
    for (const Binding& place : conflict.places) {
        if (!place.by.copy || place.word.empty()) continue;
        all.push_back(checks::sentence(atWidth(project, place)) + ", " + checks::inQuotation(place.word) +
                      " in " + checks::named(project, place.by.card, place.by.part) +
                      " allows no more than " + checks::figure(place.size, 2) + " px.");
    }
    std::vector<std::string> ways;
    for (const Loosening& loosening : conflict.loosenings)
        ways.push_back(loosened(loosening));
    std::string text;
    for (std::size_t i = 0; i < ways.size(); ++i)
        text += (i == 0 ? "" : i + 1 == ways.size() ? ", or " : ", ") + ways[i];
    all.push_back("Any one of these helps: " + text + ".");
    return all;
}

}  // namespace tenter::solve
