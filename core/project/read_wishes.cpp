#include "project/project_json.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostWishes = 1000;

bool checkRange(ReadContext& context, const char* key, const std::optional<double>& least,
                const std::optional<double>& most, const char* what, const char* fix) {
    if (!least || !most || *least <= *most) return true;
    const ReadContext::Step step = context.at(key);
    return context.wrong(what, fix);
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, RoleWishes& out) {
    ObjectReader object(context, json, out.fileKeys, keysOf<RoleWishes>());
    RoleWishes::members([&](const char* key, auto member) { object.read(key, out.*member); });
    if (!context.isSound()) return false;
    if (!isRoleName(out.role)) {
        const ReadContext::Step step = context.at("role");
        return context.mustBe(roleNameRule, inQuotes(out.role),
                              R"(Write the role that these wishes are for, such as "heading".)");
    }
    checkRange(context, "upTo", out.from, out.upTo, "The range of widths ends before it starts.",
               R"(Make "from" smaller than "upTo".)");
    checkRange(context, "leastMeasure", out.leastMeasure, out.mostMeasure,
               "The smallest measure is above the largest.", "Swap the two values.");
    checkRange(context, "leastSize", out.leastSize, out.mostSize, "The smallest size is above the largest.",
               "Swap the two values.");
    if ((out.ratio || out.leastRatio) && (!out.ratioTo || *out.ratioTo == out.role)) {
        const ReadContext::Step step = context.at(out.ratio ? "ratio" : "leastRatio");
        return context.wrong("The ratio refers to no other role.",
                             R"(Add that role, such as "ratioTo": "body".)");
    }
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Wishes& out) {
    ObjectReader object(context, json, out.fileKeys,
                        {"aim", "grid", "reserve", "slack", "narrowSlack", "without", "roles"});
    object.read("aim", out.aim);
    object.read("grid", out.grid);
    object.read("reserve", out.reserve);
    object.read("slack", out.slack);
    object.read("narrowSlack", out.narrowSlack);
    if (const Json* without = object.find("without")) {
        const ReadContext::Step step = context.at("without");
        readList(context, *without, mostWishes, out.without);
    }
    if (const Json* roles = object.find("roles")) {
        const ReadContext::Step step = context.at("roles");
        readList(context, *roles, mostWishes, out.roles);
    }
    return context.isSound();
}

}  // namespace tenter::project
