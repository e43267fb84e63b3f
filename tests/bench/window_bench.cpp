// Times of the window at 1280×800: one step of a drag, from the new value to the last painted pixel.
#include <benchmark/benchmark.h>
#include <malloc.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QPushButton>
#include <QScrollBar>
#include <cmath>

#include "axis/axis_pane.h"
#include "project/role_wishes.h"
#include "row/row_view.h"
#include "samples.h"
#include "spread.h"
#include "window/main_window.h"

namespace tenter::bench {

namespace {

/// A window that shows a sample, after its pictures are read and its layout is stable.
struct Shown {
    explicit Shown(const std::string& name) {
        window.resize(1280, 800);
        window.show();
        window.openFile(QString::fromStdString(sampleFile(name).string()));
        QElapsedTimer waiting;
        waiting.start();
        while (waiting.elapsed() < 800)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        low = session.shown.project().leastWidth;
        high = session.shown.project().mostWidth;
    }
    /// Handles pending layout requests, then paints once.
    static void paint() {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    desktop::Session session;
    desktop::window::MainWindow window{session};
    double low = 0, high = 0;
};

void tick(benchmark::State& state, const std::string& name, double step, bool allVariants = false) {
    Shown shown(name);
    shown.window.findChild<desktop::row::RowView*>()->allVariantsAction()->setChecked(allVariants);
    desktop::ViewState& view = shown.session.view;
    double width = shown.high;
    view.setWidth(width);
    Shown::paint();
    Spread spread;
    for (auto _ : state) {
        width -= step;
        if (width < shown.low) width = shown.high;
        spread.time([&] {
            view.setWidth(width);
            Shown::paint();
        });
    }
    spread.report(state);
}

void dragWidth(benchmark::State& state) {
    tick(state, twelveCards, 1);
}
BENCHMARK(dragWidth)->Unit(benchmark::kMillisecond)->Iterations(runs(1600));

void dragWidthFast(benchmark::State& state) {
    tick(state, twelveCards, 7);
}
BENCHMARK(dragWidthFast)->Unit(benchmark::kMillisecond)->Iterations(runs(1600));

void dragWidthOfFourCards(benchmark::State& state) {
    tick(state, "shore-walks", 1);
}
BENCHMARK(dragWidthOfFourCards)->Unit(benchmark::kMillisecond)->Iterations(runs(1600));

void dragWidthOfAllVariants(benchmark::State& state) {
    tick(state, twelveCards, 1, true);
}
BENCHMARK(dragWidthOfAllVariants)->Unit(benchmark::kMillisecond)->Iterations(runs(1600));

// Dragging a wish while a proposal is shown: each step solves again and shows the result.
void dragWish(benchmark::State& state) {
    Shown shown("shore-walks");
    desktop::Document& document = shown.session.document;
    for (auto* button : shown.window.findChildren<QPushButton*>())
        if (button->text() == "Solve sizes") button->click();
    Spread spread;
    double most = 30;
    for (auto _ : state) {
        most = most <= 22 ? 30 : most - 0.1;
        spread.time([&] {
            document.edit(
                QStringLiteral("wish"),
                [most](project::Project& project) {
                    project::ownWishesOrNew(project, "heading", {}).mostSize = most;
                },
                QStringLiteral("bench"));
            Shown::paint();
        });
    }
    spread.report(state);
}
BENCHMARK(dragWish)->Unit(benchmark::kMillisecond)->Iterations(runs(60));

// Dragging the end of a ramp: each step prepares the row again and updates both plots.
void dragRampEnd(benchmark::State& state) {
    Shown shown(twelveCards);
    Spread spread;
    double size = 18;
    for (auto _ : state) {
        size = size >= 28 ? 18 : size + 0.1;
        spread.time([&] {
            shown.session.document.edit(
                QStringLiteral("drag"),
                [size](project::Project& project) {
                    const auto ramp = units::Ramp::between({360, size - 2}, {1400, size});
                    project.row().style.text.of("heading").size = *ramp;
                    for (project::Variant& variant : project.row().variants)
                        for (project::Band& band : variant.bands)
                            band.set.text.of("heading").size = *ramp;
                },
                QStringLiteral("bench"));
            Shown::paint();
        });
    }
    spread.report(state);
}
BENCHMARK(dragRampEnd)->Unit(benchmark::kMillisecond)->Iterations(runs(400));

void scrollRow(benchmark::State& state) {
    Shown shown(twelveCards);
    shown.session.view.setWidth(shown.low + 60);
    Shown::paint();
    auto* const row = shown.window.findChild<desktop::row::RowView*>();
    Spread spread;
    int at = 0;
    for (auto _ : state) {
        at = at >= row->verticalScrollBar()->maximum() ? 0 : at + 24;
        spread.time([&] {
            row->verticalScrollBar()->setValue(at);
            Shown::paint();
        });
    }
    spread.report(state);
}
BENCHMARK(scrollRow)->Unit(benchmark::kMillisecond)->Iterations(runs(400));

// 500 undo steps, the maximum that is kept, for a row imported from a page of 2 MB. Memory is what the
// allocator reports as in use.
void undoFiveHundredSteps(benchmark::State& state) {
    constexpr int steps = 500;
    desktop::Document document;
    project::Problems problems;
    if (!document.openAsNew(sampleFile(twelveCards), problems)) {
        state.SkipWithError("the sample was not read");
        return;
    }
    document.edit("import", [](project::Project& project) {
        project::Given page;
        page.theme = std::string(2'000'000, ' ');
        project.row().given = std::move(page);
    });
    document.endGesture();
    Spread spread;
    const std::size_t before = mallinfo2().uordblks;
    double size = 18;
    for (auto _ : state)
        for (int step = 0; step < steps; ++step)
            spread.time([&] {
                document.edit("size", [&](project::Project& project) {
                    size += 0.01;
                    project.row().style.text.of("heading").size =
                        *units::Ramp::between({360, 16}, {1400, size});
                });
            });
    spread.report(state);
    state.counters["undo_MB"] = static_cast<double>(mallinfo2().uordblks - before) / 1e6;
}
BENCHMARK(undoFiveHundredSteps)->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace

}  // namespace tenter::bench
