#include "units/scan.h"

#include <charconv>

namespace tenter::units {

std::optional<Scanned> scanNumber(std::string_view text) {
    const bool isSigned = text.starts_with('+') || text.starts_with('-');
    const std::string_view unsignedText = text.substr(isSigned ? 1 : 0);
    // from_chars accepts `inf`, `nan` and a second sign; CSS does not.
    if (unsignedText.empty()) return std::nullopt;
    const char first = unsignedText.front();
    if (first != '.' && (first < '0' || first > '9')) return std::nullopt;

    double value = 0;
    const char* const begin = unsignedText.data();
    const char* const end = begin + unsignedText.size();
    const auto [stop, error] = std::from_chars(begin, end, value);
    if (error != std::errc()) return std::nullopt;
    // CSS requires a digit after the point: `1.` and `1.e3` are not numbers.
    const std::string_view read(begin, static_cast<std::size_t>(stop - begin));
    const std::size_t point = read.find('.');
    if (point != std::string_view::npos) {
        const std::string_view after = read.substr(point + 1);
        if (after.empty() || after.front() < '0' || after.front() > '9') return std::nullopt;
    }
    return Scanned{text.front() == '-' ? -value : value, unsignedText.substr(read.size())};
}

}  // namespace tenter::units
