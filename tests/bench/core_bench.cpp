// Times of the core: preparing a paragraph, one layout, a sweep over all widths, checks and solving.
#include <benchmark/benchmark.h>

#include "checks/checks.h"
#include "checks/room_for_copy.h"
#include "layout/layout.h"
#include "project/validate.h"
#include "samples.h"
#include "solve/solve.h"
#include "spread.h"
#include "sweep/sweep.h"

namespace tenter::bench {

namespace {

const project::TextPart& longestText(const project::Project& project) {
    const project::TextPart* longest = nullptr;
    std::size_t most = 0;
    for (const project::Card& card : project.row().cards) {
        for (const project::Part& part : card.parts) {
            const auto* text = std::get_if<project::TextPart>(&part);
            if (text == nullptr || project::plainText(text->copy).size() <= most) continue;
            most = project::plainText(text->copy).size();
            longest = text;
        }
    }
    return *longest;
}

void prepareParagraph(benchmark::State& state) {
    const project::Project project = sample(twelveCards);
    const project::TextPart& text = longestText(project);
    text::Fonts fonts;
    text::ShapingStyle style;
    if (const auto* role = project.row().style.text.find(text.role); role != nullptr && role->family)
        style.family = *role->family;
    Spread spread;
    for (auto _ : state)
        spread.time([&] {
            benchmark::DoNotOptimize(text::Paragraph::prepare(text.copy, style, fonts, text::blink()));
        });
    spread.report(state);
    state.SetLabel(std::to_string(project::plainText(text.copy).size()) + " bytes");
}
BENCHMARK(prepareParagraph)->Unit(benchmark::kMicrosecond);

struct Prepared {
    project::Project project = sample(twelveCards);
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    layout::PreparedRow row{project, 0, store, text::blink()};
};

void layOutTwelveCards(benchmark::State& state) {
    const Prepared prepared;
    layout::Layout laid;
    double width = prepared.project.leastWidth;
    for (auto _ : state) {
        layout::layOut(prepared.row, width, laid);
        benchmark::DoNotOptimize(laid.lines.data());
        width = width >= prepared.project.mostWidth ? prepared.project.leastWidth : width + 1;
    }
    state.SetLabel(std::to_string(laid.cards.size()) + " cards");
}
BENCHMARK(layOutTwelveCards)->Unit(benchmark::kMicrosecond);

/// The rules of a project file for all of the project, or for what one step of a drag changes.
void validateProject(benchmark::State& state) {
    const project::Project before = sample(twelveCards);
    project::Project after = before;
    after.row().style.row.columnGap = project::Length::px(17);
    const bool step = state.range(0) == 1;
    Spread spread;
    for (auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(project::validate(after, step ? &before : nullptr)); });
    spread.report(state);
    state.SetLabel(step ? "one setting changed" : "whole project");
}
BENCHMARK(validateProject)->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

/// A sweep over all widths of a row with `state.range(0)` cards, which repeat the cards of the sample.
void sweepRow(benchmark::State& state) {
    project::Project project = sample(twelveCards);
    const std::vector<project::Card> cards = project.row().cards;
    project.row().cards.clear();
    for (std::size_t i = 0; i < static_cast<std::size_t>(state.range(0)); ++i)
        project.row().cards.push_back(cards[i % cards.size()]);
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const layout::PreparedRow row(project, 0, store, text::blink());
    Spread spread;
    std::size_t wraps = 0;
    for (auto _ : state)
        spread.time([&] { wraps = sweep::sweep(row, project.leastWidth, project.mostWidth).wraps.size(); });
    spread.report(state);
    state.SetLabel(std::to_string(state.range(0)) + " cards, " + std::to_string(wraps) + " wrap points");
}
BENCHMARK(sweepRow)->Arg(12)->Arg(200)->Unit(benchmark::kMillisecond);

/// Times `countOf`, which returns a count for the row of twelve cards; `words` names what it counts.
template <class Count>
void count(benchmark::State& state, const char* words, Count&& countOf) {
    Prepared prepared;
    Spread spread;
    std::size_t found = 0;
    for (auto _ : state)
        spread.time([&] { found = countOf(prepared); });
    spread.report(state);
    state.SetLabel(std::to_string(found) + words);
}

/// All checks, under both break profiles.
void checkTwelveCards(benchmark::State& state) {
    count(state, " findings",
          [](Prepared& prepared) { return checks::check(prepared.project, 0, prepared.store).size(); });
}
BENCHMARK(checkTwelveCards)->Unit(benchmark::kMillisecond);

/// All checks under one profile of `text::profiles()`, to compare with the browser engine of that profile.
void checkUnderProfile(benchmark::State& state) {
    checks::Options options;
    options.profile = text::profiles()[static_cast<std::size_t>(state.range(0))];
    count(state, " findings", [&](Prepared& prepared) {
        return checks::check(prepared.project, 0, prepared.store, options).size();
    });
}
BENCHMARK(checkUnderProfile)->DenseRange(0, 1)->Unit(benchmark::kMillisecond);

/// Room for copy, which the window computes while a text is edited.
void roomOfTwelveCards(benchmark::State& state) {
    count(state, " texts",
          [](Prepared& prepared) { return checks::roomForCopy(prepared.project, 0, prepared.store).size(); });
}
BENCHMARK(roomOfTwelveCards)->Unit(benchmark::kMillisecond);

/// Solving sizes for three roles over four bands of the row of twelve cards, from ramps that are far too
/// large, including the proof, under both break profiles.
void solveTwelveCards(benchmark::State& state) {
    Prepared prepared;
    for (project::Band& band : prepared.project.row().variants[0].bands)
        band.set.text.of("heading").size = units::Ramp::between({330, 40}, {1880, 60});
    Spread spread;
    std::size_t bindings = 0;
    bool solved = true;
    for (auto _ : state)
        spread.time([&] {
            const solve::Answer answer = solve::solve(prepared.project, {0}, prepared.store);
            bindings = answer.bindings.size();
            solved = solved && answer.solved.has_value();
        });
    spread.report(state);
    state.SetLabel(solved ? std::to_string(bindings) + " limiting wishes" : "no sizes");
}
BENCHMARK(solveTwelveCards)->Unit(benchmark::kMillisecond);

void prepareRow(benchmark::State& state) {
    Prepared prepared;
    for (auto _ : state) {
        const layout::PreparedRow row(prepared.project, 0, prepared.store, text::blink());
        benchmark::DoNotOptimize(row.bandCount());
    }
}
BENCHMARK(prepareRow)->Unit(benchmark::kMicrosecond);

}  // namespace

}  // namespace tenter::bench
