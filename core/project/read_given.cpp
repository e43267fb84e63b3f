#include "project/json_text.h"
#include "project/project_json.h"
#include "project/rules.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostSelectors = mostRoles + 3;  // row, card and picture besides

bool readSelectors(ReadContext& context, const Json& json, Given& out) {
    if (!json.is_object())
        return context.mustBe("an object with one selector for each role, written in { }", shown(json));
    if (json.size() > mostSelectors)
        return context.wrong("There are more than 100 roles.", "Use the same role for similar parts.");
    out.selectors.clear();
    out.selectorsFileKeys = {};
    for (const auto& [role, value] : json.get_ref<const Json::object_t&>()) {
        out.selectorsFileKeys.keys.emplace_back(role,
                                                isExtensionKey(role) ? compactJson(value) : std::string());
        if (isExtensionKey(role)) continue;
        const ReadContext::Step step = context.at(role);
        if (role != "card" && role != "picture" && !isRoleName(role)) {
            context.wrong("The key " + inQuotes(role) + " is not the name of a role.",
                          "Use row, card, picture, or a role of text: a small letter, then small letters, "
                          "digits and hyphens.");
            continue;
        }
        std::string selector;
        if (!readValue(context, value, selector)) continue;
        if (role != "row" && selector.find_first_not_of(" \t\r\n\f") == std::string::npos)
            context.mustBe(R"(a CSS selector such as ".walk img")", "empty");
        out.selectors.emplace_back(role, std::move(selector));
    }
    for (const char* role : {"row", "card"})
        if (!json.contains(role))
            context.wrong("The selector for " + inQuotes(role) + " is missing.",
                          R"(Add it. For "row", "" stands for the element with the variant's class.)");
    return context.isSound();
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, Given& out) {
    ObjectReader object(context, json, out.fileKeys, {"markup", "selectors", "theme", "levelBefore"});
    object.require("markup", out.markup, "Add the HTML of the row.");
    if (const Json* selectors = object.find("selectors")) {
        const ReadContext::Step step = context.at("selectors");
        readSelectors(context, *selectors, out);
    } else if (object.isObject()) {
        object.missing("selectors", R"(Add "selectors": {"row": "…", "card": "…"} and one for each role.)");
    }
    object.read("theme", out.theme);
    if (int level = 0; object.read("levelBefore", level)) out.levelBefore = level;
    return context.isSound();
}

}  // namespace tenter::project
