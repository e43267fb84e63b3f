// Rows for tests of the sweep: the samples, random ones, and what a layout says of a part.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <functional>
#include <random>

#include "../layout/laying.h"
#include "../project/random_project.h"
#include "project/json_text.h"
#include "sweep/sweep.h"

namespace tenter::test {

inline text::ParagraphStore& sweepStore() {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return store;
}

/// A row and where it is from, for messages.
struct Swept {
    std::string name;
    const project::Project& project;
    const layout::PreparedRow& row;
    std::size_t variant = 0;
};

/// Calls `what` for every variant of `project` under every break profile.
inline void forEachRow(const std::string& name, const project::Project& project,
                       const std::function<void(const Swept&)>& what) {
    for (std::size_t variant = 0; variant < project.variants.size(); ++variant) {
        for (const text::BreakProfile* profile : text::profiles()) {
            const layout::PreparedRow row(project, variant, sweepStore(), *profile);
            what({name + " ." + project.variants[variant].className + " " + std::string(profile->name()),
                  project, row, variant});
        }
    }
}

inline void forEachSample(const std::function<void(const Swept&)>& what) {
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SOURCE_DIR "/sample-projects")) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        project::Problems problems;
        const auto project = project::read(entry.path(), problems);
        ASSERT_TRUE(project.has_value()) << entry.path();
        forEachRow(entry.path().filename().string(), *project, what);
    }
}

/// Sixty random projects: any setting may be set, to anything that is allowed.
inline void forEachRandomProject(const std::function<void(const Swept&)>& what) {
    project::RandomProject random(20261125);
    for (int i = 0; i < 60; ++i) {
        project::Problems problems;
        const auto project = project::parse(project::prettyJson(random.next()), "random", {}, problems);
        ASSERT_TRUE(project.has_value());
        forEachRow("random " + std::to_string(i), *project, what);
    }
}

inline double somewhere(double least, double most, std::mt19937& random) {
    return std::uniform_real_distribution<double>(least, most)(random);
}

/// Each part's number of lines at `width`, by card, then part; pictures have 0.
inline std::vector<std::uint32_t> countsAt(const layout::PreparedRow& row, double width) {
    std::vector<std::uint32_t> counts;
    for (const layout::LaidPart& part : layout::layOut(row, width).parts)
        counts.push_back(part.lineCount);
    return counts;
}

/// Where part `part` of card `card` is among all.
inline std::size_t indexOf(const layout::Layout& laid, std::size_t card, std::size_t part) {
    return laid.cards[card].firstPart + part;
}

}  // namespace tenter::test
