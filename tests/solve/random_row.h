// Random rows with random wishes.
#pragma once

#include <gtest/gtest.h>

#include <array>
#include <random>

#include "project/file.h"
#include "project/json_text.h"
#include "units/number.h"

namespace tenter::test {

/// The seed of the rows that tests/solve judges, some of which the engines judge too.
inline constexpr unsigned randomRows = 20261126;

/// Rows as users make them, and somewhat beyond: any columns, spacing in any unit, text of any length.
class RandomRow {
    using Json = project::Json;

public:
    explicit RandomRow(unsigned seed) : random_(seed), pages_(seed) {}

    project::Project next() {
        Json json = {{"format", "tenter-project"},
                     {"version", 1},
                     {"name", "made"},
                     {"language", pick({"en", "de", "nl"})},
                     {"unit", pick({"rem", "px"})},
                     {"style", style()},
                     {"cards", cards()},
                     {"variants", variants()},
                     {"wishes", wishes()}};
        if (chance(3)) json["page"] = {{"rootSize", pick({"10", "18"}) == "10" ? 10 : 18}};
        if (pages_() % 3 == 0) json["page"]["ranges"] = pageRanges();
        project::Problems problems;
        const auto made = project::parse(project::prettyJson(json), "made", {}, problems);
        EXPECT_TRUE(made) << (problems.empty() ? "" : problems[0].line());
        return made.value_or(project::Project());
    }

private:
    double real(double least, double most) {
        return std::round(std::uniform_real_distribution<double>(least, most)(random_) * 100) / 100;
    }
    int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
    bool chance(int of) { return whole(1, of) == 1; }
    std::string pick(const std::vector<std::string>& from) {
        return from[static_cast<std::size_t>(whole(0, static_cast<int>(from.size()) - 1))];
    }
    std::string length(double px, const std::vector<std::string>& units) {
        const std::string unit = pick(units);
        const double value = unit == "px" ? px : unit == "%" || unit == "vw" ? px / 8 : px / 16;
        return units::number(real(0.2, 1) * value, 3) + unit;
    }

    /// Ranges of a theme: containers in px by breakpoint, root sizes in any form.
    Json pageRanges() {
        static constexpr std::array<const char*, 8> rootSizes{
            "62.5%", "15px", "calc(12px + 0.3vw)", "clamp(15px, 1.2vw, 19px)", "", "", "", ""};
        Json list = Json::array();
        double upTo = 300;
        for (auto count = 1 + pages_() % 3; count > 0; --count) {
            upTo += static_cast<double>(100 + pages_() % 500);
            Json range = {{"upTo", upTo}, {"container", {{"maxWidth", units::number(upTo * 0.9, 0) + "px"}}}};
            const std::string rootSize = rootSizes.at(pages_() % rootSizes.size());
            if (!rootSize.empty()) range["rootSize"] = rootSize;
            list.push_back(std::move(range));
        }
        return list;
    }

    Json text(double size) {
        Json ramp = real(size * 0.7, size * 1.6);
        if (!chance(5))
            ramp = Json::array({Json::array({whole(200, 500), real(size * 0.7, size * 1.4)}),
                                Json::array({whole(700, 1900), real(size * 0.8, size * 1.8)})});
        Json style = {{"family", {pick({"Karla", "Vollkorn", "Cabin", "Lato"})}}, {"size", ramp}};
        if (chance(3)) style["follow"] = "card";
        if (chance(3)) style["letterSpacing"] = length(0.6, {"px", "em"});
        if (chance(4)) style["wordSpacing"] = length(1.5, {"px", "em"});
        if (chance(4)) style["case"] = "uppercase";
        if (chance(4)) style["wrap"] = "balance";
        if (chance(3)) style["overflowWrap"] = pick({"normal", "break-word", "anywhere"});
        if (chance(2))
            style["padding"] = {{"left", length(12, {"px", "em", "%", "rem"})},
                                {"right", length(12, {"px", "em", "vw"})}};
        if (chance(3)) style["margin"] = {{"left", length(9, {"px", "em", "%"})}};
        if (chance(4)) style["border"] = {{"width", pick({"1px", "2px", "0.12em", "0.6px"})}};
        return style;
    }
    Json style() {
        Json button = text(15);
        button["place"] = pick({"start", "stretch", "center"});
        return {{"row",
                 {{"width", pick({"100%", "90%", "94vw"})},
                  {"maxWidth", pick({"none", "1300px"})},
                  {"columnGap", length(30, {"px", "rem", "%", "vw"})}}},
                {"card",
                 {{"padding",
                   {{"left", length(26, {"px", "rem", "%"})}, {"right", length(26, {"px", "rem", "%"})}}}}},
                {"text", {{"heading", text(22)}, {"body", text(16)}, {"button", button}}}};
    }

    std::string words(int least, int most) {
        static const std::vector<std::string> stock{
            "tide", "a",      "the",   "mudflat",   "lantern",    "walk",  "under-12s",   "at",
            "ebb;", "curlew", "shore", "of",        "well-being", "and",   "(bring",      "boots)",
            "früh", "Priel",  "24/7",  "seal-bank", "low",        "water", "observatory", "by"};
        std::string all;
        for (int n = whole(least, most); n > 0; --n)
            all += (all.empty() ? "" : " ") + pick(stock);
        return all;
    }
    Json cards() {
        Json list = Json::array();
        for (int n = whole(1, 5); n > 0; --n) {
            Json parts = Json::array(
                {{{"role", "heading"}, {"copy", words(1, 7)}}, {{"role", "body"}, {"copy", words(4, 45)}}});
            if (!chance(4)) parts.push_back({{"role", "button"}, {"copy", words(1, 3)}, {"link", "#"}});
            list.push_back({{"parts", parts}});
        }
        return list;
    }
    Json variants() {
        Json bands = Json::array();
        int columns = whole(1, 2);
        double upTo = 320;
        for (int n = whole(0, 2); n > 0; --n) {
            upTo += real(150, 600);
            bands.push_back({{"upTo", upTo}, {"set", {{"row", {{"columns", columns}}}}}});
            columns += whole(0, 2);
        }
        bands.push_back({{"set", {{"row", {{"columns", columns}}}}}});
        return Json::array({{{"class", "made"}, {"bands", bands}}});
    }
    Json wishes() {
        Json heading = {{"role", "heading"}, {"lines", whole(1, 4)}};
        if (chance(3)) heading["growth"] = real(0.2, 2);
        if (chance(4)) {
            heading["ratioTo"] = "body";
            heading["leastRatio"] = real(1.05, 1.3);
        }
        Json body = {{"role", "body"}, {"leastMeasure", whole(12, 30)}, {"mostMeasure", whole(55, 90)}};
        if (chance(3)) body["leastSize"] = whole(12, 16);
        if (chance(4)) body["breakpoints"] = pick({"same", "proportional"});
        Json button = {{"role", "button"}, {"lines", whole(1, 2)}, {"zoom", whole(3, 5)}};
        Json all = {{"roles", Json::array({heading, body, button})},
                    {"aim", pick({"nearest", "largest", "calmest"})}};
        if (chance(2)) all["reserve"] = real(0.05, 0.35);
        if (chance(3)) all["grid"] = pick({"0.5px", "0.0625rem", "0.25px"});
        if (chance(3)) all["slack"] = all["narrowSlack"] = 0;
        return all;
    }

    std::mt19937 random_;
    std::mt19937 pages_;  // of its own, so that page ranges change no other setting
};

}  // namespace tenter::test
