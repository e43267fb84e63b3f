#include "emit/findings.h"

#include <array>

#include "checks/phrases.h"
#include "checks/titles.h"
#include "emit/escape.h"
#include "emit/remedies.h"
#include "emit/table.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::emit {

using checks::Finding;

namespace {

/// The engines that have the finding: one as a string, several as a list, nothing if all have it.
std::string enginesJson(const checks::Profiles& profiles) {
    if (profiles.empty()) return {};
    std::string names;
    for (const text::BreakProfile* profile : profiles)
        names += (names.empty() ? "" : ", ") + jsonString(profile->name());
    return ", \"engine\": " + (profiles.size() == 1 ? names : "[" + names + "]");
}

/// `more`: further members, from the comma on. `first`: members before the others, up to the comma.
std::string findingJson(const Finding& finding, const std::string& more = {}, const std::string& first = {}) {
    std::string out = "{" + first + "\"check\": " + jsonString(finding.check) +
                      ", \"severity\": " + jsonString(checks::word(finding.severity));
    if (finding.place)
        out += ", \"card\": " + std::to_string(finding.place->card) +
               ", \"part\": " + std::to_string(finding.place->part);
    out += ", \"widths\": [";
    for (std::size_t i = 0; i < finding.widths.size(); ++i)
        out += (i > 0 ? ", [" : "[") + jsonNumber(finding.widths[i].from) + ", " +
               jsonNumber(finding.widths[i].to) + "]";
    return out + "], \"at\": " + jsonNumber(finding.at) + ", \"share\": " + jsonNumber(finding.share) +
           enginesJson(finding.profiles) + ", \"says\": " + jsonString(finding.says) +
           ", \"source\": " + jsonString(finding.source) + more + "}";
}

/// `Warning  Out of line  31 % of widths`.
std::string headOf(const std::string& severity, const Finding& finding, const std::string& shareOf) {
    std::string head = severity + "  " + checks::titleOfCheck(finding.check);
    // A finding at a single width has no share.
    const bool single = finding.widths.size() == 1 && finding.widths[0].from == finding.widths[0].to;
    if (single && finding.share <= 0) return head;
    const std::string share = units::percent(finding.share);
    return head + "  " +
           (shareOf == "visits" ? wording::say("%1 of visits", {share})
                                : wording::say("%1 of widths", {share}));
}

}  // namespace

std::string findingsJson(const std::vector<Finding>& findings) {
    std::string out = "[";
    for (const Finding& finding : findings)
        out += (out.size() == 1 ? "\n " : ",\n ") + findingJson(finding);
    return out + "]\n";
}

std::string findingsJson(const project::Project& project, const std::vector<Finding>& findings,
                         const RemediesOfAll& remedies) {
    std::string out = "[";
    for (std::size_t i = 0; i < findings.size(); ++i)
        out += (i == 0 ? "\n " : ",\n ") +
               findingJson(findings[i], ", \"remedies\": " + remediesJson(project, i + 1, remedies.at(i)));
    return out + "]\n";
}

std::string findingsJson(const std::vector<const project::Project*>& projects,
                         const std::vector<std::string>& files,
                         const std::vector<std::vector<Finding>>& findings,
                         const std::vector<RemediesOfAll>& remedies) {
    std::string out = "[";
    for (std::size_t p = 0; p < projects.size(); ++p)
        for (std::size_t i = 0; i < findings[p].size(); ++i) {
            std::string more;
            if (!remedies.empty())
                more = ", \"remedies\": " + remediesJson(*projects[p], i + 1, remedies[p].at(i));
            out += (out.size() == 1 ? "\n " : ",\n ") +
                   findingJson(findings[p][i], more, "\"project\": " + jsonString(files[p]) + ", ");
        }
    return out + "]\n";
}

std::string findingCounts(const std::vector<Finding>& findings) {
    std::array<std::size_t, 3> counts{};
    for (const Finding& finding : findings)
        ++counts[static_cast<std::size_t>(finding.severity)];
    //: Numbers of findings: 1 error, 2 warnings, 3 notes
    return wording::say("%1, %2, %3", {wording::sayCount("%n error", "%n errors", counts[2]),
                                       wording::sayCount("%n warning", "%n warnings", counts[1]),
                                       wording::sayCount("%n note", "%n notes", counts[0])});
}

std::string findingParagraphs(const project::Project& project, const std::vector<Finding>& findings,
                              const std::string& shareOf, std::size_t indent, const RemediesOfAll& remedies) {
    constexpr std::size_t mostRanges = 4;
    const std::string margin(indent, ' ');
    std::string out;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Finding& finding = findings[i];
        const auto add = [&](const std::string& line) { out.append(margin).append(line).append("\n"); };
        add(headOf(checks::title(finding.severity), finding, shareOf));
        add("  " + oneLine(finding.says));
        const std::string widths = checks::widthsBeyondText(project, finding, mostRanges);
        if (!widths.empty()) add("  " + wording::say("All affected widths: %1", {widths}));
        add("  " + wording::say("Basis: %1", {finding.source}));
        if (!remedies.empty()) {
            const std::vector<std::string> lines = remedyLines(project, i + 1, remedies.at(i), shareOf);
            for (const std::string& line : lines)
                add("  " + line);
            if (lines.empty()) add("  " + wording::say("Tenter found no remedy."));
        }
        out += "\n";
    }
    return out;
}

std::string findingsList(const project::Project& project, const checks::Checked& checked,
                         const std::string& shareOf, const RemediesOfAll& remedies) {
    std::string out = findingParagraphs(project, checked.findings, shareOf, 0, remedies);
    for (const checks::Silenced& silenced : checked.silenced)
        out += headOf(wording::say("silenced"), silenced.finding, shareOf) + "\n  " +
               wording::say("Reason: %1", {oneLine(silenced.reason)}) + "\n\n";
    out += findingCounts(checked.findings) + ".\n";
    return out + wording::say(checks::caution) + "\n";
}

}  // namespace tenter::emit
