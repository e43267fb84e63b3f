#include "checks/checks.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <span>

#include "checks/registry.h"

namespace tenter::checks {

namespace {

/// Adds the findings under one more profile to `all`. Equal keys make one finding, which holds under both.
void addUnderProfile(Findings& all, Findings others) {
    for (KeyedFinding& keyed : all) {
        const auto same = std::ranges::find(others, keyed.key, &KeyedFinding::key);
        if (same == others.end()) continue;
        Finding& finding = keyed.finding;
        finding.widths.insert(finding.widths.end(), same->finding.widths.begin(), same->finding.widths.end());
        join(finding.widths);
        finding.places.insert(finding.places.end(), same->finding.places.begin(), same->finding.places.end());
        std::ranges::sort(finding.places);
        finding.places.erase(std::unique(finding.places.begin(), finding.places.end()), finding.places.end());
        finding.profiles.insert(finding.profiles.end(), same->finding.profiles.begin(),
                                same->finding.profiles.end());
        others.erase(same);
    }
    std::ranges::move(others, std::back_inserter(all));
}

/// One subject for each profile of `options`, or for every profile.
Subjects subjectsOf(const project::Project& project, project::VariantRef variant, text::ParagraphStore& store,
                    const Options& options) {
    Subjects subjects;
    for (const text::BreakProfile* profile :
         options.profile != nullptr ? Profiles{options.profile} : text::profiles())
        subjects.emplace_back(project, variant, store, *profile, options);
    return subjects;
}

/// The width nearest to `finding.at` within the finding's widths, a whole number if the run has one.
double widthNear(const Finding& finding, double least) {
    const auto run = std::ranges::min_element(finding.widths, {}, [&](const sweep::Interval& span) {
        return std::abs(std::clamp(finding.at, span.from, span.to) - finding.at);
    });
    return shownWidth(*run, std::clamp(finding.at, run->from, run->to), least);
}

/// Gives the findings from index `first` on the name of their check.
void nameCheck(Findings& findings, std::size_t first, std::string_view name) {
    for (KeyedFinding& keyed : std::span(findings).subspan(first)) {
        keyed.finding.check = name;
        keyed.key = std::string(name) + "\n" + keyed.key;
    }
}

/// The findings of all checks about one subject that depend on line breaks, or of all that do not.
Findings findingsOf(const Subject& subject, bool dependsOnBreaks) {
    Findings out;
    for (const Check* check : registry()) {
        if (check->run == nullptr || check->dependsOnBreaks != dependsOnBreaks) continue;
        const std::size_t before = out.size();
        check->run(subject, out);
        nameCheck(out, before, check->name);
    }
    if (dependsOnBreaks)
        for (KeyedFinding& keyed : out)
            keyed.finding.profiles = {&subject.row.profile()};
    return out;
}

/// The findings that compare profiles.
Findings comparisonsOf(const Subjects& subjects) {
    Findings out;
    if (subjects.size() < 2) return out;
    for (const Check* check : registry()) {
        if (check->compare == nullptr) continue;
        const std::size_t before = out.size();
        check->compare(subjects, out);
        nameCheck(out, before, check->name);
    }
    return out;
}

}  // namespace

Checked checkAll(const project::Project& project, project::VariantRef variant, text::ParagraphStore& store,
                 const Options& options) {
    const Subjects subjects = subjectsOf(project, variant, store, options);
    const Subject& subject = subjects.front();
    Findings all = findingsOf(subject, false);
    Findings lines;
    for (const Subject& each : subjects)
        addUnderProfile(lines, findingsOf(each, true));
    for (KeyedFinding& keyed : lines)
        if (keyed.finding.profiles.size() == subjects.size()) keyed.finding.profiles.clear();
    std::ranges::move(lines, std::back_inserter(all));
    std::ranges::move(comparisonsOf(subjects), std::back_inserter(all));

    std::vector<Finding> findings;
    for (KeyedFinding& keyed : all) {
        Finding& finding = keyed.finding;
        finding.row = variant.row;
        finding.share = options.audience.empty()
                            ? std::min(1.0, lengthOf(finding.widths) / (subject.most - subject.least))
                            : options.audience.share(finding.widths, subject.least);
        finding.at = widthNear(finding, subject.least);
        finding.says = textOf(finding.statement, finding.profiles);
        finding.key = std::move(keyed.key);
        findings.push_back(std::move(finding));
    }
    std::ranges::stable_sort(findings, [](const Finding& a, const Finding& b) {
        return a.severity != b.severity ? a.severity > b.severity : a.share > b.share;
    });
    Checked checked;
    for (Finding& finding : findings) {
        const auto silence =
            std::ranges::find(project.checking.silenced, finding.check, &project::Silence::check);
        if (silence == project.checking.silenced.end())
            checked.findings.push_back(std::move(finding));
        else
            checked.silenced.push_back({std::move(finding), silence->reason});
    }
    return checked;
}

std::vector<Finding> check(const project::Project& project, project::VariantRef variant,
                           text::ParagraphStore& store, const Options& options) {
    return checkAll(project, variant, store, options).findings;
}

std::vector<Candidate> candidatesFor(const project::Project& project, std::size_t variant,
                                     const Finding& finding, text::ParagraphStore& store,
                                     const Options& options) {
    const Subjects subjects = subjectsOf(project, variant, store, options);
    Candidates candidates(subjects, finding);
    for (const Check* check : registry())
        if (check->remedies != nullptr && check->name == finding.check) check->remedies(candidates);
    return candidates.take();
}

}  // namespace tenter::checks
