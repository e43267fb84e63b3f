#include "remedy/wording.h"

#include <set>

#include "checks/phrases.h"
#include "checks/titles.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::remedy {

namespace {

std::string counted(std::size_t count, checks::Severity severity) {
    switch (severity) {
        case checks::Severity::Error:
            return wording::sayCount("%n error", "%n errors", count);
        case checks::Severity::Warning:
            return wording::sayCount("%n warning", "%n warnings", count);
        case checks::Severity::Note:
            break;
    }
    return wording::sayCount("%n note", "%n notes", count);
}

/// `1 warning and 2 notes`.
std::string bySeverity(const std::vector<Change>& changes) {
    std::vector<std::string> parts;
    for (const auto severity : {checks::Severity::Error, checks::Severity::Warning, checks::Severity::Note}) {
        std::size_t count = 0;
        for (const Change& change : changes)
            if (change.finding.severity == severity) ++count;
        if (count > 0) parts.push_back(counted(count, severity));
    }
    return project::listed(parts);
}

std::set<std::size_t> variantsOf(const std::vector<Change>& changes) {
    std::set<std::size_t> variants;
    for (const Change& change : changes)
        variants.insert(change.variant);
    return variants;
}

/// `what in 2 variants`; `what` for one.
std::string inSeveral(const std::string& what, const std::set<std::size_t>& variants) {
    if (variants.size() < 2) return what;
    return wording::sayCount("%1 in %n variant", "%1 in %n variants", variants.size(), {what});
}

/// `2 notes in 2 variants: "Measure" and "Tight fit"`: what changes, the number of variants if there are
/// several, and the checks, each once, in alphabetical order, unless there are more than three.
std::string about(const std::string& what, const std::vector<Change>& changes) {
    constexpr std::size_t mostNames = 3;
    std::set<std::string> checkNames;
    for (const Change& change : changes)
        checkNames.insert(change.finding.check);
    std::vector<std::string> names;
    names.reserve(checkNames.size());
    for (const std::string& check : checkNames)
        names.push_back(checks::inQuotation(checks::titleOfCheck(check)));
    const std::string all = inSeveral(what, variantsOf(changes));
    return names.size() <= mostNames ? wording::say("%1: %2", {all, project::listed(names)}) : all;
}

/// `2 notes in the variant “Region page”` or `2 notes in 2 variants`; without the variant if the project has
/// one.
std::string withVariants(const project::Project& project, const std::vector<Change>& changes) {
    std::string what = bySeverity(changes);
    const std::set<std::size_t> variants = variantsOf(changes);
    if (project.row().variants.size() < 2 || variants.empty()) return what;
    if (variants.size() > 1) return inSeveral(what, variants);
    return wording::say("%1 in the variant %2", {what, project::quotedTitle(project, *variants.begin())});
}

}  // namespace

std::string titleOf(const Remedy& remedy) {
    return remedy.where.empty() ? remedy.label : wording::say("%1, %2", {remedy.label, remedy.where});
}

std::string effectOf(const Remedy& remedy, const std::string& shareOf) {
    std::string text;
    const auto add = [&](const std::string& sentence) { text += (text.empty() ? "" : " ") + sentence; };
    const std::string share = units::percent(remedy.share);
    const std::string after = units::percent(remedy.shareAfter);
    if (!remedy.removes)
        add(shareOf == "visits" ? wording::say("From %1 to %2 of visits.", {share, after})
                                : wording::say("From %1 to %2 of widths.", {share, after}));
    if (!remedy.lost.empty())
        add(wording::say("Removes %1.", {about(wording::sayCount("%n other finding", "%n other findings",
                                                                 remedy.lost.size()),
                                               remedy.lost)}));
    if (!remedy.gained.empty())
        add(wording::say("Adds %1.", {about(bySeverity(remedy.gained), remedy.gained)}));
    if (!remedy.grown.empty())
        add(wording::say("Widens %1.", {about(bySeverity(remedy.grown), remedy.grown)}));
    if (remedy.move.distance > 0)
        add(wording::say("Boxes move by up to %1, at %2.",
                         {units::px(remedy.move.distance, remedy.move.distance < 1 ? 1 : 0),
                          units::px(remedy.move.width, 0)}));
    else
        add(wording::say("No box moves."));
    return text;
}

std::string sentenceOf(const project::Project& project, const Change& change) {
    std::string what = checks::textOf({change.finding.statement.what, {}, {}}, change.finding.profiles);
    if (project.row().variants.size() == 1) return what;
    return wording::say("Variant %1: %2", {project::quotedTitle(project, change.variant), what});
}

std::string summaryOf(const project::Project& project, const Effects& effects) {
    if (!effects.any()) return wording::say("No finding comes or goes.");
    std::string text;
    const auto add = [&](const std::string& sentence) { text += (text.empty() ? "" : " ") + sentence; };
    if (!effects.lost.empty()) add(wording::say("Removes %1.", {withVariants(project, effects.lost)}));
    if (!effects.gained.empty()) add(wording::say("Adds %1.", {withVariants(project, effects.gained)}));
    if (!effects.grown.empty()) add(wording::say("Widens %1.", {withVariants(project, effects.grown)}));
    return text;
}

std::vector<std::string> changesOf(const project::Project& project, const Effects& effects) {
    std::vector<std::string> all;
    for (const Change& change : effects.lost)
        all.push_back(wording::say("Removes: %1", {sentenceOf(project, change)}));
    for (const Change& change : effects.gained)
        all.push_back(wording::say("Adds: %1", {sentenceOf(project, change)}));
    for (const Change& change : effects.grown)
        all.push_back(wording::say("At more widths: %1", {sentenceOf(project, change)}));
    return all;
}

}  // namespace tenter::remedy
