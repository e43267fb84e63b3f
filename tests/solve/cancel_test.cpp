// Cancelling: long work returns soon after its caller asks for it, and says so.
#include <chrono>
#include <functional>
#include <optional>
#include <thread>

#include "solve/allowed.h"
#include "solve/leeway.h"
#include "solving.h"

namespace tenter::test {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

constexpr milliseconds longest{100};

/// Many cards with wishes that conflict, so that there is much to search.
project::Project longProject(std::size_t cards) {
    project::Project project = samples().at("shore-walks.tenter.json");
    const std::vector<project::Card> few = project.row().cards;
    project.row().cards.clear();
    for (std::size_t i = 0; i < cards; ++i)
        project.row().cards.push_back(few[i % few.size()]);
    return wishing(project, {"heading.lines=2", "body.measure=30-70", "body.size=15-", "heading.size=30-",
                             "heading.ratio=body*1.5", "body.growth=0.4", "heading.zoom=210%",
                             "body.breakpoints=same", "button.size=14-", "reserve=30%", "grid=0.05px"});
}

/// Work on a store of its own, so that paragraphs are prepared anew; true if it says that it was cancelled.
using Work = std::function<bool(text::ParagraphStore&, std::stop_token)>;

milliseconds since(Clock::time_point start) {
    return std::chrono::duration_cast<milliseconds>(Clock::now() - start);
}

/// How long `work` goes on after it is asked to stop, `after` it was started. Empty if it ended before.
std::optional<milliseconds> timeToStop(milliseconds after, const Work& work) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    std::stop_source source;
    bool cancelled = false;
    std::thread worker([&] { cancelled = work(store, source.get_token()); });
    std::this_thread::sleep_for(after);
    const Clock::time_point asked = Clock::now();
    source.request_stop();
    worker.join();
    return cancelled ? std::optional(since(asked)) : std::nullopt;
}

/// Expects `work` to stop soon, whichever part of it is done when it is asked to.
void expectToStop(const Work& work) {
    const Clock::time_point start = Clock::now();
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    EXPECT_FALSE(work(store, {}));
    const milliseconds whole = since(start);
    EXPECT_EQ(timeToStop(milliseconds(0), work).has_value(), true);
    for (const int percent : {5, 15, 30, 45, 60, 75}) {
        // A busy machine can delay any thread: the best of a few counts.
        milliseconds best = milliseconds::max();
        milliseconds after = whole * percent / 100;
        for (int i = 0; i < 8 && best >= longest; ++i) {
            const auto time = timeToStop(after, work);
            if (time) best = std::min(best, *time);
            // It ended before: the machine has less to do than when the whole was measured.
            if (!time) after = after * 3 / 4;
        }
        EXPECT_LT(best.count(), longest.count()) << percent << " % of " << whole.count() << " ms";
    }
}

TEST(Cancelling, solving_returns_soon_and_says_so) {
    const project::Project project = longProject(200);
    expectToStop([&](text::ParagraphStore& store, std::stop_token token) {
        solve::Options options;
        options.cancellation = std::move(token);
        const solve::Answer answer = solve::solve(project, allVariants(project), store, options);
        if (answer.isCancelled) {
            EXPECT_FALSE(answer.solved);
            EXPECT_TRUE(answer.conflict.wishes.empty());
            EXPECT_NE(answerText(project, answer).find("Solving was cancelled."), std::string::npos);
        }
        return answer.isCancelled;
    });
}

TEST(Cancelling, leeway_returns_soon_and_says_so) {
    const project::Project project = longProject(20);
    expectToStop([&](text::ParagraphStore& store, std::stop_token token) {
        solve::Options options;
        options.cancellation = std::move(token);
        const auto leeway = solve::leewayOf(project, 0, 0, solve::LeewaySetting::CardPadding, store, options);
        return leeway && leeway->isCancelled;
    });
}

TEST(Cancelling, allowed_sizes_return_soon_and_say_so) {
    const project::Project project = longProject(200);
    expectToStop([&](text::ParagraphStore& store, std::stop_token token) {
        solve::Options options;
        options.cancellation = std::move(token);
        return solve::allowedSizes(project, 0, "body", store, options).isCancelled;
    });
}

TEST(Cancelling, changes_nothing_if_it_is_not_asked_for) {
    const project::Project project = samples().at("shore-walks.tenter.json");
    std::stop_source source;
    solve::Options options;
    options.cancellation = source.get_token();
    const solve::Answer one = solve::solve(project, {0}, solveStore(), options);
    const solve::Answer other = solve::solve(project, {0}, solveStore());
    EXPECT_FALSE(one.isCancelled);
    EXPECT_EQ(one.solved, other.solved);
}

}  // namespace
}  // namespace tenter::test
