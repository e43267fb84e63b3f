// Random project files, each value in the one form it is written in.
#pragma once

#include <algorithm>
#include <random>

#include "project/rules.h"
#include "project/settings_json.h"
#include "project/words.h"
#include "units/number.h"

namespace tenter::project {

/// Makes projects as JSON: keys in any order, `x-` keys among them, any setting set or not. `Source`: a
/// generator of random numbers, or a reference to one.
template <class Source>
class RandomProjectFrom {
public:
    explicit RandomProjectFrom(Source source) : random_(std::forward<Source>(source)) {}

    Json next() {
        // Half of them may level cards and set pictures beside the text, the others may use what does not go
        // with that (see conflicts.h).
        strict_ = chance();
        Json json = {{"format", "tenter-project"},
                     {"version", 1},
                     {"name", words()},
                     {"cards", cards()},
                     {"variants", variants()}};
        if (chance()) json["language"] = chance() ? "en" : "pt-BR";
        if (chance()) json["direction"] = chance() ? "ltr" : "rtl";
        if (chance()) json["headingLevel"] = whole(1, 6);
        if (chance()) json["unit"] = chance() ? "rem" : "px";
        if (chance()) json["row"] = "walks";
        if (chance()) json["range"] = {{"from", whole(200, 900)}, {"to", whole(901, 5000)}};
        if (chance()) json["page"] = page();
        if (chance()) json["style"] = settings("/style");
        if (chance()) json["wishes"] = wishes();
        if (chance())
            json["checks"] = {{"limits", {{"tightRun", 12.5}, {"shortWord", 4}}},
                              {"silenced", {{{"check", "holes"}, {"reason", "two more come in May"}}}}};
        if (chance()) json["given"] = given();
        return shuffled(std::move(json));
    }

private:
    int whole(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
    bool chance() { return whole(0, 1) == 1; }
    double real(double least, double most) {
        return std::uniform_real_distribution<double>(least, most)(random_);
    }

    Json given() {
        Json selectors = {{"row", chance() ? "" : ".rows"}, {"card", ".walk"}};
        if (chance()) selectors["picture"] = ".walk img";
        if (chance()) selectors["kicker"] = ".walk > p:first-child";
        Json json = {{"markup", "<p>" + words()}, {"selectors", shuffled(std::move(selectors))}};
        if (chance()) json["theme"] = words();
        if (chance()) json["levelBefore"] = whole(1, 6);
        return shuffled(std::move(json));
    }

    Json wishes() {
        Json heading = {{"role", "heading"}, {"lines", whole(1, 50)}};
        if (chance()) heading["leastSize"] = whole(1, 30);
        if (chance()) heading["withColumn"] = chance();
        Json body = {{"role", "body"}, {"leastMeasure", whole(1, 40)}, {"mostMeasure", whole(41, 90)}};
        if (chance()) body["from"] = whole(0, 900);
        Json list = Json::array({shuffled(std::move(heading)), shuffled(std::move(body))});
        Json json = {{"roles", std::move(list)}};
        if (chance()) json["aim"] = chance() ? "largest" : "nearest";
        if (chance()) json["grid"] = chance() ? "0.5px" : "0.0625rem";
        if (chance()) json["without"] = Json::array({whole(0, 9)});
        return shuffled(std::move(json));
    }

    std::string words() {
        static const std::vector<std::string> stock{"tide", "saltmarsh", "früh", "潮", "\"bell\"",
                                                    "<b>&", "a\\b",      "مد",   "\n"};
        std::string text = "walk";
        for (int n = whole(0, 5); n > 0; --n)
            text += " " + stock[static_cast<std::size_t>(whole(0, 8))];
        return text;
    }

    Json shuffled(Json&& object) {
        if (chance())
            object["x-" + std::to_string(whole(0, 99))] = Json::array({nullptr, words(), real(-1, 1)});
        std::vector<std::pair<std::string, Json>> members;
        for (auto& [key, value] : object.items())
            members.emplace_back(key, value);
        if (chance()) std::shuffle(members.begin(), members.end(), random_);
        Json result = Json::object();
        for (auto& [key, value] : members)
            result[key] = value;
        return result;
    }

    Json value(const std::string& place, const int* /*type*/) {
        const NumberRule& rule = numberRule(place);
        return whole(static_cast<int>(rule.least), static_cast<int>(rule.most));
    }
    Json value(const std::string& place, const double* /*type*/) {
        const NumberRule& rule = numberRule(place);
        return written(chance() ? std::round(real(rule.least, rule.most)) : real(rule.least, rule.most));
    }
    Json value(const std::string& /*place*/, const bool* /*type*/) { return chance(); }
    Json value(const std::string& /*place*/, const std::vector<std::string>* /*type*/) {
        return chance() ? Json::array({"Vollkorn", "serif"}) : Json::array({"Karla"});
    }
    Json value(const std::string& place, const Length* /*type*/) {
        const LengthRule& rule = lengthRule(place);
        std::vector<std::string> units = rule.words();
        const bool height = endsWith(place, "card/padding/top") || endsWith(place, "card/padding/bottom");
        if (strict_)
            std::erase_if(units, [&](const std::string& u) { return u == "cqi" || (u == "%" && height); });
        const std::string unit =
            units[static_cast<std::size_t>(whole(0, static_cast<int>(units.size()) - 1))];
        if (unit == "auto" || unit == "none") return unit;
        const std::string number = units::number(real(rule.least, rule.most), whole(0, 4));
        return number == "0" ? number : number + unit;
    }
    Json value(const std::string& place, const LineHeight* /*type*/) {
        if (chance()) return written(units::rounded(real(0, 100)));
        const Json length = value(place, static_cast<const Length*>(nullptr));
        return length == "0" ? Json("0px") : length;
    }
    Json value(const std::string& /*place*/, const Colour* /*type*/) {
        const auto channel = [&] { return static_cast<std::uint8_t>(whole(0, 255)); };
        return Colour{channel(), channel(), channel(), channel()}.css();
    }
    Json value(const std::string& /*place*/, const Ramp* /*type*/) {
        if (chance()) return written(real(1, 400));
        const Json from = Json::array({written(real(0, 4000)), written(real(1, 400))});
        return Json::array({from, Json::array({written(real(4001, 10000)), whole(1, 400)})});
    }
    Json value(const std::string& /*place*/, const Ratio* /*type*/) {
        return chance() ? "own" : std::to_string(whole(1, 30)) + "/" + units::number(real(1, 20), 2);
    }
    template <class E>
    requires std::is_enum_v<E> Json value(const std::string& /*place*/, const E* /*type*/) {
        const auto& table = Words<E>::table;
        constexpr bool levelsOrSetsBeside = std::is_same_v<E, Level> || std::is_same_v<E, Direction>;
        constexpr bool isFreer = std::is_same_v<E, Follow> || std::is_same_v<E, LastLine>;
        if (strict_ ? isFreer : levelsOrSetsBeside) return std::string(table.front().first);
        return std::string(
            table[static_cast<std::size_t>(whole(0, static_cast<int>(table.size()) - 1))].first);
    }

    template <class T>
    Json member(const std::string& place, const std::optional<T>* /*type*/) {
        return whole(0, 2) == 0 ? value(place, static_cast<const T*>(nullptr)) : Json();
    }
    Json member(const std::string& place, const RoleStyles* /*type*/) {
        Json roles = Json::object();
        for (const char* role : {"heading", "button", "kicker"}) {
            if (chance()) roles[role] = member(place + "/" + role, static_cast<const TextStyle*>(nullptr));
        }
        return shuffled(std::move(roles));
    }
    template <HasMembers T>
    Json member(const std::string& place, const T* /*type*/) {
        Json object = Json::object();
        T::members([&](const char* key, auto pointer) {
            using Member = std::remove_reference_t<decltype(std::declval<T&>().*pointer)>;
            Json json = member(place + "/" + key, static_cast<const Member*>(nullptr));
            if (!json.is_null()) object[key] = json;
        });
        return shuffled(std::move(object));
    }
    Json settings(const std::string& place) { return member(place, static_cast<const Settings*>(nullptr)); }

    Json page() {
        Json scrollbar = {{"width", whole(0, 40)}, {"always", chance()}};
        Json container = {{"width", value("page/container/width", static_cast<const Length*>(nullptr))},
                          {"background", "#eef"}};
        if (chance())
            container["padding"] = member("page/container/padding", static_cast<const Sides*>(nullptr));
        Json json = {{"scrollbar", shuffled(std::move(scrollbar))},
                     {"container", shuffled(std::move(container))}};
        if (chance()) json["rootSize"] = rootSize();
        if (chance()) json["ranges"] = pageRanges();
        return shuffled(std::move(json));
    }
    Json rootSize() {
        const auto px = [&](double least, double most) {
            return units::number(real(least, most), whole(0, 4)) + "px";
        };
        const std::string sum =
            px(0.001, 90) + (chance() ? " + " : " - ") + units::number(real(0.001, 2)) + "vw";
        switch (whole(0, 6)) {
            case 0:
                return units::number(real(7, 600), whole(0, 4)) + "%";
            case 1:
                return px(1, 100);
            case 2:
                return "calc(" + sum + ")";
            case 3:
                return "min(" + sum + ", " + px(1, 100) + ")";
            case 4:
                return "max(" + px(1, 100) + ", " + sum + ")";
            case 5:
                return "clamp(" + px(1, 20) + ", " + sum + ", " + px(20, 100) + ")";
            default:
                return written(real(1, 100));
        }
    }
    Json pageRanges() {
        Json list = Json::array();
        double upTo = 1;
        const int count = whole(1, 4);
        for (int i = 0; i < count; ++i) {
            upTo += real(1, 1500);
            Json range = Json::object();
            if (i + 1 < count || chance()) range["upTo"] = written(upTo);
            if (chance()) range["rootSize"] = rootSize();
            Json container = Json::object();
            if (chance())
                container["width"] = value("page/container/width", static_cast<const Length*>(nullptr));
            if (chance())
                container["maxWidth"] = value("page/container/maxWidth", static_cast<const Length*>(nullptr));
            if (chance())
                container["padding"] = member("page/container/padding", static_cast<const Sides*>(nullptr));
            if (chance()) container["background"] = "#fee";
            if (chance()) range["container"] = shuffled(std::move(container));
            list.push_back(shuffled(std::move(range)));
        }
        return list;
    }

    Json copy() {
        if (chance()) return words();
        return Json::array(
            {words(), {{"strong", words()}}, {{"break", true}}, {{"link", words()}, {"to", "#x"}}});
    }
    Json cards() {
        Json list = Json::array();
        for (int n = whole(0, 3); n > 0; --n) {
            Json parts = Json::array();
            if (chance()) {
                Json picture = {{"picture", "shore.png"},
                                {"size", {whole(1, 4000), whole(1, 4000)}},
                                {"focus", {real(0, 1), 1}}};
                if (chance()) picture["ratio"] = value("", static_cast<const Ratio*>(nullptr));
                parts.push_back(shuffled(std::move(picture)));
            }
            parts.push_back(shuffled({{"role", chance() ? "heading" : "price"}, {"copy", copy()}}));
            if (chance())
                parts.push_back(
                    shuffled({{"role", "button"}, {"copy", "Book"}, {"link", "#b"}, {"name", words()}}));
            list.push_back(shuffled({{"parts", std::move(parts)}}));
        }
        return list;
    }
    Json variants() {
        Json list = Json::array();
        for (int n = whole(1, 3); n > 0; --n) {
            Json bands = Json::array();
            double upTo = 1;
            for (int b = whole(0, 3); b > 0; --b) {
                upTo += real(1, 1500);
                bands.push_back(shuffled({{"upTo", written(upTo)}, {"set", settings("/set")}}));
            }
            bands.push_back(shuffled(Json::object()));
            Json variant = {{"class", "walks-" + std::to_string(n)}, {"bands", std::move(bands)}};
            if (chance()) variant["set"] = settings("/set");
            list.push_back(shuffled(std::move(variant)));
        }
        return list;
    }

    Source random_;
    bool strict_ = false;
};

/// The projects of a seed.
class RandomProject : public RandomProjectFrom<std::mt19937> {
public:
    explicit RandomProject(unsigned seed) : RandomProjectFrom(std::mt19937(seed)) {}
};

}  // namespace tenter::project
