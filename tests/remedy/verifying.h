// Verifies remedies: applied once more and compared with what they claim.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <set>
#include <string>

#include "checks/cause.h"
#include "checks/checks.h"
#include "project/file.h"
#include "project/validate.h"
#include "remedy/remedies.h"
#include "remedy/wording.h"

namespace tenter::test {

using checks::Finding;

/// The findings of a row by variant and key.
using FindingsByKey = std::map<std::pair<std::size_t, std::string>, Finding>;

inline FindingsByKey allFindings(const project::Project& project, text::ParagraphStore& store) {
    FindingsByKey all;
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant)
        for (const Finding& finding : checks::check(project, variant, store))
            EXPECT_TRUE(all.emplace(std::pair(variant, finding.key), finding).second)
                << "two findings with one key: " << finding.says;
    return all;
}

inline std::set<std::pair<std::size_t, std::string>> keysOf(const std::vector<remedy::Change>& changes) {
    std::set<std::pair<std::size_t, std::string>> keys;
    for (const remedy::Change& change : changes)
        keys.emplace(change.variant, change.finding.key);
    return keys;
}

/// The farthest that an edge of a card or part moves at `width`, in any variant, CSS px.
inline double movedAt(const project::Project& before, const project::Project& after, double width,
                      text::ParagraphStore& store) {
    double most = 0;
    for (std::size_t variant = 0; variant < before.row().variants.size(); ++variant) {
        const layout::PreparedRow rowBefore(before, variant, store, text::defaultProfile());
        const layout::PreparedRow rowAfter(after, variant, store, text::defaultProfile());
        const layout::Layout one = layout::layOut(rowBefore, width);
        const layout::Layout other = layout::layOut(rowAfter, width);
        const auto add = [&](const layout::Box& a, const layout::Box& b) {
            most = std::max({most, std::abs(a.x - b.x), std::abs(a.y - b.y), std::abs(a.right() - b.right()),
                             std::abs(a.bottom() - b.bottom())});
        };
        for (std::size_t i = 0; i < one.cards.size(); ++i)
            add(one.cards[i].box, other.cards[i].box);
        for (std::size_t i = 0; i < one.parts.size(); ++i)
            add(one.parts[i].box, other.parts[i].box);
    }
    return most;
}

/// Expects that the project of a remedy can be saved and opened.
inline void expectSound(const remedy::Remedy& remedy) {
    EXPECT_TRUE(project::validate(remedy.project).empty());
    project::Problems problems;
    const auto again = project::parse(project::write(remedy.project), "remedied", {}, problems);
    ASSERT_TRUE(again.has_value()) << (problems.empty() ? "" : problems.front().line());
    EXPECT_EQ(project::write(*again), project::write(remedy.project));
}

/// Expects that a remedy does what it says: the finding is gone or at less than half of its widths; the
/// findings that come, go or grow in any variant are those listed; none of them is as severe; boxes move as
/// it says.
inline void expectTrue(const project::Project& project, std::size_t variant, const Finding& finding,
                       const remedy::Remedy& remedy, const FindingsByKey& before,
                       text::ParagraphStore& store) {
    SCOPED_TRACE(finding.says);
    SCOPED_TRACE(remedy::titleOf(remedy));
    expectSound(remedy);
    const FindingsByKey after = allFindings(remedy.project, store);
    const std::pair own{variant, finding.key};
    const auto left = after.find(own);
    EXPECT_EQ(remedy.removes, left == after.end());
    if (left != after.end()) {
        EXPECT_LE(checks::lengthOf(left->second.widths), checks::lengthOf(finding.widths) / 2);
        EXPECT_DOUBLE_EQ(remedy.shareAfter, left->second.share);
    }
    std::set<std::pair<std::size_t, std::string>> lost, gained, grown;
    for (const auto& [key, one] : before)
        if (key != own && !after.contains(key)) lost.insert(key);
    for (const auto& [key, one] : after) {
        const auto was = before.find(key);
        if (key == own || (was != before.end() && one.share <= was->second.share + 0.02)) continue;
        (was == before.end() ? gained : grown).insert(key);
        EXPECT_LT(one.severity, checks::Severity::Error) << one.says;
        EXPECT_LT(one.severity, finding.severity) << one.says;
    }
    EXPECT_EQ(keysOf(remedy.lost), lost);
    EXPECT_EQ(keysOf(remedy.gained), gained);
    EXPECT_EQ(keysOf(remedy.grown), grown);
    if (remedy.move.distance > 0) {
        EXPECT_NEAR(movedAt(project, remedy.project, remedy.move.width, store), remedy.move.distance, 1e-6);
    }
    for (double width = project.leastWidth; width <= project.mostWidth; width += 160)
        EXPECT_LE(movedAt(project, remedy.project, width, store), remedy.move.distance + 0.05) << width;
}

/// Expects that every remedy of every finding is true. Returns how many there are.
inline std::size_t expectTrueRemedies(const project::Project& project, text::ParagraphStore& store) {
    const project::Project copy = project;
    const FindingsByKey before = allFindings(project, store);
    std::size_t count = 0;
    for (const auto& [key, finding] : before) {
        const std::vector<remedy::Remedy> remedies = remedy::remediesFor(project, key.first, finding, store);
        EXPECT_LE(remedies.size(), 4U);
        for (const remedy::Remedy& remedy : remedies)
            expectTrue(project, key.first, finding, remedy, before, store);
        count += remedies.size();
    }
    EXPECT_TRUE(project == copy);
    return count;
}

}  // namespace tenter::test
