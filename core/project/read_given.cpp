#include "project/json_text.h"
#include "project/project_json.h"
#include "project/rules.h"

namespace tenter::project {

namespace {

bool readSelectors(ReadContext& context, const Json& json, Given& out) {
    if (!json.is_object())
        return context.mustBe("an object with one selector for each role, written in { }", shown(json));
    if (!checkRoleCount(context, json.size(), mostSelectors)) return false;
    out.selectors.clear();
    out.selectorsFileKeys = {};
    for (const auto& [role, value] : json.get_ref<const Json::object_t&>()) {
        out.selectorsFileKeys.keys.emplace_back(role,
                                                isExtensionKey(role) ? compactJson(value) : std::string());
        if (isExtensionKey(role)) continue;
        const ReadContext::Step step = context.at(role);
        std::string selector;
        if (!readValue(context, value, selector)) continue;
        out.selectors.emplace_back(role, std::move(selector));
    }
    return context.isSound();
}

/// A text as it is, or a list: an English text with %1 to %9, and their values. `deep`: how many more lists
/// can be inside it.
bool readSentence(ReadContext& context, const Json& json, int deep, wording::Sentence& out) {
    constexpr const char* rule = R"(text, or a list of an English text and values for its %1 to %9)";
    if (json.is_string()) {
        out = json.get<std::string>();
        return true;
    }
    const bool isList = json.is_array() && !json.empty() && json[0].is_string() &&
                        json.size() <= mostSentenceValues + 1 && deep > 0;
    if (!isList) return context.mustBe(rule, shown(json));
    std::vector<wording::Sentence> values(json.size() - 1);
    for (std::size_t i = 0; i < values.size(); ++i) {
        const ReadContext::Step step = context.at(i + 1);
        if (!readSentence(context, json[i + 1], deep - 1, values[i])) return false;
    }
    out = wording::Sentence::of(json[0].get<std::string>(), std::move(values));
    return true;
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, wording::Sentence& out) {
    return readSentence(context, json, deepestSentence, out);
}

bool readValue(ReadContext& context, const Json& json, Given& out) {
    ObjectReader object(context, json, out.fileKeys,
                        {"markup", "selectors", "theme", "levelBefore", "unread"});
    object.require("markup", out.markup, "Add the HTML of the row.");
    if (const Json* selectors = object.find("selectors")) {
        const ReadContext::Step step = context.at("selectors");
        readSelectors(context, *selectors, out);
    } else if (object.isObject()) {
        object.missing("selectors", R"(Add "selectors": {"row": "…", "card": "…"} and one for each role.)");
    }
    object.read("theme", out.theme);
    if (int level = 0; object.read("levelBefore", level)) out.levelBefore = level;
    if (const Json* unread = object.find("unread")) {
        const ReadContext::Step step = context.at("unread");
        readList(context, *unread, mostUnread, out.unread);
    }
    return context.isSound();
}

}  // namespace tenter::project
