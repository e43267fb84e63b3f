#include <algorithm>
#include <cmath>

#include "project/rules.h"
#include "project/values.h"
#include "units/number.h"
#include "units/scan.h"

namespace tenter::project {

namespace {

const char* const ratioRule = R"(width/height such as "3/2", or "own" for the picture's own ratio)";

std::string listOf(std::size_t count) {
    return "a list of " + std::to_string(count) + (count == 1 ? " value" : " values");
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, double& out) {
    const double value = json.is_number() ? json.get<double>() : std::nan("");
    if (!checkNumber(context, value, &json)) return false;
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
    if (!json.is_array())
        return context.mustBe(R"(a list of font families, such as ["Own Serif", "serif"])", shown(json));
    std::vector<std::string> families;
    bool sound = true;
    for (std::size_t i = 0; i < json.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        if (!readValue(context, json[i], families.emplace_back())) sound = false;
    }
    if (!sound || !checkFamilies(context, families)) return false;
    out = std::move(families);
    return true;
}

bool readValue(ReadContext& context, const Json& json, Length& out) {
    const std::optional<Length> length =
        json.is_string() ? Length::parse(json.get_ref<const std::string&>()) : std::nullopt;
    if (!checkLength(context, length, &json)) return false;
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
    if (!json.is_string()) return context.mustBe(ratioRule, shown(json));
    const auto& text = json.get_ref<const std::string&>();
    if (text == "own") {
        out = Ratio();
        return true;
    }
    const auto width = units::scanNumber(text);
    const auto height =
        width && width->rest.starts_with('/') ? units::scanNumber(width->rest.substr(1)) : std::nullopt;
    if (!height || !height->rest.empty()) return context.mustBe(ratioRule, shown(json));
    if (!checkRatio(context, {width->value, height->value}, &json)) return false;
    out = {units::rounded(width->value), units::rounded(height->value)};
    return true;
}

bool readValue(ReadContext& context, const Json& json, units::RootSize& out) {
    if (!json.is_string()) {
        double px = 0;
        if (!readValue(context, json, px)) return false;
        out = px;
        return true;
    }
    const auto size = units::RootSize::parse(json.get_ref<const std::string&>());
    if (!size)
        return context.mustBe(
            R"-(a number of px, or a CSS value such as "62.5%" or "clamp(15px, 14px + 0.3vw, 18px)")-",
            shown(json));
    if (!checkRootSize(context, *size, &json)) return false;
    out = *size;
    return true;
}

bool readWord(ReadContext& context, const Json& json, const std::vector<std::string>& words,
              std::size_t& out) {
    const std::string text = json.is_string() ? json.get<std::string>() : std::string();
    const auto found = std::find(words.begin(), words.end(), text);
    if (found == words.end()) {
        std::vector<std::string> quoted;
        quoted.reserve(words.size());
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
