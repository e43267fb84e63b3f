#include "project/project_json.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostBands = 50;

void checkBands(ReadContext& context, const std::vector<Band>& bands) {
    if (bands.empty())
        context.wrong("The variant has no band; it needs at least one.", R"(Write "bands": [{}].)");
    double last = 0;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        const bool isLast = i + 1 == bands.size();
        if (isLast && bands[i].upTo) {
            context.wrong("The last band ends at a width, so wider pages have no band.",
                          R"(Remove its "upTo", or add a band after it.)");
        } else if (!isLast && !bands[i].upTo) {
            context.wrong("The band has no end; only the last band may have none.",
                          R"(Add "upTo" with a width in px.)");
        } else if (!isLast && *bands[i].upTo <= last) {
            context.wrong("The band ends at or below the end of the band before it.",
                          "Put the bands in order of rising widths.");
        }
        last = bands[i].upTo.value_or(last);
    }
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, Band& out) {
    ObjectReader object(context, json, out.fileKeys, {"upTo", "set"});
    object.read("upTo", out.upTo);
    object.read("set", out.set);
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Variant& out) {
    ObjectReader object(context, json, out.fileKeys, {"class", "name", "set", "bands"});
    if (object.require("class", out.className, "Add the class name of the variant.") &&
        !isClassName(out.className)) {
        const ReadContext::Step step = context.at("class");
        context.mustBe(classNameRule, inQuotes(out.className),
                       out.className.starts_with('.') ? "Leave out the leading dot." : "");
    }
    object.read("name", out.name);
    object.read("set", out.set);
    if (const Json* bands = object.find("bands")) {
        const ReadContext::Step step = context.at("bands");
        if (readList(context, *bands, mostBands, out.bands)) checkBands(context, out.bands);
    } else if (object.isObject()) {
        object.missing("bands", R"(Add "bands": [{}] for one band.)");
    }
    return context.isSound();
}

}  // namespace tenter::project
