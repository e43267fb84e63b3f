#include "project/project_json.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostBands = 50;

void checkBands(Reading& reading, const std::vector<Band>& bands) {
    if (bands.empty()) reading.wrong("a variant has at least one band", R"(write "bands": [{}])");
    double last = 0;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const Reading::Step step = reading.at(i);
        const bool isLast = i + 1 == bands.size();
        if (isLast && bands[i].upTo) {
            reading.wrong("the last band ends at a width, so wider pages have none",
                          R"(remove its "upTo", or add a band after it)");
        } else if (!isLast && !bands[i].upTo) {
            reading.wrong("a band before the last does not say where it ends",
                          R"(add "upTo" with a width in px)");
        } else if (!isLast && *bands[i].upTo <= last) {
            reading.wrong("this band does not end above the one before",
                          "put the bands in order of rising widths");
        }
        last = bands[i].upTo.value_or(last);
    }
}

}  // namespace

bool readValue(Reading& reading, const Json& json, Band& out) {
    ObjectReader object(reading, json, out.remembered, {"upTo", "set"});
    object.read("upTo", out.upTo);
    object.read("set", out.set);
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Variant& out) {
    ObjectReader object(reading, json, out.remembered, {"class", "name", "set", "bands"});
    if (object.require("class", out.className, "add the variant's class name") &&
        !isClassName(out.className)) {
        const Reading::Step step = reading.at("class");
        reading.wrong(
            inQuotes(out.className) + " is no class name",
            "use letters, digits, hyphens and underscores, a letter first, without the leading dot");
    }
    object.read("name", out.name);
    object.read("set", out.set);
    if (const Json* bands = object.find("bands")) {
        const Reading::Step step = reading.at("bands");
        if (readList(reading, *bands, mostBands, out.bands)) checkBands(reading, out.bands);
    } else if (object.isObject()) {
        object.missing("bands", R"(write "bands": [{}] for one band)");
    }
    return reading.isSound();
}

}  // namespace tenter::project
