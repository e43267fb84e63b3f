#include "css/math.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include "css/ascii.h"
#include "css/tokens.h"

namespace tenter::css {

namespace {

constexpr int deepestCalculation = 100;
/// The number for `infinity`: larger than every length that browsers can lay out, and times 1px still exact.
constexpr double endless = 1e12;
constexpr std::size_t mostTokens = 10'000;

const char* const addUnit = "Give the number a unit, such as 16px or 1rem.";

bool isMathFunction(const Token& token) {
    return token.isFunction("calc") || token.isFunction("min") || token.isFunction("max") ||
           token.isFunction("clamp");
}

constexpr std::array<std::string_view, 13> furtherFunctions{
    "round", "mod", "rem", "abs", "sign", "pow", "sqrt", "exp", "log", "sin", "cos", "tan", "hypot"};

bool isFurtherFunction(const Token& token) {
    return std::ranges::any_of(furtherFunctions,
                               [&](std::string_view name) { return token.isFunction(name); });
}

class Calculator {
public:
    Calculator(std::string_view text, const CalculationBasis& basis, Problems& problems, std::size_t offset)
        : text_(text), basis_(basis), problems_(problems), offset_(offset) {}

    std::optional<Calculated> read() {
        if (!readTokens()) return std::nullopt;
        skipSpaces();
        if (token().is(TokenKind::End))
            return wrong("The value is missing.", "Write a length, such as 1rem.");
        if (token().is(TokenKind::OpenRound))
            return wrong("The calculation is not inside calc().", "Write calc( ) around it.");
        std::optional<Calculated> value = readTerm();
        if (!value) return std::nullopt;
        skipSpaces();
        if (token().is(TokenKind::End)) {
            value->used = used_;
            return value;
        }
        const bool sum = isOperator('+') || isOperator('-') || isOperator('*') || isOperator('/');
        if (sum)
            return wrong("The calculation is not inside calc().", "Write calc( ) around the whole value.");
        return wrong("\"" + written() + "\" follows the end of the value.", "Remove it.");
    }

private:
    bool readTokens() {
        Tokeniser tokeniser(text_);
        do {
            tokens_.push_back(tokeniser.next());
            if (tokens_.size() > mostTokens) {
                at_ = mostTokens;
                wrong("The value has more than 10000 parts.", "Shorten it.");
                return false;
            }
        } while (!tokens_.back().is(TokenKind::End));
        return true;
    }

    [[nodiscard]] const Token& token() const { return tokens_[at_]; }
    void step() {
        if (!token().is(TokenKind::End)) ++at_;
    }
    bool skipSpaces() {
        const std::size_t start = at_;
        while (token().is(TokenKind::Whitespace))
            ++at_;
        return at_ > start;
    }
    [[nodiscard]] std::string written() const {
        return std::string(
            text_.substr(token().begin, std::min<std::size_t>(token().end - token().begin, 40)));
    }
    std::nullopt_t wrongAt(const Token& where, std::string what, std::string fix) {
        problems_.push_back({offset_ + where.begin, std::move(what), std::move(fix)});
        return std::nullopt;
    }
    std::nullopt_t wrong(std::string what, std::string fix) {
        return wrongAt(token(), std::move(what), std::move(fix));
    }
    [[nodiscard]] bool isOperator(char character) const { return token().isDelim(character); }

    Calculated numberOf(double value) const {
        return {true, value, PiecewiseLinear({}, basis_.least, basis_.most), {}};
    }
    Calculated lengthOf(Line line) const {
        return {false, 0, PiecewiseLinear(line, basis_.least, basis_.most), {}};
    }
    static Line part(double share, Line whole) { return {whole.atZero * share, whole.perPx * share}; }

    std::optional<Calculated> checked(Calculated value, const Token& where) {
        if (value.isNumber ? std::isfinite(value.number) : value.length.isFinite()) return value;
        return wrongAt(where, "The result is too large for a number.", "Write smaller numbers.");
    }

    // Absolute units in CSS px. CSS Values 4 § 6.3.
    static double absoluteUnit(std::string_view unit) {
        constexpr double inch = 96;
        constexpr std::array<std::pair<std::string_view, double>, 6> units{{{"cm", inch / 2.54},
                                                                            {"mm", inch / 25.4},
                                                                            {"q", inch / 101.6},
                                                                            {"in", inch},
                                                                            {"pc", inch / 6},
                                                                            {"pt", inch / 72}}};
        const auto* const found = std::ranges::find(units, unit, &std::pair<std::string_view, double>::first);
        return found == units.end() ? 0 : found->second;
    }

