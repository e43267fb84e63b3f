// Rows to solve, and a judge that is independent of the solver: the ordinary layout.
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
#include "solve/answer_table.h"
#include "solve/notation.h"
#include "solve/registry.h"
#include "solve/solve.h"

namespace tenter::test {

inline text::ParagraphStore& solveStore() {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return store;
}

/// The kind of wish with that name.
inline const solve::Constraint* kindOf(const char* name) {
    const solve::Constraint* const kind = solve::constraintNamed(name);
    EXPECT_NE(kind, nullptr) << name;
    return kind;
}

/// The projects in `folder` by file name.
inline std::map<std::string, project::Project> samplesIn(const std::filesystem::path& folder) {
    std::map<std::string, project::Project> all;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        project::Problems problems;
        auto project = project::read(entry.path(), problems);
        EXPECT_TRUE(project.has_value()) << entry.path();
        if (project) all.emplace(entry.path().filename().string(), std::move(*project));
    }
    return all;
}

/// The sample projects by file name.
inline std::map<std::string, project::Project> samples() {
    return samplesIn(TENTER_SOURCE_DIR "/sample-projects");
}

/// `project` with its own wishes and those in `wishes`, in the notation of the command line.
inline project::Project wishing(project::Project project, const std::vector<std::string>& wishes) {
    project::Wishes said = project.row().wishes.value_or(project::Wishes());
    project::Problems problems;
    for (const std::string& wish : wishes)
        EXPECT_TRUE(solve::addWish(wish, project, said, problems)) << wish;
    project.row().wishes = said;
    return project;
}

/// The answer as the command line prints it.
inline std::string answerText(const project::Project& project, const solve::Answer& answer) {
    return solve::toText(project, solve::answerTable(project, answer, solveStore()));
}

/// `card` with no wishes but `wishes`; the default ones are removed.
inline project::Project wishingOnly(project::Project card, const std::vector<solve::Wish>& wishes) {
    project::Wishes only;
    for (const char* role : {"heading", "body"})
        for (const char* const kind :
             {"lines", "leastMeasure", "mostMeasure", "leastSize", "withColumn", "zoom"}) {
            solve::Wish byDefault;
            byDefault.kind = kindOf(kind);
            byDefault.role = role;
            only.roles.push_back(solve::toRoleWishes(byDefault, true));
        }
    for (const solve::Wish& wish : wishes)
        only.roles.push_back(solve::toRoleWishes(wish));
    card.row().wishes = project::overlaid(project::Wishes(), only);
    return card;
}

/// Tests layouts of a variant under a break profile against the project's wishes.
class Judge {
public:
    Judge(const project::Project& project, std::size_t variant, const text::BreakProfile& profile)
        : project_(project), row_(project, variant, solveStore(), profile) {
        const project::Wishes wishes = project::effectiveWishes(project);
        for (std::size_t card = 0; card < project.row().cards.size(); ++card)
            without_.push_back(std::ranges::count(wishes.without, static_cast<int>(card)) > 0);
        using project::RoleWishes;
        for (const std::string& role : row_.roles())
            roles_.push_back({project::wishRanges(wishes, role, &RoleWishes::lines),
                              project::wishRanges(wishes, role, &RoleWishes::leastSize),
                              project::wishRanges(wishes, role, &RoleWishes::mostSize),
                              project::wishRanges(wishes, role, &RoleWishes::leastMeasure),
                              project::wishRanges(wishes, role, &RoleWishes::mostMeasure)});
    }

    /// The wish that the row violates at `width`, in words; empty if there is none. Sizes may differ by 0.01
    /// px, the rounding of emitted numbers.
    std::string violatedAt(double width) {
        layout::layOut(row_, width, laid_);
        for (std::size_t card = 0; card < laid_.cards.size(); ++card)
            for (std::size_t i = 0; i < laid_.cards[card].partCount && !without_[card]; ++i) {
                const layout::LaidPart& part = laid_.parts[laid_.cards[card].firstPart + i];
                const char* const what = part.picture || part.lineCount == 0 ? nullptr : brokenBy(part, card);
                if (what != nullptr)
                    return std::string(what) + " of " + row_.roles()[part.role] + " in card " +
                           std::to_string(card) + " at " + std::to_string(width) + " " +
                           std::string(row_.profile().name());
            }
        return {};
    }

private:
    struct Asked {
        std::vector<project::WishRange<int>> lines;
        std::vector<project::WishRange<double>> leastSize, mostSize, leastMeasure, mostMeasure;
    };

