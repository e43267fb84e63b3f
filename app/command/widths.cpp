#include "widths.h"

#include <charconv>
#include <cmath>
#include <string_view>

#include "units/number.h"

namespace tenter::command {

namespace {

constexpr double leastWidth = 1;
constexpr double mostWidth = 10000;
constexpr double mostLayouts = 100000;

std::optional<double> readNumber(std::string_view text) {
    double value = 0;
    const auto end = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (end.ec != std::errc() || end.ptr != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

class WidthReader {
public:
    WidthReader(const WidthArguments& said, project::Problems& problems) : said_(said), problems_(problems) {}

    std::optional<std::vector<double>> read(double least, double most) {
        if (said_.widths.empty()) return range(least, most);
        const std::size_t dash = said_.widths.find('-', 1);
        if (dash == std::string::npos) return list();
        const std::string_view text = said_.widths;
        const std::optional<double> from = width(text.substr(0, dash));
        const std::optional<double> to = from ? width(text.substr(dash + 1)) : std::nullopt;
        if (!from || !to) return std::nullopt;
        if (*from <= *to) return range(*from, *to);
        return wrong("--widths", said_.widths + " ends before it starts",
                     "write the lesser width first, such as 320-1920");
    }

private:
    std::nullopt_t wrong(const std::string& argument, const std::string& what, const std::string& fix) {
        problems_.push_back({argument, "", what, fix});
        return std::nullopt;
    }

    std::optional<double> width(std::string_view text) {
        const std::optional<double> value = readNumber(text);
        if (!value)
            return wrong("--widths", "\"" + std::string(text) + "\" is no width in px",
                         "write a range such as 320-1920 or a list such as 320,859,860");
        if (*value < leastWidth || *value > mostWidth)
            return wrong("--widths", std::string(text) + " px is beyond what can be laid out",
                         "stay within 1 to 10000 px");
        return value;
    }

    std::optional<std::vector<double>> list() {
        if (!said_.step.empty())
            return wrong("--step", "steps go with a range, and --widths is a list",
                         "leave --step out, or write a range such as 320-1920");
        std::vector<double> out;
        std::string_view rest = said_.widths;
        while (true) {
            const std::size_t comma = rest.find(',');
            const std::optional<double> value = width(rest.substr(0, comma));
            if (!value) return std::nullopt;
            out.push_back(*value);
            if (comma == std::string_view::npos) break;
            rest.remove_prefix(comma + 1);
        }
        if (static_cast<double>(out.size()) > mostLayouts) return tooMany();
        return out;
    }

    std::optional<std::vector<double>> range(double from, double to) {
        const std::optional<double> step = said_.step.empty() ? std::optional(1.0) : readNumber(said_.step);
        if (!step || *step <= 0)
            return wrong("--step", "\"" + said_.step + "\" is no step in px",
                         "write a number above 0, such as 1 or 0.5");
        const double count = std::floor((to - from) / *step + 1e-9) + 1;
        if (count > mostLayouts) return tooMany();
        std::vector<double> out;
        out.reserve(static_cast<std::size_t>(count));
        // From the start each time: added up, steps such as 0.1 would drift.
        for (int i = 0; i < static_cast<int>(count); ++i)
            out.push_back(std::min(from + i * *step, to));
        return out;
    }

    std::nullopt_t tooMany() {
        return wrong(said_.step.empty() ? "--widths" : "--step", "more than 100 000 layouts",
                     "take a larger --step or a shorter range");
    }

    const WidthArguments& said_;
    project::Problems& problems_;
};

}  // namespace

std::optional<std::vector<double>> readWidths(const WidthArguments& said, double least, double most,
                                              project::Problems& problems) {
    return WidthReader(said, problems).read(least, most);
}

}  // namespace tenter::command
