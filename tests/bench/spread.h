// Median and 99th percentile of single runs, which an average would hide.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <vector>

namespace tenter::bench {

/// How many runs are timed: `full`, for figures to be believed; a twentieth where `TENTER_BENCH_BRIEFLY` is
/// set, since a test only sees that they run.
inline benchmark::IterationCount runs(benchmark::IterationCount full) {
    return std::getenv("TENTER_BENCH_BRIEFLY") == nullptr ? full
                                                          : std::max<benchmark::IterationCount>(full / 20, 1);
}

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
    /// Tells them, in ms, beside the benchmark's own figures.
    void tell(benchmark::State& state) {
        if (runs_.empty()) return;
        std::sort(runs_.begin(), runs_.end());
        state.counters["median_ms"] = runs_[runs_.size() / 2];
        state.counters["p99_ms"] = runs_[std::min(runs_.size() - 1, runs_.size() * 99 / 100)];
        state.counters["most_ms"] = runs_.back();
    }

private:
    std::vector<double> runs_;
};

}  // namespace tenter::bench
