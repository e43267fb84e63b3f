#include "project/project_json.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, RoleWishes& out) {
    ObjectReader object(context, json, out.fileKeys, keysOf<RoleWishes>());
    RoleWishes::members([&](const char* key, auto member) { object.read(key, out.*member); });
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
