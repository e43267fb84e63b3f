// Usage: bench [arguments of Google Benchmark]
// Targets at 1280×800: a layout in 50 µs; a step of a drag in 8 ms (99th percentile 16 ms); a start in 400
// ms; 150 MB.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QTemporaryDir>
#include <cstring>

#include "start.h"
#include "window/theme.h"

int main(int argc, char** argv) {
    // Needs no display, and ignores the user's settings.
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    if (argc == 3 && std::strcmp(argv[1], "--start-once") == 0) return tenter::bench::startOnce(argc, argv);
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    const QApplication application(argc, argv);
    tenter::desktop::window::useTheme({});
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
