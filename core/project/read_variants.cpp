#include "project/project_json.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, Band& out) {
    ObjectReader object(context, json, out.fileKeys, {"upTo", "set"});
    object.read("upTo", out.upTo);
    object.read("set", out.set);
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Variant& out) {
    ObjectReader object(context, json, out.fileKeys, {"class", "name", "set", "bands"});
    object.require("class", out.className, "Add the class name of the variant.");
    object.read("name", out.name);
    object.read("set", out.set);
    if (const Json* bands = object.find("bands")) {
        const ReadContext::Step step = context.at("bands");
        readList(context, *bands, mostBands, out.bands);
    } else if (object.isObject()) {
        object.missing("bands", R"(Add "bands": [{}] for one band.)");
    }
    return context.isSound();
}

}  // namespace tenter::project
