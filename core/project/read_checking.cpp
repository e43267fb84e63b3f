#include <algorithm>

#include "project/project_json.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, Limits& out) {
    ObjectReader object(context, json, out.fileKeys, keysOf<Limits>());
    Limits::members([&](const char* key, auto member) { object.read(key, out.*member); });
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Silence& out) {
    ObjectReader object(context, json, out.fileKeys, {"check", "reason"});
    if (object.require("check", out.check, R"(Add the name of a check, such as "check": "holes".)") &&
        std::ranges::find(checkNames, out.check) == checkNames.end()) {
        const ReadContext::Step step = context.at("check");
        return context.mustBe("the name of a check, as its findings give it", inQuotes(out.check));
    }
    if (object.require("reason", out.reason, R"(Add why the check is silenced: "reason": "…".)") &&
        out.reason.empty()) {
        const ReadContext::Step step = context.at("reason");
        return context.wrong("The check is silenced without a reason.",
                             "Write why, for the next maintainer.");
    }
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Checking& out) {
    ObjectReader object(context, json, out.fileKeys, {"silenced", "limits"});
    if (const Json* silenced = object.find("silenced")) {
        const ReadContext::Step step = context.at("silenced");
        readList(context, *silenced, checkNames.size(), out.silenced);
    }
    object.read("limits", out.limits);
    return context.isSound();
}

}  // namespace tenter::project
