// Projects and findings for the tests of checks.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
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

/// The first finding of check `name`, with that severity if one is given; null if there is none.
inline const Finding* find(const std::vector<Finding>& findings, const std::string& name,
                           std::optional<Severity> severity = std::nullopt) {
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.check == name && (!severity || finding.severity == *severity);
    });
    return found == findings.end() ? nullptr : &*found;
}

/// A copy of the first finding of check `name`; its `check` is empty if there is none.
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

/// Sets the setting at `path` in the project's style to a JSON value.
inline void set(project::Project& project, const std::string& path, const std::string& json) {
    project::Problems problems;
    EXPECT_TRUE(project::setSetting(project.row().style, path, project::Json::parse(json), problems)) << path;
}

/// Sets the setting at `path` in one band of the first variant.
inline void setInBand(project::Project& project, std::size_t band, const std::string& path,
                      const std::string& json) {
    project::Problems problems;
    EXPECT_TRUE(project::setSetting(project.row().variants[0].bands[band].set, path,
                                    project::Json::parse(json), problems))
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

/// A paragraph of many lines.
inline const std::string longText =
    "We follow the old sheep path to the sluice and wait for the curlews, and whoever is cold may take the "
    "shorter "
    "way back along the wall, past the lamp and the boats drawn up for winter, to the hut where there is "
    "soup.";

/// A quiet row with that heading.
inline project::Project headed(const std::string& heading) {
    return quiet("[" + card(heading, "Out and back.") + "]");
}

/// The whole widths at which some part of `role` has more than `most` lines.
inline std::set<int> widthsOver(const project::Project& project, const std::string& role,
                                std::uint32_t most) {
    std::set<int> widths;
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    for (int width = 320; width <= 1920; ++width) {
        const layout::Layout laid = layout::layOut(row, width);
        for (const layout::LaidPart& part : laid.parts)
            if (!part.picture && row.roles()[part.role] == role && part.lineCount > most)
                widths.insert(width);
    }
    return widths;
}

/// The whole widths of a finding.
inline std::set<int> wholeWidthsOf(const Finding& finding) {
    std::set<int> widths;
    for (const sweep::Interval& span : finding.widths)
        for (int width = 320; width <= 1920; ++width)
            if ((width > span.from && width <= span.to) || (width == 320 && span.from == 320))
                widths.insert(width);
    return widths;
}

}  // namespace tenter::test
