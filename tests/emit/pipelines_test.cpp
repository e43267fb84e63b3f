// The formats of pipelines. SARIF: the rules of OASIS SARIF 2.1.0 and its schema for the members in use.
// JUnit XML has no standard; the rules are those of the schemas that pipelines publish, from memory.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "checks/registry.h"
#include "emit/junit.h"
#include "emit/sarif.h"

namespace tenter::emit {
namespace {

using Json = nlohmann::json;

checks::Finding finding(checks::Severity severity, const std::string& check, const std::string& says) {
    checks::Finding finding;
    finding.check = check;
    finding.severity = severity;
    finding.key = check + " 1";
    finding.place = project::PartRef{0, 1};
    finding.widths = {{640, 840}};
    finding.share = 0.125;
    finding.says = says;
    finding.source = "common practice, no source";
    return finding;
}

const char* const file = R"({
  "cards": [
    {"parts": [
      {"picture": "a.png"},
      {"role": "heading", "copy": "High water"}
    ]}
  ]
})";

/// A project with one error, one note and one silenced finding.
CheckedProject checkedProject(const std::string& name) {
    CheckedProject project{name, file, "tides-pair", {}};
    project.checked.findings = {
        finding(checks::Severity::Error, "out-of-line", "It is \"<too>\" wide & more."),
        finding(checks::Severity::Note, "contrast", "It is pale.")};
    project.checked.silenced = {
        {finding(checks::Severity::Warning, "holes", "A hole."), "a fifth <walk> is added"}};
    return project;
}

void expectOnly(const Json& object, const std::set<std::string>& allowed) {
    ASSERT_TRUE(object.is_object()) << object;
    for (const auto& [key, value] : object.items())
        EXPECT_TRUE(allowed.contains(key)) << key;
}

/// SARIF § 3.27: the members of a result that Tenter writes, and what they must be.
void expectResult(const Json& result, const Json& rules) {
    expectOnly(result, {"ruleId", "ruleIndex", "level", "message", "locations", "partialFingerprints",
                        "suppressions", "properties"});
    ASSERT_LT(result.at("ruleIndex").get<std::size_t>(), rules.size());
    EXPECT_EQ(rules[result["ruleIndex"].get<std::size_t>()]["id"], result.at("ruleId"));
    EXPECT_TRUE((std::set<std::string>{"none", "note", "warning", "error"}.contains(result.at("level"))));
    expectOnly(result.at("message"), {"text"});
    EXPECT_TRUE(result["message"]["text"].is_string());
    for (const Json& location : result.at("locations")) {
        expectOnly(location, {"physicalLocation", "logicalLocations"});
        const Json& physical = location.at("physicalLocation");
        expectOnly(physical, {"artifactLocation", "region"});
        static const std::regex uri("([A-Za-z][A-Za-z0-9+.-]*:)?[A-Za-z0-9._~!$&'()*+,;=@%/-]+");
        EXPECT_TRUE(std::regex_match(physical.at("artifactLocation").at("uri").get<std::string>(), uri));
        EXPECT_GE(physical.at("region").at("startLine").get<int>(), 1);
        EXPECT_GE(physical.at("region").at("startColumn").get<int>(), 1);
    }
    const Json suppressions = result.value("suppressions", Json::array());
    for (const Json& suppression : suppressions) {
        expectOnly(suppression, {"kind", "justification"});
        EXPECT_TRUE(suppression.at("kind") == "inSource" || suppression.at("kind") == "external");
    }
    const Json prints = result.value("partialFingerprints", Json::object());
    for (const auto& [key, value] : prints.items())
        EXPECT_TRUE(value.is_string()) << key;
}

TEST(Sarif, KeepsTheRulesOfItsStandard) {
    const Json log = Json::parse(sarif({checkedProject("tides.tenter.json"), checkedProject("/a b/c.json")}));
    expectOnly(log, {"$schema", "version", "runs"});
    EXPECT_EQ(log["version"], "2.1.0");
    ASSERT_EQ(log["runs"].size(), 1U);
    const Json& run = log["runs"][0];
    expectOnly(run, {"tool", "columnKind", "results"});
    EXPECT_TRUE(run["columnKind"] == "unicodeCodePoints" || run["columnKind"] == "utf16CodeUnits");
    const Json& driver = run["tool"]["driver"];
    EXPECT_EQ(driver["name"], "Tenter");
    std::set<std::string> ids;
    for (const Json& rule : driver["rules"])
        EXPECT_TRUE(ids.insert(rule.at("id")).second);
    EXPECT_EQ(ids.size(), checks::checkNames().size());
    ASSERT_EQ(run["results"].size(), 6U);
    for (const Json& result : run["results"])
        expectResult(result, driver["rules"]);
}

