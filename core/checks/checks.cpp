#include "checks/checks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>

#include "checks/registry.h"

namespace tenter::checks {

namespace {

/// The findings of two profiles together; a finding that only one of them has keeps that profile in `only`.
Findings merged(Findings one, Findings other, const text::BreakProfile& first,
                const text::BreakProfile& second) {
    for (KeyedFinding& keyed : one) {
        const auto same = std::ranges::find(other, keyed.key, &KeyedFinding::key);
        if (same == other.end()) {
            keyed.finding.only = &first;
            continue;
        }
        std::vector<sweep::Interval>& widths = keyed.finding.widths;
        widths.insert(widths.end(), same->finding.widths.begin(), same->finding.widths.end());
        join(widths);
        other.erase(same);
    }
    for (KeyedFinding& keyed : other) {
        keyed.finding.only = &second;
        one.push_back(std::move(keyed));
    }
    return one;
}

/// The width nearest to `finding.at` within the finding's widths, a whole number if the run has one.
double widthNear(const Finding& finding, double least) {
    const auto holds = [&](const sweep::Interval& span, double width) {
        if (width == span.from) return span.from == least || span.from == span.to;
        return width > span.from && width <= span.to;
    };
    const auto run = std::ranges::min_element(finding.widths, {}, [&](const sweep::Interval& span) {
        return std::abs(std::clamp(finding.at, span.from, span.to) - finding.at);
    });
    const double at = std::clamp(finding.at, run->from, run->to);
    double near = holds(*run, at) ? at : (run->from + run->to) / 2;
    double far = std::numeric_limits<double>::infinity();
    for (const double whole : {std::floor(at), std::floor(at) + 1}) {
        if (!holds(*run, whole) || std::abs(whole - at) >= far) continue;
        far = std::abs(whole - at);
        near = whole;
    }
    return near;
}

Findings findingsOf(const Subject& subject, bool breaks) {
    Findings out;
    for (const Check& check : registry())
        if (check.breaks == breaks) check.run(subject, out);
    return out;
}

}  // namespace

Checked checkAll(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                 const Options& options) {
    const text::BreakProfile& profile = options.profile != nullptr ? *options.profile : text::blink();
    const Subject subject(project, variant, store, profile, options);
    Findings all = findingsOf(subject, false);
    Findings lines = findingsOf(subject, true);
    if (options.profile == nullptr) {
        const Subject other(project, variant, store, text::gecko(), options);
        lines = merged(std::move(lines), findingsOf(other, true), text::blink(), text::gecko());
        checkEngines(subject, other, lines);
    }
    all.insert(all.end(), std::make_move_iterator(lines.begin()), std::make_move_iterator(lines.end()));

    std::vector<Finding> findings;
    for (KeyedFinding& keyed : all) {
        Finding& finding = keyed.finding;
        finding.share = options.audience.empty()
                            ? std::min(1.0, lengthOf(finding.widths) / (subject.most - subject.least))
                            : options.audience.share(finding.widths, subject.least);
        finding.at = widthNear(finding, subject.least);
        finding.says = textOf(finding.statement, finding.only);
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

std::vector<Finding> check(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                           const Options& options) {
    return checkAll(project, variant, store, options).findings;
}

}  // namespace tenter::checks
