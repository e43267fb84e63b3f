#include "project/settings_json.h"

#include "project/json_text.h"
#include "project/rules.h"

namespace tenter::project {

bool readValue(Reading& reading, const Json& json, RoleStyles& out) {
    if (!json.is_object())
        return reading.wrong(kindOf(json) + " where text styles are wanted", "write them by role in { }");
    if (json.size() > mostRoles) return reading.wrong("more than 100 roles", "share styles between roles");
    out = {};
    for (const auto& [role, value] : json.get_ref<const Json::object_t&>()) {
        out.remembered.keys.emplace_back(role, isForeign(role) ? compactJson(value) : std::string());
        if (isForeign(role)) continue;
        const Reading::Step step = reading.at(role);
        if (!isRoleName(role)) {
            reading.wrong(
                inQuotes(role) + " is no name for a role",
                "use small letters, digits and hyphens, a letter first; card and picture are taken");
            continue;
        }
        readValue(reading, value, out.roles.emplace_back(role, TextStyle{}).second);
    }
    return reading.isSound();
}

Json written(const RoleStyles& value) {
    ObjectWriter object(value.remembered);
    for (const auto& [role, style] : value.roles)
        object.put(role, written(style), true);
    return object.take();
}

}  // namespace tenter::project