    template <class T>
    std::optional<double> here(const std::vector<project::WishRange<T>>& held) const {
        for (const auto& one : held)
            if (one.from < laid_.width && laid_.width <= one.to) return static_cast<double>(one.value);
        return std::nullopt;
    }

    const char* brokenBy(const layout::LaidPart& part, std::size_t card) const {
        const Asked& asked = roles_[part.role];
        if (const auto most = here(asked.lines); most && part.lineCount > *most) {
            const auto& copy = std::get<project::TextPart>(project_.row().cards[card].parts[part.index]).copy;
            if (part.lineCount > 1 + std::ranges::count(copy, project::Run::Kind::Break, &project::Run::kind))
                return "lines";
        }
        const auto least = here(asked.leastSize);
        const auto most = here(asked.mostSize);
        if ((least && part.fontSize < *least - 0.01) || (most && part.fontSize > *most + 0.01)) return "size";
        if (part.lineCount >= static_cast<std::uint32_t>(project::measuredLines)) {
            const auto few = here(asked.leastMeasure);
            const auto many = here(asked.mostMeasure);
            if ((few && part.measure < *few - 1e-6) || (many && part.measure > *many + 1e-6))
                return "measure";
        }
        const double fitting = part.available + row_.profile().fitAllowance() + 1e-6;
        for (std::uint32_t line = 0; line < part.lineCount; ++line)
            if (laid_.lines[part.firstLine + line].line.width > fitting) return "a word";
        return nullptr;
    }

    const project::Project& project_;
    layout::PreparedRow row_;
    std::vector<bool> without_;
    std::vector<Asked> roles_;  // as the row counts them
    layout::Layout laid_;
};

/// A wish that is violated at one of `count` random widths, in any variant and under any break profile; empty
/// if there is none.
inline std::string violatedAnywhere(const project::Project& solved, int count, std::mt19937& random) {
    std::uniform_real_distribution<double> widths(solved.leastWidth, solved.mostWidth);
    for (std::size_t variant = 0; variant < solved.row().variants.size(); ++variant) {
        for (const text::BreakProfile* profile : text::profiles()) {
            Judge judge(solved, variant, *profile);
            for (int i = 0; i < count; ++i) {
                const std::string broken = judge.violatedAt(widths(random));
                if (!broken.empty()) return solved.row().variants[variant].className + ": " + broken;
            }
        }
    }
    return {};
}

inline std::vector<std::size_t> allVariants(const project::Project& project) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < project.row().variants.size(); ++i)
        all.push_back(i);
    return all;
}

/// Multiplies the end sizes of every ramp in `settings` by `first` and `last`.
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
    spoil(project.row().style, first, last);
    for (project::Variant& variant : project.row().variants) {
        spoil(variant.set, first, last);
        for (project::Band& band : variant.bands)
            spoil(band.set, first, last);
    }
}

/// Solves every variant of `project`. While its wishes conflict, applies a relaxation of the answer and tries
/// again; `project` then has the relaxed wishes.
inline solve::Answer solveRelaxing(project::Project& project) {
    for (int times = 0;; ++times) {
        solve::Answer answer = solve::solve(project, allVariants(project), solveStore());
        const auto& ways = answer.conflict.relaxations;
        if (answer.solved || times == 12) return answer;
        if (ways.empty()) {
            // There are sizes, but none on the grid.
            project::Wishes fine;
            fine.grid = units::Length();
            project.row().wishes = project::overlaid(project.row().wishes.value_or(project::Wishes()), fine);
            continue;
        }
        const auto way = std::ranges::find_if(ways, [](const solve::Relaxation& one) {
            return !one.removed && one.wish.kind != kindOf("leastSize");
        });
        project = solve::relaxed(project, way == ways.end() ? ways.front() : *way);
    }
}

}  // namespace tenter::test
