#include <algorithm>
#include <cmath>

#include "project/rules.h"
#include "project/values.h"
#include "units/number.h"
#include "units/scan.h"

namespace tenter::project {

namespace {

bool wrongKind(Reading& reading, const Json& json, const std::string& wanted, const std::string& mend) {
    return reading.wrong(kindOf(json) + " where " + wanted + " is wanted", mend);
}

std::string rangeOf(const NumberRule& rule) {
    return (rule.whole ? "a whole number from " : "a number from ") + units::number(rule.least) + " to " +
           units::number(rule.most);
}

bool isControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

}  // namespace

bool readValue(Reading& reading, const Json& json, double& out) {
    const NumberRule& rule = numberRule(reading.place());
    const std::string mend = "write " + rangeOf(rule);
    if (!json.is_number()) return wrongKind(reading, json, "a number", mend);
    const double value = json.get<double>();
    if (!std::isfinite(value)) return reading.wrong("the number is not finite", mend);
    if (rule.whole && value != std::floor(value)) {
        return reading.wrong(json.dump() + " is not a whole number", mend);
    }
    if (value < rule.least || value > rule.most) {
        // A whole number is told as one, however it was written.
        return reading.wrong(
            (value == std::floor(value) && std::abs(value) < 1e15 ? units::number(value, 0) : json.dump()) +
                " is out of range",
            mend);
    }
    out = value;
    return true;
}

bool readValue(Reading& reading, const Json& json, int& out) {
    double value = 0;
    if (!readValue(reading, json, value)) return false;
    out = static_cast<int>(value);
    return true;
}

bool readValue(Reading& reading, const Json& json, bool& out) {
    if (!json.is_boolean())
        return wrongKind(reading, json, "true or false", "write true or false, without quotes");
    out = json.get<bool>();
    return true;
}

bool readValue(Reading& reading, const Json& json, std::string& out) {
    if (!json.is_string()) return wrongKind(reading, json, "text", "write text in quotes");
    out = json.get<std::string>();
    return true;
}

bool readValue(Reading& reading, const Json& json, std::vector<std::string>& out) {
    const std::string mend = R"(write a list of family names, such as ["Vollkorn", "serif"])";
    if (!json.is_array()) return wrongKind(reading, json, "a list of family names", mend);
    if (json.empty()) return reading.wrong("the list of families is empty", mend);
    std::vector<std::string> families;
    bool sound = true;
    for (std::size_t i = 0; i < json.size(); ++i) {
        const Reading::Step step = reading.at(i);
        std::string family;
        if (!readValue(reading, json[i], family)) {
            sound = false;
        } else if (family.empty() || std::any_of(family.begin(), family.end(), isControl)) {
            sound = reading.wrong(inQuotes(family) + " is no family name", "write the font’s name");
        }
        families.push_back(std::move(family));
    }
    if (sound) out = std::move(families);
    return sound;
}

bool readValue(Reading& reading, const Json& json, Length& out) {
    const LengthRule& rule = lengthRule(reading.place());
    const std::vector<std::string> words = rule.words();
    const std::string mend = "write a length in " + either(words) + ", in quotes";
    if (!json.is_string()) return wrongKind(reading, json, "a length", mend);
    const auto& text = json.get_ref<const std::string&>();
    const std::optional<Length> length = Length::parse(text);
    if (!length) return reading.wrong(inQuotes(text) + " is not a length", mend);
    if (!length->isZero() && !rule.allows(length->unit())) {
        return reading.wrong(inQuotes(text) + " cannot be used here", "use " + either(words));
    }
    if (length->value() < rule.least || length->value() > rule.most) {
        const bool negative = length->value() < 0 && rule.least == 0;
        return reading.wrong(
            inQuotes(text) + (negative ? " is negative" : " is out of range"),
            "write a length from " + units::number(rule.least) + " to " + units::number(rule.most));
    }
    out = *length;
    return true;
}

bool readValue(Reading& reading, const Json& json, LineHeight& out) {
    if (json.is_number()) {
        double times = 0;
        if (!readValue(reading, json, times)) return false;
        out = LineHeight::times(times);
        return true;
    }
    const char* const mend = R"(write a number such as 1.4, or a length such as "24px")";
    if (!json.is_string()) return wrongKind(reading, json, "a line height", mend);
    const auto& text = json.get_ref<const std::string&>();
    if (const auto scanned = units::scanNumber(text); scanned && scanned->rest.empty()) {
        return reading.wrong(inQuotes(text) + " is a number in quotes", "write the number without quotes");
    }
    Length length;
    if (!readValue(reading, json, length)) return false;
    out = LineHeight::of(length);
    return true;
}

bool readValue(Reading& reading, const Json& json, Colour& out) {
    const char* const mend = R"(write "#rgb", "#rgba", "#rrggbb", "#rrggbbaa" or "transparent")";
    if (!json.is_string()) return wrongKind(reading, json, "a colour", mend);
    const auto& text = json.get_ref<const std::string&>();
    const std::optional<Colour> colour = Colour::parse(text);
    if (!colour) return reading.wrong(inQuotes(text) + " is not a colour this file can hold", mend);
    out = *colour;
    return true;
}

bool readPair(Reading& reading, const Json& json, double& first, double& second, const char* mend) {
    if (!json.is_array() || json.size() != 2) {
        const std::string what = json.is_array() ? "a list of " + std::to_string(json.size()) : kindOf(json);
        return reading.wrong(what + " where a list of two numbers is wanted", mend);
    }
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const Reading::Step step = reading.at(i);
        if (!readValue(reading, json[i], i == 0 ? first : second)) sound = false;
    }
    return sound;
}

