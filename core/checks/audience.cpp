#include "checks/audience.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "units/number.h"
#include "units/scan.h"

namespace tenter::checks {

namespace {

/// Unreadable lines reported one by one; the others are only counted.
constexpr std::size_t mostReported = 5;
constexpr double mostWidth = 100000;
constexpr double mostVisits = 1e15;

struct Record {
    std::size_t line = 0;  ///< where it starts, from 1
    std::vector<std::string> fields;
};

/// The records of `text`. Quoted values may contain the separator, line ends and doubled quotes.
std::vector<Record> recordsOf(std::string_view text, char separator) {
    std::vector<Record> records;
    std::size_t line = 1;
    std::size_t at = 0;
    while (at < text.size()) {
        Record record{line, {""}};
        bool quoted = false;
        for (; at < text.size(); ++at) {
            const char c = text[at];
            const bool ends = c == '\n' || c == '\r';
            if (ends && !(c == '\r' && at + 1 < text.size() && text[at + 1] == '\n')) ++line;
            if (quoted) {
                if (c != '"')
                    record.fields.back() += c;
                else if (at + 1 < text.size() && text[at + 1] == '"')
                    record.fields.back() += text[++at];
                else
                    quoted = false;
            } else if (c == '"' && record.fields.back().empty()) {
                quoted = true;
            } else if (c == separator) {
                record.fields.emplace_back();
            } else if (c == '\r' && at + 1 < text.size() && text[at + 1] == '\n') {
                continue;
            } else if (ends) {
                ++at;
                break;
            } else {
                record.fields.back() += c;
            }
        }
        if (record.fields.size() > 1 || !record.fields.front().empty()) records.push_back(std::move(record));
    }
    return records;
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blank = " \t";
    const std::size_t first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

/// The column with the first of `words` in its heading; empty if no heading contains any.
template <std::size_t N>
std::optional<std::size_t> columnOf(const Record& head, const std::array<std::string_view, N>& words) {
    for (const std::string_view word : words) {
        for (std::size_t i = 0; i < head.fields.size(); ++i) {
            std::string name = head.fields[i];
            std::ranges::transform(name, name.begin(), [](char c) {
                return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
            });
            if (name.find(word) != std::string::npos) return i;
        }
    }
    return std::nullopt;
}

/// The width in `390`, `390px` or `390x844`, CSS px.
std::optional<double> widthIn(std::string_view field) {
    const auto scanned = units::scanNumber(trimmed(field));
    if (!scanned || !(scanned->value > 0) || scanned->value > mostWidth) return std::nullopt;
    const std::string_view rest = trimmed(scanned->rest);
    if (rest.empty() || rest == "px" || rest[0] == 'x' || rest[0] == 'X') return scanned->value;
    return std::nullopt;
}

/// The number in `1204`, `1,204` or `1 204`.
std::optional<double> visitsIn(std::string_view field) {
    std::string digits;
    for (const char c : trimmed(field))
        if (c != ',' && c != ' ' && c != '\'') digits += c;
    const auto scanned = units::scanNumber(digits);
    if (!scanned || !scanned->rest.empty() || scanned->value < 0 || scanned->value > mostVisits)
        return std::nullopt;
    return scanned->value;
}

/// `;` if the headings have more of it than commas, else `,`.
char separatorOf(std::string_view text) {
    const std::string_view head = text.substr(0, text.find_first_of("\r\n"));
    return std::ranges::count(head, ';') > std::ranges::count(head, ',') ? ';' : ',';
}

}  // namespace

double Audience::share(const std::vector<sweep::Interval>& spans, double least) const {
    double all = 0;
    double within = 0;
    for (const auto& [width, count] : visits) {
        all += count;
        const double at = width;
        const bool there = std::ranges::any_of(spans, [&](const sweep::Interval& span) {
            if (at == span.from) return span.from == least || span.from == span.to;
            return at > span.from && at <= span.to;
        });
        if (there) within += count;
    }
    return all > 0 ? within / all : 0;
}

std::optional<Audience> readAudience(std::string_view text, const std::string& file,
                                     project::Problems& problems) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    if (text.size() > largestAudience) {
        problems.push_back({file, "",
                            "The file is larger than " + std::to_string(largestAudience >> 20U) + " MB.",
                            "Export fewer lines: one for each viewport width."});
        return std::nullopt;
    }
    const std::vector<Record> records = recordsOf(text, separatorOf(text));
    const auto refuse = [&](std::size_t line, const std::string& what, const std::string& fix) {
        problems.push_back({file, std::to_string(line), what, fix});
        return std::nullopt;
    };
    if (records.empty())
        return refuse(1, "The file is empty.",
                      "Write the headings width and visits, then one line for each width.");
    const auto width = columnOf<4>(records.front(), {"width", "viewport", "resolution", "screen"});
    const auto count = columnOf<5>(records.front(), {"visits", "sessions", "users", "views", "count"});
    if (!width || !count || width == count)
        return refuse(records.front().line,
                      std::string("No heading names the ") + (width ? "visits." : "width of the viewport."),
                      "Name one column width and one column visits.");
    std::map<double, double> sums;
    std::size_t bad = 0;
    for (std::size_t i = 1; i < records.size(); ++i) {
        const Record& record = records[i];
        const bool whole = std::max(*width, *count) < record.fields.size();
        const auto at = whole ? widthIn(record.fields[*width]) : std::nullopt;
        const auto visits = whole ? visitsIn(record.fields[*count]) : std::nullopt;
        if (at && visits) {
            sums[*at] += *visits;
        } else if (++bad <= mostReported) {
            refuse(record.line,
                   std::string("The line has no ") + (at ? "number of visits" : "width in CSS px") +
                       " and is skipped.",
                   "Write a number such as " + std::string(at ? "1200" : "390") + ".");
        }
    }
    if (bad > mostReported)
        problems.push_back({file, "", std::to_string(bad - mostReported) + " more lines are skipped.",
                            "Write a width and a number of visits in each."});
    Audience audience;
    double all = 0;
    for (const auto& [at, visits] : sums) {
        audience.visits.emplace_back(at, visits);
        all += visits;
    }
    if (!(all > 0))
        return refuse(records.front().line, "No line has a width and visits.",
                      "Add lines such as 390" + std::string(1, separatorOf(text)) + "1200.");
    return audience;
}

}  // namespace tenter::checks
