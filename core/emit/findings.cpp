#include "emit/findings.h"

#include <array>

#include "emit/escape.h"
#include "emit/table.h"
#include "units/number.h"

namespace tenter::emit {

using checks::Finding;

namespace {

std::string findingJson(const Finding& finding) {
    std::string out = "{\"check\": " + jsonString(finding.check) +
                      ", \"severity\": " + jsonString(checks::word(finding.severity));
    if (finding.card) out += ", \"card\": " + std::to_string(*finding.card);
    if (finding.part) out += ", \"part\": " + std::to_string(*finding.part);
    out += ", \"widths\": [";
    for (std::size_t i = 0; i < finding.widths.size(); ++i)
        out += (i > 0 ? ", [" : "[") + jsonNumber(finding.widths[i].from) + ", " +
               jsonNumber(finding.widths[i].to) + "]";
    return out + "], \"at\": " + jsonNumber(finding.at) + ", \"share\": " + jsonNumber(finding.share) +
           (finding.only == nullptr ? "" : ", \"engine\": " + jsonString(finding.only->name())) +
           ", \"says\": " + jsonString(finding.says) + ", \"source\": " + jsonString(finding.source) + "}";
}

std::string spanWords(const sweep::Interval& span) {
    const std::string from = units::number(span.from, 1);
    const std::string to = units::number(span.to, 1);
    return from == to ? from : from + " to " + to;
}

/// `at 320 to 640, 700 to 710, 820 px and at 12 more, 31 % of the widths`.
std::string whereWords(const Finding& finding, const std::string& shareOf) {
    constexpr std::size_t mostNamed = 3;
    std::string out = "at ";
    for (std::size_t i = 0; i < finding.widths.size() && i < mostNamed; ++i)
        out += (i > 0 ? ", " : "") + spanWords(finding.widths[i]);
    out += " px";
    if (finding.widths.size() > mostNamed)
        out += " and at " + std::to_string(finding.widths.size() - mostNamed) + " more";
    const bool one = finding.widths.size() == 1 && finding.widths[0].from == finding.widths[0].to;
    return one && finding.share == 0
               ? out
               : out + ", " + units::number(finding.share * 100, 1) + " % of " + shareOf;
}

std::string counted(std::size_t count, const char* word) {
    return std::to_string(count) + " " + word + (count == 1 ? "" : "s");
}

}  // namespace

std::string findingsJson(const std::vector<Finding>& findings) {
    std::string out = "[";
    for (const Finding& finding : findings)
        out += (out.size() == 1 ? "\n " : ",\n ") + findingJson(finding);
    return out + "]\n";
}

std::string findingCounts(const std::vector<Finding>& findings) {
    std::array<std::size_t, 3> counts{};
    for (const Finding& finding : findings)
        ++counts[static_cast<std::size_t>(finding.severity)];
    return counted(counts[2], "error") + ", " + counted(counts[1], "warning") + ", " +
           counted(counts[0], "note");
}

std::string findingsList(const checks::Checked& checked, const std::string& shareOf) {
    std::string out;
    for (const Finding& finding : checked.findings) {
        out += std::string(checks::word(finding.severity)) + "  " + finding.check + ", " +
               whereWords(finding, shareOf) + "\n  " + oneLine(finding.says) + "\n  " + finding.source +
               "\n\n";
    }
    for (const checks::Silenced& silenced : checked.silenced)
        out += "silenced  " + silenced.finding.check + ", " + whereWords(silenced.finding, shareOf) + "\n  " +
               oneLine(silenced.reason) + "\n\n";
    out += findingCounts(checked.findings) + ".\n";
    return out + std::string(checks::caution) + "\n";
}

}  // namespace tenter::emit
