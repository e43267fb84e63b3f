#include "project/wording.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <numeric>

#include "project/utf8.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::project {

namespace {

constexpr std::size_t longest = 60;  // bytes of a text that is quoted

// The insertions, removals and replacements that make one word of the other.
std::size_t editDistance(std::string_view from, std::string_view to) {
    std::vector<std::size_t> row(to.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= from.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= to.size(); ++j) {
            const std::size_t replaced = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({replaced, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[to.size()];
}

}  // namespace

std::string inQuotes(std::string_view text) {
    std::size_t end = 0;
    while (end < text.size() && end < longest)
        end += decode(text, end).length;
    return '"' + std::string(text.substr(0, end)) + (end < text.size() ? "…" : "") + '"';
}

std::string shown(const Json& value) {
    if (value.is_object()) return "an object";
    if (value.is_array()) return "a list";
    if (value.is_string()) return inQuotes(value.get_ref<const std::string&>());
    if (!value.is_number()) return value.dump();
    const double number = value.get<double>();
    // A whole number is shown as one, however it was written.
    const bool whole = number == std::floor(number) && std::abs(number) < 1e15;
    return whole ? units::number(number, 0) : value.dump();
}

std::string either(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
        text += words[i];
    }
    return text;
}

std::string listed(const std::vector<std::string>& words) {
    if (words.empty()) return {};
    std::string text = words.front();
    for (std::size_t i = 1; i < words.size(); ++i)
        text = i + 1 == words.size() ? wording::say("%1 and %2", {text, words[i]})
                                     //: The start of a list, and its next entry
                                     : wording::say("%1, %2", {text, words[i]});
    return text;
}

std::string warning(std::string_view sentence) {
    return wording::say("Warning: %1", {sentence});
}

bool isWarning(std::string_view line) {
    return line.starts_with(warning(""));
}

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
    if (word.size() > longest) return {};
    std::string best;
    std::size_t least = std::max<std::size_t>(1, word.size() / 3) + 1;
    for (const std::string& each : known) {
        const std::size_t distance = editDistance(word, each);
        if (distance < least) {
            least = distance;
            best = each;
        }
    }
    return best;
}

}  // namespace tenter::project
