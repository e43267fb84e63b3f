#include <algorithm>

#include "project/project_json.h"

namespace tenter::project {

bool isWellFormedCheckName(std::string_view name) {
    const auto isLetter = [](char c) { return c >= 'a' && c <= 'z'; };
    const auto isFine = [&](char c) { return isLetter(c) || c == '-'; };
    return !name.empty() && isLetter(name.front()) && isLetter(name.back()) &&
           std::ranges::all_of(name, isFine) && name.find("--") == std::string_view::npos;
}

bool readValue(ReadContext& context, const Json& json, Limits& out) {
    ObjectReader object(context, json, out.fileKeys, keysOf<Limits>());
    Limits::members([&](const char* key, auto member) { object.read(key, out.*member); });
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Silence& out) {
    ObjectReader object(context, json, out.fileKeys, {"check", "reason"});
    object.require("check", out.check, R"(Add the name of a check, such as "check": "holes".)");
    object.require("reason", out.reason, R"(Add why the check is silenced: "reason": "…".)");
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Checking& out) {
    ObjectReader object(context, json, out.fileKeys, {"silenced", "limits"});
    if (const Json* silenced = object.find("silenced")) {
        const ReadContext::Step step = context.at("silenced");
        readList(context, *silenced, mostSilenced, out.silenced);
    }
    object.read("limits", out.limits);
    return context.isSound();
}

}  // namespace tenter::project
