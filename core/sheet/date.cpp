#include "sheet/date.h"

#include <charconv>
#include <chrono>
#include <cstring>

namespace tenter::sheet {

namespace {

using namespace std::chrono;

std::string shown(const year_month_day& date) {
    const auto padded = [](unsigned value) {
        const std::string digits = std::to_string(value);
        return digits.size() < 2 ? "0" + digits : digits;
    };
    std::string out = std::to_string(static_cast<int>(date.year()));
    out.append("-").append(padded(static_cast<unsigned>(date.month())));
    return out.append("-").append(padded(static_cast<unsigned>(date.day())));
}

/// The number that the whole of `text` is.
std::optional<long long> numberIn(const char* first, const char* end) {
    long long value = 0;
    const auto [rest, error] = std::from_chars(first, end, value);
    if (error != std::errc() || rest != end || value < 0) return std::nullopt;
    return value;
}

}  // namespace

std::optional<std::string> dateFor(const std::string& given, const char* epoch) {
    if (!given.empty()) {
        if (given.size() != 10 || given[4] != '-' || given[7] != '-') return std::nullopt;
        const char* const text = given.data();
        const auto years = numberIn(text, text + 4);
        const auto months = numberIn(text + 5, text + 7);
        const auto days = numberIn(text + 8, text + 10);
        if (!years || !months || !days) return std::nullopt;
        const year_month_day date{year(static_cast<int>(*years)), month(static_cast<unsigned>(*months)),
                                  day(static_cast<unsigned>(*days))};
        return date.ok() ? std::optional(given) : std::nullopt;
    }
    constexpr long long mostSeconds = 253402300799;  // the end of the year 9999
    if (epoch != nullptr)
        if (const auto since = numberIn(epoch, epoch + std::strlen(epoch)); since && *since <= mostSeconds)
            return shown(floor<days>(sys_seconds(seconds(*since))));
    return shown(floor<days>(system_clock::now()));
}

}  // namespace tenter::sheet
