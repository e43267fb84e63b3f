// Projects and findings for the tests of checks.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "../layout/laying.h"
#include "checks/checks.h"
#include "project/cascade.h"
#include "project/json_text.h"
#include "readable.h"

namespace tenter::test {

using checks::Finding;
using checks::Severity;

inline text::ParagraphStore& checkStore() {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return store;
}

/// The findings of the first variant. Every test that asks for findings also tests their texts.
inline std::vector<Finding> findingsOf(const project::Project& project, const checks::Options& options = {}) {
    std::vector<Finding> findings = checks::check(project, 0, checkStore(), options);
    for (const Finding& finding : findings)
        expectReadable(finding, project);
    return findings;
}

/// The first finding of check `name`, of that severity if one is said; null if there is none.
inline const Finding* find(const std::vector<Finding>& findings, const std::string& name,
                           std::optional<Severity> severity = std::nullopt) {
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.check == name && (!severity || finding.severity == *severity);
    });
    return found == findings.end() ? nullptr : &*found;
}

/// `name`'s finding in `project`, copied; its check is empty if there is none.
inline Finding findingOf(const project::Project& project, const std::string& name,
                         std::optional<Severity> severity = std::nullopt,
                         const checks::Options& options = {}) {
    const std::vector<Finding> all = findingsOf(project, options);
    const Finding* found = find(all, name, severity);
    return found == nullptr ? Finding() : *found;
}

inline bool has(const project::Project& project, const std::string& name,
                std::optional<Severity> severity = std::nullopt, const checks::Options& options = {}) {
    return !findingOf(project, name, severity, options).check.empty();
}

/// One column over the whole page, no spacing, one card of a heading, a paragraph and a button.
inline project::Project quiet(const std::string& cards = "", const std::string& bands = "[{}]",
                              const std::string& row = R"({"columns": 1, "width": "100%"})") {
    return projectOf(styleOf(row, plainCard), bands,
                     cards.empty() ? "[" + card("Low tide", "Out and back.") + "]" : cards);
}

/// Sets what stands at `path` in the project's style to a JSON value.
inline void set(project::Project& project, const std::string& path, const std::string& json) {
    project::Problems problems;
    EXPECT_TRUE(project::setSetting(project.style, path, project::Json::parse(json), problems)) << path;
}

/// The same in one band of the first variant.
inline void setInBand(project::Project& project, std::size_t band, const std::string& path,
                      const std::string& json) {
    project::Problems problems;
    EXPECT_TRUE(
        project::setSetting(project.variants[0].bands[band].set, path, project::Json::parse(json), problems))
        << path;
}

inline void expectSpans(const Finding& finding, const std::vector<sweep::Interval>& spans,
                        double within = 1e-6) {
    ASSERT_EQ(finding.widths.size(), spans.size()) << finding.says;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        EXPECT_NEAR(finding.widths[i].from, spans[i].from, within) << finding.says;
        EXPECT_NEAR(finding.widths[i].to, spans[i].to, within) << finding.says;
    }
}

}  // namespace tenter::test
