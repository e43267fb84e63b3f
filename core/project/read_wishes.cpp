#include "project/project_json.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostWishes = 1000;

bool checkRange(Reading& reading, const char* key, const std::optional<double>& least,
                const std::optional<double>& most, const char* what, const char* mend) {
    if (!least || !most || *least <= *most) return true;
    const Reading::Step step = reading.at(key);
    return reading.wrong(what, mend);
}

}  // namespace

bool readValue(Reading& reading, const Json& json, RoleWishes& out) {
    ObjectReader object(reading, json, out.remembered, keysOf<RoleWishes>());
    RoleWishes::members([&](const char* key, auto member) { object.read(key, out.*member); });
    if (!reading.isSound()) return false;
    if (!isRoleName(out.role)) {
        const Reading::Step step = reading.at("role");
        return reading.wrong(inQuotes(out.role) + " is no name for a role",
                             R"(say whose wishes these are, such as "role": "heading")");
    }
    checkRange(reading, "upTo", out.from, out.upTo, "these widths end before they start",
               R"(make "from" less than "upTo")");
    checkRange(reading, "leastMeasure", out.leastMeasure, out.mostMeasure,
               "the least measure is above the most", "exchange the two");
    checkRange(reading, "leastSize", out.leastSize, out.mostSize, "the least size is above the most",
               "exchange the two");
    if ((out.ratio || out.leastRatio) && (!out.ratioTo || *out.ratioTo == out.role)) {
        const Reading::Step step = reading.at(out.ratio ? "ratio" : "leastRatio");
        return reading.wrong("a ratio to no other role", R"(add that role, such as "ratioTo": "body")");
    }
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Wishes& out) {
    ObjectReader object(reading, json, out.remembered,
                        {"aim", "grid", "reserve", "slack", "narrowSlack", "without", "roles"});
    object.read("aim", out.aim);
    object.read("grid", out.grid);
    object.read("reserve", out.reserve);
    object.read("slack", out.slack);
    object.read("narrowSlack", out.narrowSlack);
    if (const Json* without = object.find("without")) {
        const Reading::Step step = reading.at("without");
        readList(reading, *without, mostWishes, out.without);
    }
    if (const Json* roles = object.find("roles")) {
        const Reading::Step step = reading.at("roles");
        readList(reading, *roles, mostWishes, out.roles);
    }
    return reading.isSound();
}

}  // namespace tenter::project
