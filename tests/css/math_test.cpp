// The source of these is CSS Values 4 § 10; the clause stands beside each. tests/engines compares with a
// browser.
#include "css/math.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace tenter::css {
namespace {

CalculationBasis basis() {
    CalculationBasis result;
    result.least = 320;
    result.most = 1920;
    result.em = {20, 0};
    result.percentage = Line{0, 0.5};
    result.container = Line{-100, 0.25};
    return result;
}

std::vector<Vertex> vertices(std::string_view text) {
    Problems problems;
    const auto value = calculate(text, basis(), problems);
    EXPECT_TRUE(value) << text << ": " << (problems.empty() ? "" : problems.front().what);
    if (!value) return {};
    EXPECT_FALSE(value->isNumber) << text;
    return value->length.vertices();
}

double at(double width, std::string_view text) {
    Problems problems;
    const auto value = calculate(text, basis(), problems);
    EXPECT_TRUE(value) << text << ": " << (problems.empty() ? "" : problems.front().what);
    return value ? value->length.at(width) : std::nan("");
}

Problem refusedValue(std::string_view text, CalculationBasis over = basis()) {
    Problems problems;
    EXPECT_FALSE(calculate(text, over, problems)) << text;
    EXPECT_EQ(problems.size(), 1U) << text;
    return problems.empty() ? Problem() : problems.front();
}

// § 6.
TEST(CssMath, ReadsLengths) {
    EXPECT_DOUBLE_EQ(at(1000, "12px"), 12);
    EXPECT_DOUBLE_EQ(at(1000, "1.5REM"), 24);
    EXPECT_DOUBLE_EQ(at(1000, "2em"), 40);
    EXPECT_DOUBLE_EQ(at(1000, "3vw"), 30);
    EXPECT_DOUBLE_EQ(at(1000, "3vi"), 30);
    EXPECT_DOUBLE_EQ(at(1000, "10%"), 50);
    EXPECT_DOUBLE_EQ(at(1000, "10cqi"), 15);
    EXPECT_DOUBLE_EQ(at(1000, " /* tide */ -10cqw "), -15);
    EXPECT_EQ(vertices("3vw").size(), 2U);
}

TEST(CssMath, DistinguishesNumbersFromLengths) {
    Problems problems;
    EXPECT_EQ(calculate("1.5", basis(), problems)->number, 1.5);
    EXPECT_EQ(calculate("calc(3 * (1 + 1) / 4)", basis(), problems)->number, 1.5);
    EXPECT_NEAR(calculate("calc(pi - e)", basis(), problems)->number, 0.42331, 1e-5);
    EXPECT_EQ(calculate("max(1, 3, 2)", basis(), problems)->number, 3);
    EXPECT_EQ(calculate("clamp(1, 3, 2)", basis(), problems)->number, 2);
}

// § 10.1, § 10.8.
TEST(CssMath, CalculatesInTheOrderOfOperators) {
    EXPECT_DOUBLE_EQ(at(1000, "calc(1px + 2px * 3)"), 7);
    EXPECT_DOUBLE_EQ(at(1000, "calc((1px + 2px) * 3)"), 9);
    EXPECT_DOUBLE_EQ(at(1000, "calc(10px - 4px - 3px)"), 3);
    EXPECT_DOUBLE_EQ(at(1000, "calc(24px/4/2)"), 3);
    EXPECT_DOUBLE_EQ(at(1000, "calc(2*-3px)"), -6);
    EXPECT_DOUBLE_EQ(at(1000, "calc( 1rem + 1vw )"), 26);
    EXPECT_DOUBLE_EQ(at(1000, "calc(1rem\n-\t1vw)"), 6);
    EXPECT_DOUBLE_EQ(at(1000, "calc(100% - calc(2 * 1em))"), 460);
    EXPECT_DOUBLE_EQ(at(1000, "calc(1px + 2px"), 3);
}

// § 10.2.
TEST(CssMath, KnowsLeastMostAndClamp) {
    EXPECT_EQ(vertices("clamp(16px, 2vw, 32px)"),
              (std::vector<Vertex>{{320, 16}, {800, 16}, {1600, 32}, {1920, 32}}));
    EXPECT_EQ(vertices("min(2vw, 1rem)"), (std::vector<Vertex>{{320, 6.4}, {800, 16}, {1920, 16}}));
    EXPECT_EQ(vertices("max(2vw, 1rem, 3px)"), (std::vector<Vertex>{{320, 16}, {800, 16}, {1920, 38.4}}));
    EXPECT_DOUBLE_EQ(at(1000, "clamp(30px, 20px, 10px)"), 30);
    EXPECT_DOUBLE_EQ(at(1000, "clamp(none, 20px, 10px)"), 10);
    EXPECT_DOUBLE_EQ(at(1000, "clamp(30px, 20px, NONE)"), 30);
    // Where two kinks undo each other there is none.
    const auto straight = vertices("calc(min(2vw, 16px) + max(2vw, 16px) - 2vw)");
    ASSERT_EQ(straight.size(), 2U);
    EXPECT_DOUBLE_EQ(straight[0].value, 16);
}

TEST(CssMath, SaysWhichUnitsWereUsed) {
    Problems problems;
    const UnitsUsed used = calculate("calc(1rem + 1vw + 1em)", basis(), problems)->used;
    EXPECT_TRUE(used.root && used.viewport && used.em);
    EXPECT_FALSE(used.container || used.percentage);
}

// § 10.1 and § 10.9: types, and white space around + and −.
TEST(CssMath, RefusesWhatTheStandardDoesAndSaysWhere) {
    EXPECT_EQ(refusedValue("calc(1px+2px)").what, "A space is missing next to +.");
    EXPECT_EQ(refusedValue("calc(1px+2px)").offset, 8U);
    EXPECT_EQ(refusedValue("calc(1px -2px)").what, "A space is missing next to -.");
    EXPECT_EQ(refusedValue("calc(1px + 2)").what, "A number and a length are added.");
    EXPECT_EQ(refusedValue("calc(1px * 2px)").what, "A length is multiplied by a length.");
    EXPECT_EQ(refusedValue("calc(1px / 0)").what, "The calculation divides by 0.");
    EXPECT_EQ(refusedValue("max(1px, 2)").what, "Numbers and lengths are mixed in max().");
    EXPECT_EQ(refusedValue("clamp(1px, 2px)").what, "The function clamp() has 2 values; it needs three.");
    EXPECT_EQ(refusedValue("1rem + 1vw").what, "The calculation is not inside calc().");
    EXPECT_EQ(refusedValue("calc(1px + 3vh)").what, "The unit vh is not supported here.");
    EXPECT_EQ(refusedValue("calc(1px + 3vh)").offset, 11U);
    for (const char* wrong : {"",
                              "calc()",
                              "calc(1px +)",
                              "calc(1px +2px)",
                              "calc(1px+ 2px)",
                              "calc(1px/**/+/**/2px)",
                              "calc(* 2px)",
                              "calc(1px 2px)",
                              "calc(1px, 2px)",
                              "calc(2 / 1px)",
                              "calc(1px / 1px)",
                              "min()",
                              "max(1px,)",
                              "clamp(1px, none, 2px)",
                              "clamp(1px, 2px, 3px, 4px)",
                              "(1px)",
                              "1px 2px",
                              "medium",
                              "var(--a)",
                              "calc(var(--a))",
                              "calc-size(auto, size)",
                              "sin(1)",
                              "calc(none)",
                              "min(none, 1px)",
                              "calc(1e308px * 1e10)",
                              "1.5.5px",
                              "calc(1px))",
                              "\"1px\"",
                              "#fff",
                              "pi",
                              "calc(infinity * 1px)"}) {
        const Problem problem = refusedValue(wrong);
        EXPECT_FALSE(problem.what.empty() || problem.fix.empty()) << wrong;
        EXPECT_LE(problem.offset, std::string(wrong).size()) << wrong;
    }
    CalculationBasis bare;
    EXPECT_EQ(refusedValue("50%", bare).what, "A percentage is not allowed here.");
    EXPECT_EQ(refusedValue("5cqi", bare).what, "The unit cqi has no container here.");
}

// A calculation made at random, and what it comes to at one width by the standard's own formulas.
class RandomCalculation {
public:
    explicit RandomCalculation(std::mt19937& random) : random_(random) {}

