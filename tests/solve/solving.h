// Rows to be solved, and a judge of them that is not the solver: the ordinary layout.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <random>

#include "../layout/laying.h"
#include "checks/checks.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/json_text.h"
#include "solve/notation.h"
#include "solve/solve.h"

namespace tenter::test {

inline text::ParagraphStore& solveStore() {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return store;
}

/// The sample projects by file name.
inline std::map<std::string, project::Project> samples() {
    std::map<std::string, project::Project> all;
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SOURCE_DIR "/sample-projects")) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        project::Problems problems;
        auto project = project::read(entry.path(), problems);
        EXPECT_TRUE(project.has_value()) << entry.path();
        if (project) all.emplace(entry.path().filename().string(), std::move(*project));
    }
    return all;
}

/// `project` with wishes as the command line writes them, on top of its own.
inline project::Project wishing(project::Project project, const std::vector<std::string>& wishes) {
    project::Wishes said = project.wishes.value_or(project::Wishes());
    project::Problems problems;
    for (const std::string& wish : wishes)
        EXPECT_TRUE(solve::addWish(wish, project, said, problems)) << wish;
    project.wishes = said;
    return project;
}

inline std::string inSentences(const project::Project& project, const solve::Answer& answer) {
    std::string text;
    for (const std::string& sentence : solve::sentences(project, answer))
        text += sentence + "\n";
    return text;
}

/// What of `wishes` a layout breaks at its width, in words; empty if nothing. Sizes within `sizes` CSS px,
/// since rounding to emitted numbers may move them.
inline std::string brokenAt(const project::Project& project, const project::Wishes& wishes,
                            const layout::PreparedRow& row, const layout::Layout& laid, double sizes = 0.01) {
    const auto at = [&](const auto& held) -> std::optional<double> {
        for (const auto& one : held)
            if (one.from < laid.width && laid.width <= one.to) return static_cast<double>(one.value);
        return std::nullopt;
    };
    using project::RoleWishes;
    for (std::size_t card = 0; card < laid.cards.size(); ++card) {
        if (std::ranges::count(wishes.without, static_cast<int>(card)) > 0) continue;
        for (std::size_t i = 0; i < laid.cards[card].partCount; ++i) {
            const layout::LaidPart& part = laid.parts[laid.cards[card].firstPart + i];
            if (part.picture || part.lineCount == 0) continue;
            const std::string& role = row.roles()[part.style];
            const auto& copy = std::get<project::TextPart>(project.cards[card].parts[part.index]).copy;
            const auto forced = 1 + std::ranges::count(copy, project::Run::Kind::Break, &project::Run::kind);
            const std::string where = " of card " + std::to_string(card) + " at " +
                                      std::to_string(laid.width) + " " + std::string(row.profile().name());
            if (const auto most = at(project::held(wishes, role, &RoleWishes::lines));
                most && part.lineCount > std::max(*most, static_cast<double>(forced)))
                return std::to_string(part.lineCount) + " lines of " + role + where;
            const auto least = at(project::held(wishes, role, &RoleWishes::leastSize));
            const auto most = at(project::held(wishes, role, &RoleWishes::mostSize));
            if ((least && part.fontSize < *least - sizes) || (most && part.fontSize > *most + sizes))
                return std::to_string(part.fontSize) + " px of " + role + where;
            const auto few = at(project::held(wishes, role, &RoleWishes::leastMeasure));
            const auto many = at(project::held(wishes, role, &RoleWishes::mostMeasure));
            const bool measured = part.lineCount >= static_cast<std::uint32_t>(project::measuredLines);
            if (measured && ((few && part.measure < *few - 1e-6) || (many && part.measure > *many + 1e-6)))
                return std::to_string(part.measure) + " characters of " + role + where;
            for (std::uint32_t line = 0; line < part.lineCount; ++line)
                if (laid.lines[part.firstLine + line].line.width > part.available + 1e-6)
                    return "a line of " + role + " that sticks out" + where;
        }
    }
    return {};
}

/// The same at `count` random widths of the range, in every variant of `variants`, under every break profile.
inline std::string brokenAnywhere(const project::Project& solved, const std::vector<std::size_t>& variants,
                                  int count, std::mt19937& random) {
    const project::Wishes wishes = project::wishesOf(solved);
    std::uniform_real_distribution<double> widths(solved.leastWidth, solved.mostWidth);
    layout::Layout laid;
    for (const std::size_t variant : variants) {
        for (const text::BreakProfile* profile : text::profiles()) {
            const layout::PreparedRow row(solved, variant, solveStore(), *profile);
            for (int i = 0; i < count; ++i) {
                layout::layOut(row, widths(random), laid);
                const std::string broken = brokenAt(solved, wishes, row, laid);
                if (!broken.empty()) return solved.variants[variant].className + ": " + broken;
            }
        }
    }
    return {};
}

inline std::vector<std::size_t> allVariants(const project::Project& project) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < project.variants.size(); ++i)
        all.push_back(i);
    return all;
}

/// Every ramp that `settings` says, its ends multiplied by `first` and `last`.
inline void spoil(project::Settings& settings, double first, double last) {
    for (auto& [role, style] : settings.text.roles) {
        if (!style.size) continue;
        const units::RampPoint from{style.size->from().width,
                                    std::clamp(style.size->from().size * first, 1.0, 400.0)};
        const units::RampPoint to{style.size->to().width,
                                  std::clamp(style.size->to().size * last, 1.0, 400.0)};
        if (from.width < to.width)
            style.size = *units::Ramp::between(from, to);
        else
            style.size = units::Ramp::flat(from.size);
    }
}
inline void spoil(project::Project& project, double first, double last) {
    spoil(project.style, first, last);
    for (project::Variant& variant : project.variants) {
        spoil(variant.set, first, last);
        for (project::Band& band : variant.bands)
            spoil(band.set, first, last);
    }
}

}  // namespace tenter::test
