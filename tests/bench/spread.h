// Median and 99th percentile of the times of single runs.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <vector>

namespace tenter::bench {

/// Number of runs to time: `full`, or a twentieth of it if the environment variable TENTER_BENCH_BRIEFLY is
/// set, as in the test, which only checks that the benchmark runs.
inline benchmark::IterationCount runs(benchmark::IterationCount full) {
    return std::getenv("TENTER_BENCH_BRIEFLY") == nullptr ? full
                                                          : std::max<benchmark::IterationCount>(full / 20, 1);
}

/// Collects the times of single runs. An average would hide slow ones.
class Spread {
public:
    /// Times one run of `what`.
    template <class What>
    void time(What&& what) {
        const auto start = std::chrono::steady_clock::now();
        what();
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
        runs_.push_back(took.count());
    }
    /// Adds median, 99th percentile and maximum to the benchmark's output, in ms.
    void report(benchmark::State& state) {
        if (runs_.empty()) return;
        std::sort(runs_.begin(), runs_.end());
        state.counters["median_ms"] = runs_[runs_.size() / 2];
        state.counters["p99_ms"] = runs_[std::min(runs_.size() - 1, runs_.size() * 99 / 100)];
        state.counters["max_ms"] = runs_.back();
    }

private:
    std::vector<double> runs_;
};

}  // namespace tenter::bench