bool readValue(Reading& reading, const Json& json, Ramp& out) {
    const char* const mend = "write a size in px, or two points such as [[360, 17], [1480, 24.5]]";
    if (json.is_number()) {
        double size = 0;
        if (!readValue(reading, json, size)) return false;
        out = Ramp::flat(size);
        return true;
    }
    if (!json.is_array() || json.size() != 2) return wrongKind(reading, json, "a font size", mend);
    units::RampPoint from;
    units::RampPoint to;
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const Reading::Step step = reading.at(i);
        units::RampPoint& point = i == 0 ? from : to;
        if (!readPair(reading, json[i], point.width, point.size, "write a width and a size, both in px"))
            sound = false;
    }
    if (!sound) return false;
    const std::optional<Ramp> ramp = Ramp::between(from, to);
    if (!ramp)
        return reading.wrong("two sizes at the same width", "move the two widths apart, or write one size");
    out = *ramp;
    return true;
}

bool readValue(Reading& reading, const Json& json, Ratio& out) {
    const char* const mend = R"(write width/height such as "3/2", or "own")";
    if (!json.is_string()) return wrongKind(reading, json, "a picture’s ratio", mend);
    const auto& text = json.get_ref<const std::string&>();
    if (text == "own") {
        out = Ratio();
        return true;
    }
    const auto width = units::scanNumber(text);
    const auto height =
        width && width->rest.starts_with('/') ? units::scanNumber(width->rest.substr(1)) : std::nullopt;
    if (!height || !height->rest.empty()) return reading.wrong(inQuotes(text) + " is no ratio", mend);
    const NumberRule& rule = numberRule("ratio/0");
    for (const double side : {width->value, height->value}) {
        if (side < rule.least || side > rule.most) {
            return reading.wrong(
                inQuotes(text) + " is out of range",
                "write two numbers from " + units::number(rule.least) + " to " + units::number(rule.most));
        }
    }
    out = {units::rounded(width->value), units::rounded(height->value)};
    return true;
}

bool readWord(Reading& reading, const Json& json, const std::vector<std::string>& words, std::size_t& out) {
    std::string mend = "write " + either(words);
    if (!json.is_string()) return wrongKind(reading, json, "one of a few words", mend);
    const auto& text = json.get_ref<const std::string&>();
    const auto found = std::find(words.begin(), words.end(), text);
    if (found == words.end()) {
        const std::string near = nearest(text, words);
        if (!near.empty()) mend += "; " + inQuotes(near) + " is nearest";
        return reading.wrong(inQuotes(text) + " is no word for this", mend);
    }
    out = static_cast<std::size_t>(found - words.begin());
    return true;
}

}  // namespace tenter::project
