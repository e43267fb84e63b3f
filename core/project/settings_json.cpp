#include "project/settings_json.h"

#include "project/json_text.h"
#include "project/rules.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, RoleStyles& out) {
    if (!json.is_object())
        return context.mustBe("an object with one style for each role, written in { }", shown(json));
    if (!checkRoleCount(context, json.size(), mostRoles)) return false;
    out = {};
    for (const auto& [role, value] : json.get_ref<const Json::object_t&>()) {
        out.fileKeys.keys.emplace_back(role, isExtensionKey(role) ? compactJson(value) : std::string());
        if (isExtensionKey(role)) continue;
        const ReadContext::Step step = context.at(role);
        readValue(context, value, out.roles.emplace_back(role, TextStyle{}).second);
    }
    return context.isSound();
}

Json written(const RoleStyles& value) {
    ObjectWriter object(value.fileKeys);
    for (const auto& [role, style] : value.roles)
        object.put(role, written(style), true);
    return object.take();
}

}  // namespace tenter::project
