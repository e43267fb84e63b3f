#include <algorithm>
#include <cmath>

#include "project/rules.h"
#include "project/values.h"
#include "units/number.h"
#include "units/scan.h"

namespace tenter::project {

namespace {

std::string rangeOf(const NumberRule& rule) {
    return (rule.whole ? "a whole number from " : "a number from ") + units::number(rule.least) + " to " +
           units::number(rule.most);
}

/// `a length in px, rem or vw, or "none"`, with an example of how to write it.
std::string lengthsOf(const LengthRule& rule) {
    std::vector<std::string> lengthUnits;
    std::string keywords;
    for (const std::string& word : rule.words()) {
        if (word == "auto" || word == "none")
            keywords += ", or " + inQuotes(word);
        else
            lengthUnits.push_back(word);
    }
    const std::string example = "8" + lengthUnits.front();
    return "a length in " + either(lengthUnits) + " in quotes, such as " + inQuotes(example) + keywords;
}

std::string listOf(std::size_t count) {
    return "a list of " + std::to_string(count) + (count == 1 ? " value" : " values");
}

bool isControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, double& out) {
    const NumberRule& rule = numberRule(context.place());
    const double value = json.is_number() ? json.get<double>() : std::nan("");
    const bool fits = std::isfinite(value) && value >= rule.least && value <= rule.most &&
                      (!rule.whole || value == std::floor(value));
    if (!fits) return context.mustBe(rangeOf(rule), shown(json));
    out = value;
    return true;
}

bool readValue(ReadContext& context, const Json& json, int& out) {
    double value = 0;
    if (!readValue(context, json, value)) return false;
    out = static_cast<int>(value);
    return true;
}

bool readValue(ReadContext& context, const Json& json, bool& out) {
    if (!json.is_boolean()) return context.mustBe("true or false, without quotes", shown(json));
    out = json.get<bool>();
    return true;
}

bool readValue(ReadContext& context, const Json& json, std::string& out) {
    if (!json.is_string()) return context.mustBe("text in quotes", shown(json));
    out = json.get<std::string>();
    return true;
}

bool readValue(ReadContext& context, const Json& json, SharedText& out) {
    std::string text;
    if (!readValue(context, json, text)) return false;
    out = std::move(text);
    return true;
}

bool readValue(ReadContext& context, const Json& json, std::vector<std::string>& out) {
    if (!json.is_array() || json.empty())
        return context.mustBe(R"(a list of font families, such as ["Own Serif", "serif"])",
                              json.is_array() ? "empty" : shown(json));
    std::vector<std::string> families;
    bool sound = true;
    for (std::size_t i = 0; i < json.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        std::string family;
        if (!readValue(context, json[i], family)) {
            sound = false;
        } else if (family.empty() || std::any_of(family.begin(), family.end(), isControl)) {
            sound = context.mustBe("the name of a font family", inQuotes(family));
        }
        families.push_back(std::move(family));
    }
    if (sound) out = std::move(families);
    return sound;
}

bool readValue(ReadContext& context, const Json& json, Length& out) {
    const LengthRule& rule = lengthRule(context.place());
    const std::optional<Length> length =
        json.is_string() ? Length::parse(json.get_ref<const std::string&>()) : std::nullopt;
    if (!length || (!length->isZero() && !rule.allows(length->unit())))
        return context.mustBe(lengthsOf(rule), shown(json));
    if (length->value() < rule.least || length->value() > rule.most)
        return context.mustBe(
            "a length from " + units::number(rule.least) + " to " + units::number(rule.most), shown(json));
    out = *length;
    return true;
}

bool readValue(ReadContext& context, const Json& json, LineHeight& out) {
    if (json.is_number()) {
        double times = 0;
        if (!readValue(context, json, times)) return false;
        out = LineHeight::times(times);
        return true;
    }
    const auto scanned =
        json.is_string() ? units::scanNumber(json.get_ref<const std::string&>()) : std::nullopt;
    const bool quotedNumber = scanned && scanned->rest.empty();
    if (!json.is_string() || quotedNumber)
        return context.mustBe(R"(a number such as 1.4 or a length such as "24px")", shown(json),
                              quotedNumber ? "Write the number without quotes." : "");
    Length length;
    if (!readValue(context, json, length)) return false;
    out = LineHeight::of(length);
    return true;
}

bool readValue(ReadContext& context, const Json& json, Colour& out) {
    const std::optional<Colour> colour =
        json.is_string() ? Colour::parse(json.get_ref<const std::string&>()) : std::nullopt;
    if (!colour)
        return context.mustBe(R"(a colour: "#rgb", "#rgba", "#rrggbb", "#rrggbbaa" or "transparent")",
                              shown(json));
    out = *colour;
    return true;
}

bool readPair(ReadContext& context, const Json& json, double& first, double& second, const char* rule) {
    if (!json.is_array() || json.size() != 2) {
        return context.mustBe(rule, json.is_array() ? listOf(json.size()) : shown(json));
    }
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const ReadContext::Step step = context.at(i);
        if (!readValue(context, json[i], i == 0 ? first : second)) sound = false;
    }
    return sound;
}

