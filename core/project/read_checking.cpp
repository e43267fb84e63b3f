#include <algorithm>

#include "project/project_json.h"

namespace tenter::project {

bool readValue(Reading& reading, const Json& json, Limits& out) {
    ObjectReader object(reading, json, out.remembered, keysOf<Limits>());
    Limits::members([&](const char* key, auto member) { object.read(key, out.*member); });
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Silence& out) {
    ObjectReader object(reading, json, out.remembered, {"check", "reason"});
    if (object.require("check", out.check, R"(name one, such as "check": "holes")") &&
        std::ranges::find(checkNames, out.check) == checkNames.end()) {
        const Reading::Step step = reading.at("check");
        return reading.wrong("there is no check " + inQuotes(out.check),
                             "take the name that its findings carry");
    }
    if (object.require("reason", out.reason, R"(say why: "reason": "…")") && out.reason.empty()) {
        const Reading::Step step = reading.at("reason");
        return reading.wrong("a check is silenced without a reason", "say why, for whoever comes back to it");
    }
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Checking& out) {
    ObjectReader object(reading, json, out.remembered, {"silenced", "limits"});
    if (const Json* silenced = object.find("silenced")) {
        const Reading::Step step = reading.at("silenced");
        readList(reading, *silenced, checkNames.size(), out.silenced);
    }
    object.read("limits", out.limits);
    return reading.isSound();
}

}  // namespace tenter::project
