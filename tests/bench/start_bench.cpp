#include <benchmark/benchmark.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QApplication>
#include <QElapsedTimer>
#include <array>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>

#include "row/row_view.h"
#include "samples.h"
#include "spread.h"
#include "start.h"
#include "window/main_window.h"
#include "window/theme.h"

namespace tenter::bench {

namespace {

/// Watches a window for its first paint with a project.
class FirstPaint : public QObject {
public:
    FirstPaint(const desktop::Document& document, desktop::window::MainWindow& window) : document_(document) {
        if (auto* row = window.findChild<desktop::row::RowView*>()) row->viewport()->installEventFilter(this);
    }
    [[nodiscard]] bool seen() const { return seen_; }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint && document_.hasProject()) seen_ = true;
        return false;
    }

private:
    const desktop::Document& document_;
    bool seen_ = false;
};

/// A value of /proc/self/status in kB; 0 if it is not there.
long statusFigure(const std::string& name) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(name + ":")) return std::stol(line.substr(name.size() + 1));
    return 0;
}

struct Figures {
    double paintAfter = 0;  ///< ms from the start of the child's main() to the first paint
    double residentMb = 0;  ///< after all pictures are read and all widths were shown
};

Figures runChild(const std::string& name) {
    std::array<int, 2> ends{};
    Figures figures;
    if (pipe(ends.data()) != 0) return figures;
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        const std::string file = sampleFile(name).string();
        execl("/proc/self/exe", "bench", "--start-once", file.c_str(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    if (FILE* const out = fdopen(ends[0], "r")) {
        if (std::fscanf(out, "%lf %lf", &figures.paintAfter, &figures.residentMb) != 2) figures = {};
        std::fclose(out);
    }
    waitpid(child, nullptr, 0);
    return figures;
}

void start(benchmark::State& state) {
    Spread spread;
    double paint = 0;
    double memory = 0;
    for (auto _ : state) {
        const Figures figures = runChild(twelveCards);
        if (figures.paintAfter == 0) {
            state.SkipWithError("the child did not paint");
            return;
        }
        paint = std::max(paint, figures.paintAfter);
        memory = std::max(memory, figures.residentMb);
    }
    state.counters["first_paint_ms"] = paint;
    state.counters["resident_MB"] = memory;
}
BENCHMARK(start)->Unit(benchmark::kMillisecond)->Iterations(runs(5));

}  // namespace

int startOnce(int argc, char** argv) {
    const auto begun = std::chrono::steady_clock::now();
    QApplication application(argc, argv);
    desktop::window::useTheme({});
    desktop::Session session;
    desktop::window::MainWindow window(session);
    window.resize(1280, 800);
    const FirstPaint first(session.document, window);
    window.show();
    window.openFile(QString::fromLocal8Bit(argv[2]));
    while (!first.seen())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    const std::chrono::duration<double, std::milli> after = std::chrono::steady_clock::now() - begun;

    // Memory after some use: all widths once, with pauses in which pictures are scaled again.
    const auto [least, most] =
        std::pair(session.shown.project().leastWidth, session.shown.project().mostWidth);
    for (double width = least; width <= most; width += 40) {
        session.view.setWidth(width);
        QElapsedTimer resting;
        resting.start();
        while (resting.elapsed() < 40)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    }
    std::cout << after.count() << ' ' << static_cast<double>(statusFigure("VmRSS")) / 1024 << std::endl;
    return 0;
}

}  // namespace tenter::bench
