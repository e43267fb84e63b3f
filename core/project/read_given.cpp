#include "project/json_text.h"
#include "project/project_json.h"
#include "project/rules.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostSelectors = mostRoles + 3;  // row, card and picture besides

bool readSelectors(Reading& reading, const Json& json, Given& out) {
    if (!json.is_object())
        return reading.wrong(kindOf(json) + " where selectors are wanted", "write them by role in { }");
    if (json.size() > mostSelectors)
        return reading.wrong("more than 100 roles", "use the same role for like parts");
    out.selectors.clear();
    out.selectorsRemembered = {};
    for (const auto& [role, value] : json.get_ref<const Json::object_t&>()) {
        out.selectorsRemembered.keys.emplace_back(role, isForeign(role) ? compactJson(value) : std::string());
        if (isForeign(role)) continue;
        const Reading::Step step = reading.at(role);
        if (role != "card" && role != "picture" && !isRoleName(role)) {
            reading.wrong(inQuotes(role) + " is no name for a role",
                          "write row, card, picture, or a role of text in small letters, digits and hyphens");
            continue;
        }
        std::string selector;
        if (!readValue(reading, value, selector)) continue;
        if (role != "row" && selector.find_first_not_of(" \t\r\n\f") == std::string::npos)
            reading.wrong("the selector is empty", R"(write a CSS selector such as ".walk img")");
        out.selectors.emplace_back(role, std::move(selector));
    }
    for (const char* role : {"row", "card"})
        if (!json.contains(role))
            reading.wrong("the selector for " + inQuotes(role) + " is missing",
                          R"(add it; for "row", "" is the element with the variant's class itself)");
    return reading.isSound();
}

}  // namespace

bool readValue(Reading& reading, const Json& json, Given& out) {
    ObjectReader object(reading, json, out.remembered, {"markup", "selectors", "theme", "levelBefore"});
    object.require("markup", out.markup, "add the row's HTML");
    if (const Json* selectors = object.find("selectors")) {
        const Reading::Step step = reading.at("selectors");
        readSelectors(reading, *selectors, out);
    } else if (object.isObject()) {
        object.missing("selectors", R"(add "selectors": {"row": "…", "card": "…"} and one for each role)");
    }
    object.read("theme", out.theme);
    if (int level = 0; object.read("levelBefore", level)) out.levelBefore = level;
    return reading.isSound();
}

}  // namespace tenter::project
