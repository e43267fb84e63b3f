// Rows for tests of the sweep: the samples and random projects.
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

/// A row and its origin, for messages.
struct Swept {
    std::string name;
    const project::Project& project;
    const layout::PreparedRow& row;
    std::size_t variant = 0;
};

/// Calls `what` for every variant of `project` under every break profile.
inline void forEachRow(const std::string& name, const project::Project& project,
                       const std::function<void(const Swept&)>& what) {
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
        for (const text::BreakProfile* profile : text::profiles()) {
            const layout::PreparedRow row(project, variant, sweepStore(), *profile);
            what(
                {name + " ." + project.row().variants[variant].className + " " + std::string(profile->name()),
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

/// Calls `what` for sixty random projects, with any setting set to any allowed value.
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

/// Largest share by which lengths in rem at one width differ from those of a range of widths: a layout at one
/// width truncates the root's font size exactly, a sweep by the mean of the engine's truncations.
inline double rootShare(const layout::PreparedRow& row, const layout::Layout& laid) {
    if (!row.interval(laid.interval).page.rootSize.isFluid()) return 0;
    return row.profile().fluidStep() / 2 / row.rem(laid.width);
}

/// The line count of each part at `width` (CSS px), by card, then part; 0 for pictures.
inline std::vector<std::uint32_t> countsAt(const layout::PreparedRow& row, double width) {
    std::vector<std::uint32_t> counts;
    for (const layout::LaidPart& part : layout::layOut(row, width).parts)
        counts.push_back(part.lineCount);
    return counts;
}

/// The index of part `part` of card `card` among all parts.
inline std::size_t indexOf(const layout::Layout& laid, std::size_t card, std::size_t part) {
    return laid.cards[card].firstPart + part;
}

}  // namespace tenter::test
