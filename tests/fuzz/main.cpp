// The function that libFuzzer calls with each input. It limits the processor time of an input: libFuzzer's
// own limit is wall time, which other programs lengthen.
#include <sys/time.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <string_view>

#include "fuzz.h"

namespace {

/// Seconds of processor time that an input may take; TENTER_FUZZ_LIMIT, or 10.
time_t longest() {
    const char* const given = std::getenv("TENTER_FUZZ_LIMIT");
    const int seconds = given == nullptr ? 0 : std::atoi(given);
    return seconds > 0 ? seconds : 10;
}

void endsTooLate(int) {
    constexpr std::string_view message =
        "Invariant broken: an input takes no more processor time than it may\n";
    // Only functions that a signal handler may call.
    [[maybe_unused]] const auto written = write(STDERR_FILENO, message.data(), message.size());
    std::abort();
}

void startClock(time_t seconds) {
    const itimerval time{{}, {seconds, 0}};
    setitimer(ITIMER_PROF, &time, nullptr);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const time_t limit = longest();
    static const auto handled = std::signal(SIGPROF, endsTooLate);
    tenter::fuzz::require(handled != SIG_ERR, "the limit of time can be set");
    startClock(limit);
    tenter::fuzz::test(data, size);
    startClock(0);
    return 0;
}
