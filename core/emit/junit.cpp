#include "emit/junit.h"

#include "checks/registry.h"
#include "emit/escape.h"
#include "emit/table.h"

namespace tenter::emit {

using checks::Finding;

namespace {

/// Text without the characters that XML 1.0 § 2.2 does not allow.
std::string xmlText(const std::string& text) {
    std::string out = html(oneLine(text));
    for (const char* last : {"\xEF\xBF\xBE", "\xEF\xBF\xBF"})
        for (std::size_t at = out.find(last); at != std::string::npos; at = out.find(last, at))
            out.replace(at, 3, "\xEF\xBF\xBD");
    return out;
}

std::string xmlAttribute(const std::string& name, const std::string& value) {
    return " " + name + "=\"" + xmlText(value) + "\"";
}

/// A finding as lines of text inside an element.
std::string caseText(const Finding& finding) {
    return xmlText(finding.says) + "\nBasis: " + xmlText(finding.source) + "\n";
}

/// The test case of one check.
struct TestCase {
    std::string name;
    std::vector<const Finding*> failing;
    std::vector<const Finding*> passing;
    const checks::Silenced* silenced = nullptr;
    [[nodiscard]] bool isSkipped() const { return silenced != nullptr; }
};

std::vector<TestCase> testCasesOf(const CheckedProject& project, checks::Severity failOn) {
    std::vector<TestCase> cases;
    cases.reserve(checks::checkNames().size());
    for (const std::string_view name : checks::checkNames()) {
        TestCase one{std::string(name), {}, {}, nullptr};
        for (const Finding& finding : project.checked.findings)
            if (finding.check == name)
                (finding.severity >= failOn ? one.failing : one.passing).push_back(&finding);
        for (const checks::Silenced& silenced : project.checked.silenced)
            if (silenced.finding.check == name) one.silenced = &silenced;
        cases.push_back(std::move(one));
    }
    return cases;
}

void writeCase(const TestCase& one, const std::string& suite, std::string& out) {
    out += "    <testcase" + xmlAttribute("name", one.name) + xmlAttribute("classname", suite);
    if (one.failing.empty() && one.passing.empty() && !one.isSkipped()) {
        out += "/>\n";
        return;
    }
    out += ">\n";
    if (one.isSkipped())
        out += "      <skipped" + xmlAttribute("message", "Silenced: " + one.silenced->reason) + "/>\n";
    if (!one.failing.empty()) {
        out += "      <failure" + xmlAttribute("message", one.failing.front()->says) +
               xmlAttribute("type", std::string(checks::word(one.failing.front()->severity))) + ">";
        for (const Finding* finding : one.failing)
            out += caseText(*finding);
        out += "</failure>\n";
    }
    if (!one.passing.empty()) {
        out += "      <system-out>";
        for (const Finding* finding : one.passing)
            out += caseText(*finding);
        out += "</system-out>\n";
    }
    out += "    </testcase>\n";
}

}  // namespace

std::string junit(const std::vector<CheckedProject>& projects, checks::Severity failOn) {
    std::string suites;
    std::size_t tests = 0;
    std::size_t failures = 0;
    for (const CheckedProject& project : projects) {
        const std::string name = project.file + ", variant " + project.className;
        std::string cases;
        std::size_t failed = 0;
        std::size_t skipped = 0;
        const std::vector<TestCase> all = testCasesOf(project, failOn);
        for (const TestCase& one : all) {
            failed += one.failing.empty() ? 0 : 1;
            skipped += one.isSkipped() ? 1 : 0;
            writeCase(one, name, cases);
        }
        suites += "  <testsuite" + xmlAttribute("name", name) +
                  xmlAttribute("tests", std::to_string(all.size())) +
                  xmlAttribute("failures", std::to_string(failed)) + xmlAttribute("errors", "0") +
                  xmlAttribute("skipped", std::to_string(skipped)) + ">\n" + cases + "  </testsuite>\n";
        tests += all.size();
        failures += failed;
    }
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites" + xmlAttribute("name", "Tenter") +
           xmlAttribute("tests", std::to_string(tests)) + xmlAttribute("failures", std::to_string(failures)) +
           xmlAttribute("errors", "0") + ">\n" + suites + "</testsuites>\n";
}

}  // namespace tenter::emit