TEST(Sarif, NamesFileLineAndPart) {
    const Json log = Json::parse(sarif({checkedProject("tides.tenter.json"), checkedProject("/a b/c.json")}));
    const Json& results = log["runs"][0]["results"];
    const Json& location = results[0]["locations"][0];
    EXPECT_EQ(location["physicalLocation"]["artifactLocation"]["uri"], "tides.tenter.json");
    EXPECT_EQ(location["physicalLocation"]["region"]["startLine"], 5);
    EXPECT_EQ(location["physicalLocation"]["region"]["startColumn"], 7);
    EXPECT_EQ(location["logicalLocations"][0]["fullyQualifiedName"], "/cards/0/parts/1");
    EXPECT_EQ(results[3]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"],
              "file:///a%20b/c.json");
    EXPECT_EQ(results[0]["level"], "error");
    EXPECT_EQ(results[0]["message"]["text"], "It is \"<too>\" wide & more.");
    EXPECT_FALSE(results[0].contains("suppressions"));
    EXPECT_EQ(results[2]["suppressions"][0]["justification"], "a fifth <walk> is added");
}

/// An element of an XML document, in document order.
struct Element {
    std::string name;
    std::string attributes;
    std::string parent;
};

/// The elements of a well-formed document without comments; a failure if it is not one.
std::vector<Element> elementsOf(const std::string& xml) {
    std::vector<Element> elements;
    std::vector<std::string> open;
    static const std::regex tag(R"re(<(/?)([a-z-]+)((?: [a-z]+="[^"<]*")*)(/?)>)re");
    std::size_t at = xml.find("?>") + 2;
    while (at < xml.size()) {
        const std::size_t next = std::min(xml.find('<', at), xml.size());
        const std::string between = xml.substr(at, next - at);
        for (std::size_t i = between.find('&'); i != std::string::npos; i = between.find('&', i + 1))
            EXPECT_TRUE(std::regex_search(between.substr(i, 8), std::regex("^&(amp|lt|gt|quot|#[0-9]+);")))
                << between;
        if (next == xml.size()) break;
        std::smatch found;
        const bool matches = std::regex_search(xml.cbegin() + static_cast<std::ptrdiff_t>(next), xml.cend(),
                                               found, tag, std::regex_constants::match_continuous);
        EXPECT_TRUE(matches) << xml.substr(next, 80);
        if (!matches) break;
        at = next + static_cast<std::size_t>(found.length());
        if (found[1] == "/") {
            EXPECT_EQ(open.back(), found[2]);
            open.pop_back();
            continue;
        }
        elements.push_back({found[2], found[3], open.empty() ? "" : open.back()});
        if (found[4] != "/") open.push_back(found[2]);
    }
    EXPECT_TRUE(open.empty());
    return elements;
}

std::string valueOf(const Element& element, const std::string& attribute) {
    std::smatch found;
    const bool there =
        std::regex_search(element.attributes, found, std::regex(" " + attribute + "=\"([^\"]*)\""));
    EXPECT_TRUE(there) << element.name << " has no " << attribute;
    return there ? found[1].str() : "";
}

std::vector<Element> named(const std::vector<Element>& elements, const std::string& name) {
    std::vector<Element> out;
    for (const Element& element : elements)
        if (element.name == name) out.push_back(element);
    return out;
}

TEST(Junit, HasSuitesOfTestCasesWithTheirCounts) {
    const std::string text =
        junit({checkedProject("a.tenter.json"), checkedProject("b.tenter.json")}, checks::Severity::Error);
    EXPECT_TRUE(text.starts_with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"));
    const std::vector<Element> elements = elementsOf(text);
    const std::map<std::string, std::string> parents{{"testsuites", ""},        {"testsuite", "testsuites"},
                                                     {"testcase", "testsuite"}, {"failure", "testcase"},
                                                     {"skipped", "testcase"},   {"system-out", "testcase"}};
    for (const Element& element : elements) {
        ASSERT_TRUE(parents.contains(element.name)) << element.name;
        EXPECT_EQ(element.parent, parents.at(element.name));
    }
    const std::vector<Element> suites = named(elements, "testsuite");
    ASSERT_EQ(suites.size(), 2U);
    const std::size_t checks = checks::checkNames().size();
    EXPECT_EQ(named(elements, "testcase").size(), 2 * checks);
    EXPECT_EQ(valueOf(suites[0], "tests"), std::to_string(checks));
    EXPECT_EQ(valueOf(suites[0], "failures"), "1");
    EXPECT_EQ(valueOf(suites[0], "skipped"), "1");
    EXPECT_EQ(valueOf(elements[0], "failures"), "2");
    EXPECT_EQ(named(elements, "failure").size(), 2U);
    EXPECT_EQ(named(elements, "skipped").size(), 2U);
    EXPECT_EQ(valueOf(named(elements, "failure")[0], "type"), "error");
    EXPECT_EQ(valueOf(named(elements, "failure")[0], "message"),
              "It is &quot;&lt;too&gt;&quot; wide &amp; more.");
    EXPECT_EQ(valueOf(named(elements, "skipped")[0], "message"), "Silenced: a fifth &lt;walk&gt; is added");
}

TEST(Junit, FailsFromTheChosenSeverityOn) {
    const auto failures = [](checks::Severity failOn) {
        return named(elementsOf(junit({checkedProject("a.tenter.json")}, failOn)), "failure").size();
    };
    EXPECT_EQ(failures(checks::Severity::Error), 1U);
    EXPECT_EQ(failures(checks::Severity::Note), 2U);
}

}  // namespace
}  // namespace tenter::emit