bool readValue(ReadContext& context, const Json& json, Ramp& out) {
    if (json.is_number()) {
        double size = 0;
        if (!readValue(context, json, size)) return false;
        out = Ramp::flat(size);
        return true;
    }
    if (!json.is_array() || json.size() != 2)
        return context.mustBe("a size in px or two points such as [[360, 17], [1480, 24.5]]", shown(json));
    units::RampPoint from;
    units::RampPoint to;
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const ReadContext::Step step = context.at(i);
        units::RampPoint& point = i == 0 ? from : to;
        if (!readPair(context, json[i], point.width, point.size, "[width, size], both in px")) sound = false;
    }
    if (!sound) return false;
    const std::optional<Ramp> ramp = Ramp::between(from, to);
    if (!ramp)
        return context.wrong(context.subject() + " has two points at the same width.",
                             "Use two different widths, or write one size.");
    out = *ramp;
    return true;
}

bool readValue(ReadContext& context, const Json& json, Ratio& out) {
    const char* const rule = R"(width/height such as "3/2", or "own" for the picture's own ratio)";
    if (!json.is_string()) return context.mustBe(rule, shown(json));
    const auto& text = json.get_ref<const std::string&>();
    if (text == "own") {
        out = Ratio();
        return true;
    }
    const auto width = units::scanNumber(text);
    const auto height =
        width && width->rest.starts_with('/') ? units::scanNumber(width->rest.substr(1)) : std::nullopt;
    if (!height || !height->rest.empty()) return context.mustBe(rule, shown(json));
    const NumberRule& range = numberRule("ratio/0");
    for (const double side : {width->value, height->value}) {
        if (side < range.least || side > range.most)
            return context.mustBe("a ratio of two numbers from " + units::number(range.least) + " to " +
                                      units::number(range.most),
                                  shown(json));
    }
    out = {units::rounded(width->value), units::rounded(height->value)};
    return true;
}

bool readWord(ReadContext& context, const Json& json, const std::vector<std::string>& words,
              std::size_t& out) {
    const std::string text = json.is_string() ? json.get<std::string>() : std::string();
    const auto found = std::find(words.begin(), words.end(), text);
    if (found == words.end()) {
        std::vector<std::string> quoted;
        for (const std::string& word : words)
            quoted.push_back(inQuotes(word));
        const std::string near = json.is_string() ? nearest(text, words) : std::string();
        return context.mustBe(either(quoted), shown(json),
                              near.empty() ? "" : "Did you mean " + inQuotes(near) + "?");
    }
    out = static_cast<std::size_t>(found - words.begin());
    return true;
}

}  // namespace tenter::project
