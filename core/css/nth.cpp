#include "css/nth.h"

#include <algorithm>
#include <utility>

#include "css/ascii.h"

namespace tenter::css {

namespace {

class NthReader {
public:
    explicit NthReader(std::string_view text) : rest_(text) {}

    std::optional<Nth> read() {
        Nth nth;
        const int sign = readSign().value_or(1);
        const std::optional<int> first = readDigits();
        if (rest_.empty() || lowered(rest_.front()) != 'n') {
            if (!first || !rest_.empty()) return std::nullopt;
            nth.offset = sign * *first;
            return nth;
        }
        rest_.remove_prefix(1);
        nth.step = sign * first.value_or(1);
        rest_ = trimmed(rest_);
        if (rest_.empty()) return nth;
        const std::optional<int> second = readSign();
        rest_ = trimmed(rest_);
        const std::optional<int> offset = readDigits();
        if (!second || !offset || !rest_.empty()) return std::nullopt;
        nth.offset = *second * *offset;
        return nth;
    }

private:
    std::optional<int> readSign() {
        if (!rest_.starts_with('+') && !rest_.starts_with('-')) return std::nullopt;
        const int sign = rest_.front() == '-' ? -1 : 1;
        rest_.remove_prefix(1);
        return sign;
    }

    std::optional<int> readDigits() {
        constexpr long most = 1'000'000'000;
        if (rest_.empty() || !isDigit(rest_.front())) return std::nullopt;
        long value = 0;
        while (!rest_.empty() && isDigit(rest_.front())) {
            value = std::min(value * 10 + (rest_.front() - '0'), most);
            rest_.remove_prefix(1);
        }
        return static_cast<int>(value);
    }

    std::string_view rest_;
};

}  // namespace

std::optional<Nth> readNth(std::string_view text) {
    text = trimmed(text);
    if (sameIgnoringCase(text, "odd")) return Nth{2, 1};
    if (sameIgnoringCase(text, "even")) return Nth{2, 0};
    return NthReader(text).read();
}

}  // namespace tenter::css
