#include "widths.h"

#include <charconv>
#include <cmath>
#include <string_view>

#include "units/number.h"

namespace tenter::command {

namespace {

constexpr double leastWidth = 1;
constexpr double mostWidth = 10000;
constexpr double mostWidths = 100000;

std::optional<double> readNumber(std::string_view text) {
    double value = 0;
    const auto end = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (end.ec != std::errc() || end.ptr != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

class WidthReader {
public:
    WidthReader(const WidthArguments& arguments, project::Problems& problems)
        : arguments_(arguments), problems_(problems) {}

    std::optional<std::vector<double>> read(double least, double most) {
        if (arguments_.widths.empty()) return range(least, most);
        const std::size_t dash = arguments_.widths.find('-', 1);
        if (dash == std::string::npos) return list();
        const std::string_view text = arguments_.widths;
        const std::optional<double> from = width(text.substr(0, dash));
        const std::optional<double> to = from ? width(text.substr(dash + 1)) : std::nullopt;
        if (!from || !to) return std::nullopt;
        if (*from <= *to) return range(*from, *to);
        return wrong("--widths", "The range " + arguments_.widths + " starts with the larger width.",
                     "Write the smaller width first, such as 320-1920.");
    }

private:
    std::nullopt_t wrong(const std::string& argument, const std::string& what, const std::string& fix) {
        problems_.push_back({argument, "", what, fix});
        return std::nullopt;
    }

    std::optional<double> width(std::string_view text) {
        const std::optional<double> value = readNumber(text);
        if (!value)
            return wrong("--widths", "\"" + std::string(text) + "\" is not a width in px.",
                         "Write a range such as 320-1920 or a list such as 320,859,860.");
        if (*value < leastWidth || *value > mostWidth)
            return wrong("--widths",
                         "A width must be from 1 to 10000\u00A0px; it is " + std::string(text) + "\u00A0px.",
                         "");
        return value;
    }

    std::optional<std::vector<double>> list() {
        if (!arguments_.step.empty())
            return wrong("--step", "A step needs a range, but --widths is a list.",
                         "Leave out --step, or write a range such as 320-1920.");
        std::vector<double> out;
        std::string_view rest = arguments_.widths;
        while (true) {
            const std::size_t comma = rest.find(',');
            const std::optional<double> value = width(rest.substr(0, comma));
            if (!value) return std::nullopt;
            out.push_back(*value);
            if (comma == std::string_view::npos) break;
            rest.remove_prefix(comma + 1);
        }
        if (static_cast<double>(out.size()) > mostWidths) return tooMany();
        return out;
    }

    std::optional<std::vector<double>> range(double from, double to) {
        const std::optional<double> step =
            arguments_.step.empty() ? std::optional(1.0) : readNumber(arguments_.step);
        if (!step || *step <= 0)
            return wrong("--step",
                         "The step must be a number of px above 0; it is \"" + arguments_.step + "\".",
                         "Write a number such as 1 or 0.5.");
        const double count = std::floor((to - from) / *step + 1e-9) + 1;
        if (count > mostWidths) return tooMany();
        std::vector<double> out;
        out.reserve(static_cast<std::size_t>(count));
        // Computed from the start each time: sums of steps such as 0.1 would drift.
        for (int i = 0; i < static_cast<int>(count); ++i)
            out.push_back(std::min(from + i * *step, to));
        return out;
    }

    std::nullopt_t tooMany() {
        return wrong(arguments_.step.empty() ? "--widths" : "--step",
                     "The range has more than 100000 widths.", "Use a larger --step or a shorter range.");
    }

    const WidthArguments& arguments_;
    project::Problems& problems_;
};

}  // namespace

std::optional<std::vector<double>> readWidths(const WidthArguments& arguments, double least, double most,
                                              project::Problems& problems) {
    return WidthReader(arguments, problems).read(least, most);
}

}  // namespace tenter::command