    std::pair<std::string, double> make(int depth, double width) {
        const auto pick = random_() % (depth == 0 ? 3 : 8);
        const double number = static_cast<double>(random_() % 4000) / 100 - 10;
        const std::string text = std::to_string(number);
        const double written = std::stod(text);
        if (pick == 0) return {text + "px", written};
        if (pick == 1) return {text + "vw", written * width / 100};
        if (pick == 2) return {text + "rem", written * 16};
        const auto [a, x] = make(depth - 1, width);
        if (pick == 3) return {"calc(" + a + " * " + text + ")", x * written};
        const auto [b, y] = make(depth - 1, width);
        if (pick == 4) return {"calc(" + a + " + " + b + ")", x + y};
        if (pick == 5) return {"min(" + a + ", " + b + ")", std::min(x, y)};
        if (pick == 6) return {"max(" + a + ", " + b + ")", std::max(x, y)};
        const auto [c, z] = make(depth - 1, width);
        return {"clamp(" + a + ", " + b + ", " + c + ")", std::max(x, std::min(y, z))};
    }

private:
    std::mt19937& random_;
};

TEST(CssMath, IsExactAtEveryWidth) {
    std::mt19937 seeds(3);
    for (int i = 0; i < 500; ++i) {
        const auto seed = static_cast<std::mt19937::result_type>(seeds());
        for (const double width : {320.0, 333.3, 700.0, 1111.1, 1500.0, 1920.0}) {
            std::mt19937 random(seed);
            const auto [text, expected] = RandomCalculation(random).make(4, width);
            ASSERT_NEAR(at(width, text), expected, 1e-9 * std::max(1.0, std::abs(expected)) * 1e3) << text;
        }
    }
}

TEST(CssMath, AcceptsAnyInput) {
    const auto repeated = [](std::string_view piece, std::size_t count) {
        std::string text;
        for (std::size_t i = 0; i < count; ++i)
            text += piece;
        return text;
    };
    EXPECT_EQ(refusedValue(repeated("calc(", 100'000)).what, "The value has more than 10000 parts.");
    EXPECT_EQ(refusedValue(repeated("calc(", 200) + "1px" + repeated(")", 200)).what,
              "Calculations are nested more than 100 deep.");
    EXPECT_DOUBLE_EQ(at(1000, repeated("calc(", 100) + "1px" + repeated(")", 100)), 1);
    refusedValue("calc(" + repeated("(", 5'000'000));
    refusedValue("max(" + repeated("1px,", 1'000'000));
    refusedValue(std::string_view("\0\xff", 2));
    // The worst number of kinks that its length allows: every argument is the least somewhere.
    std::string many = "min(0px";
    for (int i = 1; i < 900; ++i)
        many += ", calc(" + std::to_string(i * i * 0.01) + "px - " + std::to_string(i) + "vw)";
    EXPECT_GT(vertices(many + ")").size(), 700U);
}

// CSS Values 4 § 10.3 to § 10.6, of constants; only abs() also of what changes with the width.
TEST(CssMath, CalculatesFurtherFunctionsOfConstants) {
    CalculationBasis basis;
    basis.allUnits = true;
    const auto px = [&](std::string_view text) {
        Problems problems;
        const auto value = calculate(text, basis, problems);
        return value && !value->isNumber ? value->length.at(1000) : -1;
    };
    EXPECT_DOUBLE_EQ(px("round(14px, 10px)"), 10);
    EXPECT_DOUBLE_EQ(px("round(15px, 10px)"), 20);
    EXPECT_DOUBLE_EQ(px("round(up, 11px, 10px)"), 20);
    EXPECT_DOUBLE_EQ(px("round(down, -11px, 10px)"), -20);
    EXPECT_DOUBLE_EQ(px("round(to-zero, -11px, 10px)"), -10);
    EXPECT_DOUBLE_EQ(px("mod(-18px, 5px)"), 2);
    EXPECT_DOUBLE_EQ(px("rem(-18px, 5px)"), -3);
    EXPECT_DOUBLE_EQ(px("hypot(3px, 4px)"), 5);
    EXPECT_DOUBLE_EQ(px("calc(sign(-2px) * -3px)"), 3);
    EXPECT_DOUBLE_EQ(px("calc(pow(2, 3) * sqrt(4) * 1px)"), 16);
    EXPECT_DOUBLE_EQ(px("abs(200px - 50vw)"), 300);
    EXPECT_DOUBLE_EQ(px("min(infinity * 1px, 7px)"), 7);
    EXPECT_DOUBLE_EQ(px("round(50vw, 10px)"), -1);
    EXPECT_DOUBLE_EQ(px("mod(18px, 5)"), -1);
    basis.allUnits = false;
    EXPECT_DOUBLE_EQ(px("round(14px, 10px)"), -1);
}

}  // namespace
}  // namespace tenter::css