    std::optional<Line> relativeTo(std::string_view unit, double number) {
        if (unit == "px") return Line{number, 0};
        if (unit == "rem") {
            used_.root = true;
            return part(number, basis_.root);
        }
        if (unit == "em") {
            used_.em = true;
            return part(number, basis_.em);
        }
        if (unit == "lh" && basis_.line) return part(number, *basis_.line);
        if (unit == "rlh" && basis_.rootLine) return part(number, *basis_.rootLine);
        const bool variant = basis_.allUnits && unit.size() == 3 &&
                             std::string_view("sld").find(unit[0]) != std::string_view::npos &&
                             (unit.substr(1) == "vw" || unit.substr(1) == "vi");
        if (unit == "vw" || unit == "vi" || variant) {
            used_.viewport = true;
            return part(number / 100, basis_.viewport);
        }
        if ((unit == "cqi" || unit == "cqw") && basis_.container) {
            used_.container = true;
            return part(number / 100, *basis_.container);
        }
        if (basis_.fontUnit)
            if (const std::optional<Line> one = basis_.fontUnit(unit)) return part(number, *one);
        const double absolute = basis_.allUnits ? absoluteUnit(unit) : 0;
        return absolute > 0 ? std::optional(Line{number * absolute, 0}) : std::nullopt;
    }

    std::optional<Calculated> readDimension() {
        const Token& here = token();
        const std::string unit = lowered(here.text);
        if ((unit == "cqi" || unit == "cqw") && !basis_.container)
            return wrong("The unit " + unit + " has no container here.", "Write the length in vw.");
        const std::optional<Line> line = relativeTo(unit, here.number);
        if (!line)
            return wrong("The unit " + here.text + " is not supported here.",
                         "Write the length in px, rem, em, %, vw or cqi.");
        step();
        return checked(lengthOf(*line), here);
    }

    std::optional<Calculated> readPercentage() {
        const Token& here = token();
        if (!basis_.percentage)
            return wrong("A percentage is not allowed here.", "Write the length in px, rem or vw.");
        used_.percentage = true;
        step();
        return checked(lengthOf(part(here.number / 100, *basis_.percentage)), here);
    }

    // A number, a length, a nested calculation or a function.
    std::optional<Calculated> readTerm() {
        const Token& here = token();
        switch (here.kind) {
            case TokenKind::Number:
                step();
                return numberOf(here.number);
            case TokenKind::Dimension:
                return readDimension();
            case TokenKind::Percentage:
                return readPercentage();
            case TokenKind::OpenRound:
                return readNested([this] { return readSum(); });
            case TokenKind::Function:
                if (isMathFunction(here)) return readNested([this, &here] { return readFunction(here); });
                if (basis_.allUnits && isFurtherFunction(here))
                    return readNested([this, &here] { return readFurther(here); });
                if (here.isFunction("var"))
                    return wrong("The value of var() is set elsewhere and not known here.",
                                 "Write that value instead.");
                return wrong("The function " + written() + ") is not supported here.",
                             "Write its value instead.");
            case TokenKind::Ident:
                if (depth_ > 0 && here.isIdent("pi")) return step(), numberOf(std::numbers::pi);
                if (depth_ > 0 && here.isIdent("e")) return step(), numberOf(std::numbers::e);
                if (depth_ > 0 && basis_.allUnits && here.isIdent("infinity"))
                    return step(), numberOf(endless);
                if (depth_ > 0 && basis_.allUnits && here.isIdent("-infinity"))
                    return step(), numberOf(-endless);
                break;
            default:
                break;
        }
        if (here.is(TokenKind::End)) return wrong("The value ends before a number or a length.", "Add one.");
        return wrong("\"" + written() + "\" is neither a number nor a length.",
                     "Write one instead, such as 1rem.");
    }

    template <class Inside>
    std::optional<Calculated> readNested(Inside inside) {
        if (depth_ == deepestCalculation)
            return wrong("Calculations are nested more than 100 deep.", "Nest them less.");
        ++depth_;
        step();
        std::optional<Calculated> value = inside();
        --depth_;
        if (!value) return std::nullopt;
        skipSpaces();
        // An open parenthesis is closed at the end of the value. CSS Syntax 3 § 5.5.9.
        if (!token().is(TokenKind::CloseRound) && !token().is(TokenKind::End)) return unexpectedInside();
        step();
        return value;
    }

    std::nullopt_t unexpectedInside() {
        const char first = text_[token().begin];
        const bool sign = first == '+' || first == '-';
        if (sign) {
            return wrong(std::string("A space is missing next to ") + first + ".",
                         std::string("Write a space on both sides of ") + first + ".");
        }
        if (token().is(TokenKind::Comma))
            return wrong("The function has too many values.", "Remove the extra ones.");
        return wrong("Expected + - * / or ), but found \"" + written() + "\".",
                     "Write one of these, or remove it.");
    }

