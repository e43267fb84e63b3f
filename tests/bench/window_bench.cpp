// The window at 1280×800: a tick of a drag, from the width that is set to the last pixel that is painted.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QPushButton>
#include <QScrollBar>
#include <cmath>

#include "axis/axis_pane.h"
#include "project/wishing.h"
#include "row/row_view.h"
#include "samples.h"
#include "spread.h"
#include "window/main_window.h"

namespace tenter::bench {

namespace {

/// A window with a sample in it, its pictures read and its layout at rest.
struct Shown {
    explicit Shown(const std::string& name) {
        window.resize(1280, 800);
        window.show();
        window.openFile(QString::fromStdString(sampleFile(name).string()));
        QElapsedTimer waiting;
        waiting.start();
        while (waiting.elapsed() < 800)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        low = window.viewing().shown().leastWidth;
        high = window.viewing().shown().mostWidth;
    }
    /// Everything that is due is done: layout requests, then one paint of what has changed.
    static void paint() {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    desktop::window::MainWindow window;
    double low = 0, high = 0;
};

void tick(benchmark::State& state, const std::string& name, double step, bool allVariants = false) {
    Shown shown(name);
    shown.window.findChild<desktop::row::RowView*>()->allVariantsAction()->setChecked(allVariants);
    desktop::Viewing& viewing = shown.window.viewing();
    double width = shown.high;
    viewing.setWidth(width);
    Shown::paint();
    Spread spread;
    for (auto _ : state) {
        width -= step;
        if (width < shown.low) width = shown.high;
        spread.time([&] {
            viewing.setWidth(width);
            Shown::paint();
        });
    }
    spread.tell(state);
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

// A wish, while the sizes that it was solved for are shown: every tick solves and shows anew.
void dragWish(benchmark::State& state) {
    Shown shown("shore-walks");
    desktop::Document& document = shown.window.document();
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
                    project::wishFor(project, "heading", {}).mostSize = most;
                },
                QStringLiteral("bench"));
            Shown::paint();
        });
    }
    spread.tell(state);
}
BENCHMARK(dragWish)->Unit(benchmark::kMillisecond)->Iterations(runs(60));

// A ramp's end: every tick makes the row ready anew, and both plots with it.
void dragRampEnd(benchmark::State& state) {
    Shown shown(twelveCards);
    Spread spread;
    double size = 18;
    for (auto _ : state) {
        size = size >= 28 ? 18 : size + 0.1;
        spread.time([&] {
            shown.window.document().edit(
                QStringLiteral("drag"),
                [size](project::Project& project) {
                    const auto ramp = units::Ramp::between({360, size - 2}, {1400, size});
                    project.style.text.of("heading").size = *ramp;
                    for (project::Variant& variant : project.variants)
                        for (project::Band& band : variant.bands)
                            band.set.text.of("heading").size = *ramp;
                },
                QStringLiteral("bench"));
            Shown::paint();
        });
    }
    spread.tell(state);
}
BENCHMARK(dragRampEnd)->Unit(benchmark::kMillisecond)->Iterations(runs(400));

void scrollRow(benchmark::State& state) {
    Shown shown(twelveCards);
    shown.window.viewing().setWidth(shown.low + 60);
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
    spread.tell(state);
}
BENCHMARK(scrollRow)->Unit(benchmark::kMillisecond)->Iterations(runs(400));

}  // namespace

}  // namespace tenter::bench
