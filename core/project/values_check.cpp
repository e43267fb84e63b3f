#include <algorithm>
#include <cmath>

#include "project/rules.h"
#include "project/values.h"
#include "units/number.h"

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

bool isControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

/// The value as the message about it shows it.
template <class T>
std::string shownValue(const T& value, const Json* inFile) {
    return shown(inFile == nullptr ? written(value) : *inFile);
}

}  // namespace

bool checkNumber(ReadContext& context, double value, const Json* inFile) {
    const NumberRule& rule = numberRule(context.place());
    const bool fits = std::isfinite(value) && value >= rule.least && value <= rule.most &&
                      (!rule.whole || value == std::floor(value));
    return fits || context.mustBe(rangeOf(rule), shownValue(value, inFile));
}

bool checkLength(ReadContext& context, const std::optional<Length>& value, const Json* inFile) {
    const LengthRule& rule = lengthRule(context.place());
    const auto actual = [&] { return shown(inFile == nullptr ? written(*value) : *inFile); };
    if (!value || (!value->isZero() && !rule.allows(value->unit())))
        return context.mustBe(lengthsOf(rule), actual());
    if (value->value() < rule.least || value->value() > rule.most)
        return context.mustBe(
            "a length from " + units::number(rule.least) + " to " + units::number(rule.most), actual());
    return true;
}

bool checkLineHeight(ReadContext& context, const LineHeight& value) {
    return value.isNumber() ? checkNumber(context, value.number()) : checkLength(context, value.length());
}

bool checkRamp(ReadContext& context, const Ramp& value) {
    if (value.from().width == value.to().width) return checkNumber(context, value.from().size);
    bool sound = true;
    for (std::size_t i = 0; i < 2; ++i) {
        const ReadContext::Step point = context.at(i);
        const units::RampPoint& end = i == 0 ? value.from() : value.to();
        for (std::size_t k = 0; k < 2; ++k) {
            const ReadContext::Step number = context.at(k);
            if (!checkNumber(context, k == 0 ? end.width : end.size)) sound = false;
        }
    }
    return sound;
}

bool checkRatio(ReadContext& context, const Ratio& value, const Json* inFile) {
    const NumberRule& range = numberRule("ratio/0");
    for (const double side : {value.width, value.height}) {
        if (!(side >= range.least && side <= range.most))
            return context.mustBe("a ratio of two numbers from " + units::number(range.least) + " to " +
                                      units::number(range.most),
                                  shownValue(value, inFile));
    }
    return true;
}

bool checkRootSize(ReadContext& context, const units::RootSize& value, const Json* inFile) {
    if (value.isNumber()) return checkNumber(context, value.number(), inFile);
    const NumberRule& rule = numberRule(context.place());
    const auto isSize = [&](double px) { return px >= rule.least && px <= rule.most; };
    const auto mustBe = [&](const std::string& what) {
        return context.mustBe(what, shownValue(value, inFile));
    };
    if (!value.isFluid() && !isSize(value.resolve(units::usualReaderSize, 0.0)))
        return mustBe("a size of " + units::number(rule.least) + " to " + units::number(rule.most) + " px");
    const units::RootSize::Calculation* sum = value.calculation();
    if (sum == nullptr) return true;
    constexpr double mostVw = 100;
    if (std::abs(sum->px) > rule.most || std::abs(sum->vw) > mostVw)
        return mustBe("a calculation with at most " + units::number(rule.most) + "px and " +
                      units::number(mostVw) + "vw");
    if ((sum->least && !isSize(*sum->least)) || (sum->most && !isSize(*sum->most)))
        return mustBe("a calculation with limits of " + units::number(rule.least) + " to " +
                      units::number(rule.most) + " px");
    if (sum->least && sum->most && *sum->least > *sum->most)
        return context.wrong(context.subject() + " has a smallest size above its largest.",
                             "Write clamp(smallest, calculation, largest).");
    return true;
}

bool checkFamilies(ReadContext& context, const std::vector<std::string>& value) {
    if (value.empty())
        return context.mustBe(R"(a list of font families, such as ["Own Serif", "serif"])", "empty");
    if (!checkCount(context, value.size(), mostFamilies)) return false;
    bool sound = true;
    for (std::size_t i = 0; i < value.size(); ++i) {
        if (!value[i].empty() && std::none_of(value[i].begin(), value[i].end(), isControl)) continue;
        const ReadContext::Step step = context.at(i);
        sound = context.mustBe("the name of a font family", inQuotes(value[i]));
    }
    return sound;
}

bool checkFileName(ReadContext& context, const std::string& value, const char* kind) {
    if (!value.empty() && value.find('\0') == std::string::npos) return true;
    return context.mustBe(std::string("the name of a ") + kind + " file",
                          value.empty() ? "empty" : inQuotes(value));
}

bool checkCount(ReadContext& context, std::size_t count, std::size_t most) {
    return count <= most || context.wrong(context.subject() + " has " + std::to_string(count) +
                                              " entries; at most " + std::to_string(most) + " are allowed.",
                                          "Split the project.");
}

bool checkBytes(ReadContext& context, std::string_view text, std::size_t most) {
    return text.size() <= most || context.mustBe("at most " + std::to_string(most) + " bytes long",
                                                 std::to_string(text.size()) + " bytes long");
}

bool checkRoleCount(ReadContext& context, std::size_t count, std::size_t most) {
    return count <= most || context.wrong("There are more than " + std::to_string(mostRoles) + " roles.",
                                          "Use the same role for similar parts.");
}

}  // namespace tenter::project