    // § 10.1: white space on both sides of + and −.
    std::optional<Calculated> readSum() {
        std::optional<Calculated> sum = readProduct();
        while (sum) {
            const std::size_t before = at_;
            const bool space = skipSpaces();
            if (!isOperator('+') && !isOperator('-')) {
                at_ = before;
                skipSpaces();
                return sum;
            }
            const Token& sign = token();
            const bool minus = isOperator('-');
            if (!space) return unexpectedInside();
            step();
            if (!token().is(TokenKind::Whitespace)) {
                --at_;
                return unexpectedInside();
            }
            std::optional<Calculated> next = readProduct();
            if (!next) return std::nullopt;
            sum = added(std::move(*sum), *next, minus, sign);
        }
        return sum;
    }

    std::optional<Calculated> added(Calculated one, const Calculated& other, bool minus, const Token& sign) {
        if (one.isNumber != other.isNumber)
            return wrongAt(
                sign, minus ? "A number and a length are subtracted." : "A number and a length are added.",
                addUnit);
        if (one.isNumber)
            return checked(numberOf(minus ? one.number - other.number : one.number + other.number), sign);
        one.length = one.length.plus(minus ? other.length.times(-1) : other.length);
        return checked(std::move(one), sign);
    }

    std::optional<Calculated> readProduct() {
        skipSpaces();
        std::optional<Calculated> product = readTerm();
        while (product) {
            const std::size_t before = at_;
            skipSpaces();
            if (!isOperator('*') && !isOperator('/')) {
                at_ = before;
                return product;
            }
            const Token& sign = token();
            step();
            skipSpaces();
            const std::optional<Calculated> next = readTerm();
            if (!next) return std::nullopt;
            product = sign.isDelim('*') ? multiplied(*product, *next, sign) : divided(*product, *next, sign);
        }
        return product;
    }

    // § 10.9.
    std::optional<Calculated> multiplied(const Calculated& one, const Calculated& other, const Token& sign) {
        if (!one.isNumber && !other.isNumber)
            return wrongAt(sign, "A length is multiplied by a length.", "Remove one of the units.");
        const Calculated& factor = one.isNumber ? one : other;
        return scaled(one.isNumber ? other : one, factor.number, sign);
    }

    std::optional<Calculated> divided(const Calculated& one, const Calculated& other, const Token& sign) {
        if (!other.isNumber)
            return wrongAt(sign, "The calculation divides by a length.", "Divide by a number.");
        if (other.number == 0)
            return wrongAt(sign, "The calculation divides by 0.", "Divide by another number.");
        if (one.isNumber) return checked(numberOf(one.number / other.number), sign);
        return scaled(one, 1 / other.number, sign);
    }

    std::optional<Calculated> scaled(const Calculated& value, double factor, const Token& sign) {
        if (value.isNumber) return checked(numberOf(value.number * factor), sign);
        Calculated result = value;
        result.length = value.length.times(factor);
        return checked(std::move(result), sign);
    }

    // The arguments of min(), max() and clamp(); an empty one is `none`. § 10.2.
    std::optional<std::vector<std::optional<Calculated>>> readArguments(const Token& function) {
        std::vector<std::optional<Calculated>> arguments;
        const bool clamp = function.isFunction("clamp");
        while (true) {
            skipSpaces();
            if (clamp && token().isIdent("none") && arguments.size() != 1) {
                step();
                arguments.emplace_back();
            } else {
                std::optional<Calculated> value = readSum();
                if (!value) return std::nullopt;
                if (!sameKind(arguments, *value)) {
                    return wrongAt(function,
                                   "Numbers and lengths are mixed in " + lowered(function.text) + "().",
                                   addUnit);
                }
                arguments.push_back(std::move(value));
            }
            skipSpaces();
            if (!token().is(TokenKind::Comma)) break;
            step();
        }
        if (clamp && arguments.size() != 3)
            return wrongAt(
                function,
                "The function clamp() has " + std::to_string(arguments.size()) + " values; it needs three.",
                "Write clamp(smallest, value, largest).");
        return arguments;
    }

    static bool sameKind(const std::vector<std::optional<Calculated>>& arguments, const Calculated& value) {
        for (const std::optional<Calculated>& each : arguments) {
            if (each) return each->isNumber == value.isNumber;
        }
        return true;
    }

    static Calculated smaller(const Calculated& one, const Calculated& other) {
        if (one.isNumber) return one.number < other.number ? one : other;
        return {false, 0, one.length.least(other.length), {}};
    }
    static Calculated larger(const Calculated& one, const Calculated& other) {
        if (one.isNumber) return one.number > other.number ? one : other;
        return {false, 0, one.length.most(other.length), {}};
    }

