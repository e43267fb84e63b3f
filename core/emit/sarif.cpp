#include "emit/sarif.h"

#include <charconv>
#include <filesystem>

#include "checks/registry.h"
#include "emit/address.h"
#include "project/json_text.h"

namespace tenter::emit {

using checks::Finding;
using project::Json;

namespace {

/// A file as a URI reference: a `file` URI if its path is absolute. SARIF § 3.4.3, RFC 8089 § 2.
std::string uriOf(const std::string& file) {
    const std::string path = pathAddress(file);
    return path.starts_with("/") ? "file://" + path : path;
}

/// The part as a JSON pointer into the project file; empty for a finding about the row.
std::string pointerOf(const Finding& finding) {
    if (!finding.place) return {};
    return "/cards/" + std::to_string(finding.place->card) + "/parts/" + std::to_string(finding.place->part);
}

/// `line` and `column` of `LINE:COLUMN`, as a region. SARIF § 3.30.
Json regionOf(const std::string& position) {
    const std::size_t colon = position.find(':');
    if (colon == std::string::npos) return nullptr;
    int line = 0;
    int column = 0;
    std::from_chars(position.data(), position.data() + colon, line);
    std::from_chars(position.data() + colon + 1, position.data() + position.size(), column);
    if (line < 1 || column < 1) return nullptr;
    return Json{{"startLine", line}, {"startColumn", column}};
}

Json locationOf(const CheckedProject& project, const Finding& finding, const std::string& position) {
    Json physical{{"artifactLocation", Json{{"uri", uriOf(project.file)}}}};
    if (Json region = regionOf(position); !region.is_null()) physical["region"] = std::move(region);
    Json location{{"physicalLocation", std::move(physical)}};
    if (const std::string pointer = pointerOf(finding); !pointer.empty())
        location["logicalLocations"] =
            Json::array({Json{{"fullyQualifiedName", pointer}, {"kind", "object"}}});
    return location;
}

std::size_t ruleIndex(const std::string& check) {
    const std::vector<std::string_view>& names = checks::checkNames();
    return static_cast<std::size_t>(std::ranges::find(names, check) - names.begin());
}

Json resultOf(const CheckedProject& project, const Finding& finding, const std::string& position) {
    Json widths = Json::array();
    for (const sweep::Interval& range : finding.widths)
        widths.push_back(Json::array({range.from, range.to}));
    Json result{{"ruleId", finding.check},
                {"ruleIndex", ruleIndex(finding.check)},
                {"level", std::string(checks::word(finding.severity))},
                {"message", Json{{"text", finding.says}}},
                {"locations", Json::array({locationOf(project, finding, position)})}};
    // Recognises the finding in later runs, when its line has changed. SARIF § 3.27.17.
    if (!finding.key.empty())
        result["partialFingerprints"] = Json{{"cause/v1", project.className + " " + finding.key}};
    result["properties"] = Json{{"variant", project.className},
                                {"widths", std::move(widths)},
                                {"share", finding.share},
                                {"source", finding.source}};
    return result;
}

/// The results of a project, those that are silenced last.
void addResults(const CheckedProject& project, Json& results) {
    std::vector<std::string> pointers;
    for (const Finding& finding : project.checked.findings)
        pointers.push_back(pointerOf(finding));
    for (const checks::Silenced& silenced : project.checked.silenced)
        pointers.push_back(pointerOf(silenced.finding));
    std::vector<std::string> positions(pointers.size());
    if (!project.text.empty()) positions = project::positionsOf(project.text, pointers);
    std::size_t at = 0;
    for (const Finding& finding : project.checked.findings)
        results.push_back(resultOf(project, finding, positions[at++]));
    for (const checks::Silenced& silenced : project.checked.silenced) {
        Json result = resultOf(project, silenced.finding, positions[at++]);
        result["suppressions"] =
            Json::array({Json{{"kind", "inSource"}, {"justification", silenced.reason}}});
        results.push_back(std::move(result));
    }
}

}  // namespace

std::string sarif(const std::vector<CheckedProject>& projects) {
    Json rules = Json::array();
    for (const std::string_view name : checks::checkNames())
        rules.push_back(Json{{"id", std::string(name)}});
    Json results = Json::array();
    for (const CheckedProject& project : projects)
        addResults(project, results);
    const Json driver{{"name", "Tenter"}, {"rules", std::move(rules)}};
    const Json run{{"tool", Json{{"driver", driver}}},
                   {"columnKind", "unicodeCodePoints"},
                   {"results", std::move(results)}};
    Json log = Json::object();
    log["$schema"] =
        "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    log["version"] = "2.1.0";
    log["runs"] = Json::array({run});
    return project::prettyJson(log);
}

}  // namespace tenter::emit
