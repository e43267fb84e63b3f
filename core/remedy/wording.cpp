#include "remedy/wording.h"

#include <array>
#include <set>

#include "checks/phrases.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/quantities.h"

namespace tenter::remedy {

namespace {

std::string counted(std::size_t count, const std::string& word) {
    return std::to_string(count) + " " + word + (count == 1 ? "" : "s");
}

/// `1 warning and 2 notes`.
std::string bySeverity(const std::vector<Change>& changes) {
    std::vector<std::string> parts;
    for (const auto severity : {checks::Severity::Error, checks::Severity::Warning, checks::Severity::Note}) {
        std::size_t count = 0;
        for (const Change& change : changes)
            if (change.finding.severity == severity) ++count;
        if (count > 0) parts.push_back(counted(count, std::string(checks::word(severity))));
    }
    return project::listed(parts);
}

std::set<std::size_t> variantsOf(const std::vector<Change>& changes) {
    std::set<std::size_t> variants;
    for (const Change& change : changes)
        variants.insert(change.variant);
    return variants;
}

/// ` in 2 variants`; empty for one.
std::string inSeveral(const std::set<std::size_t>& variants) {
    return variants.size() > 1 ? " in " + counted(variants.size(), "variant") : std::string();
}

/// `: "tight-fit" and "measure"`: the checks of the changes, each once, in alphabetical order, and the number
/// of variants if there are several. With more than three checks only the variants.
std::string about(const std::vector<Change>& changes) {
    constexpr std::size_t mostNames = 3;
    std::set<std::string> checks;
    for (const Change& change : changes)
        checks.insert(change.finding.check);
    std::vector<std::string> names;
    names.reserve(checks.size());
    for (const std::string& check : checks)
        names.push_back(project::inQuotes(check));
    return inSeveral(variantsOf(changes)) + (names.size() <= mostNames ? ": " + project::listed(names) : "");
}

/// ` in the variant “Region page”` or ` in 2 variants`; empty if the project has one variant.
std::string whichVariants(const project::Project& project, const std::vector<Change>& changes) {
    const std::set<std::size_t> variants = variantsOf(changes);
    if (project.row().variants.size() < 2 || variants.empty()) return {};
    if (variants.size() > 1) return inSeveral(variants);
    return " in the variant " + project::quotedTitle(project, *variants.begin());
}

}  // namespace

std::string titleOf(const Remedy& remedy) {
    return remedy.where.empty() ? remedy.label : remedy.label + ", " + remedy.where;
}

std::string effectOf(const Remedy& remedy, const std::string& shareOf) {
    std::string text;
    const auto add = [&](const std::string& sentence) { text += (text.empty() ? "" : " ") + sentence + "."; };
    if (!remedy.removes)
        add("From " + units::percent(remedy.share) + " to " + units::percent(remedy.shareAfter) + " of " +
            shareOf);
    if (!remedy.lost.empty())
        add("Removes " + counted(remedy.lost.size(), "other finding") + about(remedy.lost));
    if (!remedy.gained.empty()) add("Adds " + bySeverity(remedy.gained) + about(remedy.gained));
    if (!remedy.grown.empty()) add("Widens " + bySeverity(remedy.grown) + about(remedy.grown));
    if (remedy.move.distance > 0)
        add("Boxes move by up to " + units::px(remedy.move.distance, remedy.move.distance < 1 ? 1 : 0) +
            ", at " + units::px(remedy.move.width, 0));
    else
        add("No box moves");
    return text;
}

std::string sentenceOf(const project::Project& project, const Change& change) {
    std::string what = checks::textOf({change.finding.statement.what, {}, {}}, change.finding.profiles);
    if (project.row().variants.size() == 1) return what;
    return "Variant " + project::quotedTitle(project, change.variant) + ": " + what;
}

std::string summaryOf(const project::Project& project, const Effects& effects) {
    if (!effects.any()) return "No finding comes or goes.";
    std::string text;
    const auto add = [&](const char* verb, const std::vector<Change>& changes) {
        if (!changes.empty())
            text += (text.empty() ? "" : " ") + (verb + bySeverity(changes)) +
                    whichVariants(project, changes) + ".";
    };
    add("Removes ", effects.lost);
    add("Adds ", effects.gained);
    add("Widens ", effects.grown);
    return text;
}

std::vector<std::string> changesOf(const project::Project& project, const Effects& effects) {
    std::vector<std::string> all;
    const std::array<std::pair<const char*, const std::vector<Change>*>, 3> kinds{
        {{"Removes: ", &effects.lost}, {"Adds: ", &effects.gained}, {"At more widths: ", &effects.grown}}};
    for (const auto& [verb, changes] : kinds)
        for (const Change& change : *changes)
            all.push_back(verb + sentenceOf(project, change));
    return all;
}

}  // namespace tenter::remedy