    std::optional<Calculated> readFunction(const Token& function) {
        if (function.isFunction("calc")) return readSum();
        const auto arguments = readArguments(function);
        if (!arguments) return std::nullopt;
        if (function.isFunction("clamp")) {
            // max(least, min(value, most)).
            Calculated value = *(*arguments)[1];
            if ((*arguments)[2]) value = smaller(value, *(*arguments)[2]);
            if ((*arguments)[0]) value = larger(*(*arguments)[0], value);
            return value;
        }
        const bool min = function.isFunction("min");
        Calculated value = *arguments->front();
        for (std::size_t i = 1; i < arguments->size(); ++i)
            value = min ? smaller(value, *(*arguments)[i]) : larger(value, *(*arguments)[i]);
        return value;
    }

    /// A number, or a length that does not change with the width, in CSS px; empty for other lengths.
    static std::optional<double> constant(const Calculated& value) {
        if (value.isNumber) return value.number;
        const std::vector<Vertex>& vertices = value.length.vertices();
        for (const Vertex& vertex : vertices)
            if (std::abs(vertex.value - vertices.front().value) > 1e-9) return std::nullopt;
        return vertices.front().value;
    }

    // § 10.3 to § 10.6. Of lengths that change with the width only abs() is piecewise linear.
    std::optional<Calculated> readFurther(const Token& function) {
        const std::string name = lowered(function.text);
        std::string strategy = "nearest";
        skipSpaces();
        if (name == "round" && token().is(TokenKind::Ident)) {
            strategy = lowered(token().text);
            step();
            skipSpaces();
            if (!token().is(TokenKind::Comma)) return unexpectedInside();
            step();
        }
        const auto arguments = readArguments(function);
        if (!arguments) return std::nullopt;
        const Calculated& first = *arguments->front();
        if (name == "abs" && !first.isNumber && arguments->size() == 1)
            return Calculated{false, 0, first.length.most(first.length.times(-1)), {}};
        std::vector<double> values;
        for (const std::optional<Calculated>& argument : *arguments) {
            const std::optional<double> value = constant(*argument);
            if (!value)
                return wrongAt(function,
                               "The function " + name +
                                   "() of a length that changes with the viewport "
                                   "width is not supported.",
                               "Write its value instead.");
            values.push_back(*value);
        }
        const std::optional<double> result = furtherValue(name, strategy, values);
        if (!result)
            return wrongAt(function, "The function " + name + "() has wrong values.",
                           "Write its value instead.");
        const bool isLength = !first.isNumber && (name == "round" || name == "mod" || name == "rem" ||
                                                  name == "abs" || name == "hypot");
        return checked(isLength ? lengthOf({*result, 0}) : numberOf(*result), function);
    }

    static double rounded(const std::string& strategy, double value, double interval) {
        const double count = value / interval;
        if (strategy == "up") return std::ceil(count) * interval;
        if (strategy == "down") return std::floor(count) * interval;
        if (strategy == "to-zero") return std::trunc(count) * interval;
        return std::floor(count + 0.5) * interval;
    }

    /// The value of such a function; empty for a wrong number of values.
    static std::optional<double> furtherValue(const std::string& name, const std::string& strategy,
                                              const std::vector<double>& values) {
        const double one = values.front();
        const std::size_t count = values.size();
        if (name == "round" && count <= 2)
            return rounded(strategy, one, count == 2 ? std::abs(values[1]) : 1);
        if (count == 2) {
            const double two = values[1];
            if (name == "mod") return one - two * std::floor(one / two);
            if (name == "rem") return std::fmod(one, two);
            if (name == "pow") return std::pow(one, two);
            if (name == "log") return std::log(one) / std::log(two);
        }
        if (name == "hypot") {
            double sum = 0;
            for (const double value : values)
                sum += value * value;
            return std::sqrt(sum);
        }
        if (count != 1) return std::nullopt;
        if (name == "abs") return std::abs(one);
        if (name == "sign") return one > 0 ? 1 : one < 0 ? -1 : 0;
        if (name == "sqrt") return std::sqrt(one);
        if (name == "exp") return std::exp(one);
        if (name == "log") return std::log(one);
        // Numbers are angles in rad. § 10.4.
        if (name == "sin") return std::sin(one);
        if (name == "cos") return std::cos(one);
        if (name == "tan") return std::tan(one);
        return std::nullopt;
    }

    std::string_view text_;
    const CalculationBasis& basis_;
    Problems& problems_;
    std::size_t offset_;
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
    int depth_ = 0;
    UnitsUsed used_;
};

}  // namespace

std::optional<Calculated> calculate(std::string_view text, const CalculationBasis& basis, Problems& problems,
                                    std::size_t offset) {
    return Calculator(text, basis, problems, offset).read();
}

}  // namespace tenter::css
