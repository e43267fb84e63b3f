#include "project/project_json.h"

namespace tenter::project {

bool readValue(Reading& reading, const Json& json, Scrollbar& out) {
    ObjectReader object(reading, json, out.remembered, {"width", "always"});
    object.read("width", out.width);
    object.read("always", out.always);
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Container& out) {
    ObjectReader object(reading, json, out.remembered, {"width", "maxWidth", "padding", "background"});
    object.read("width", out.width);
    object.read("maxWidth", out.maxWidth);
    object.read("padding", out.padding);
    object.read("background", out.background);
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Page& out) {
    ObjectReader object(reading, json, out.remembered, {"scrollbar", "rootSize", "readerSize", "container"});
    object.read("scrollbar", out.scrollbar);
    object.read("rootSize", out.rootSize);
    object.read("readerSize", out.readerSize);
    object.read("container", out.container);
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, FontEntry& out) {
    ObjectReader object(reading, json, out.remembered, {"family", "file", "weight", "slant"});
    if (object.require("family", out.family, "add the family's name") && out.family.empty()) {
        const Reading::Step step = reading.at("family");
        reading.wrong("the family's name is empty", "write the family's name");
    }
    if (const Json* file = object.find("file")) {
        const Reading::Step step = reading.at("file");
        readFileName(reading, *file, "font", true, out.file);
    } else if (object.isObject()) {
        object.missing("file", "add the font's file name");
    }
    if (const Json* weight = object.find("weight")) {
        const Reading::Step step = reading.at("weight");
        if (weight->is_array()) {
            readPair(reading, *weight, out.leastWeight, out.mostWeight, "write [least, most]");
        } else if (readValue(reading, *weight, out.leastWeight)) {
            out.mostWeight = out.leastWeight;
        }
        if (out.leastWeight > out.mostWeight) {
            reading.wrong("the least weight is above the most", "write [least, most]");
        }
    }
    object.read("slant", out.slant);
    return reading.isSound();
}

bool readFileName(Reading& reading, const Json& json, const char* kind, bool mustBeThere, std::string& out) {
    if (!readValue(reading, json, out)) return false;
    const std::string thing = std::string("the ") + kind;
    if (out.empty() || out.find('\0') != std::string::npos) {
        return reading.wrong(thing + "'s file name is empty or broken", "write the file's name");
    }
    const std::filesystem::path file(out);
    if (file.is_absolute()) {
        return reading.wrong(thing + "'s file name " + inQuotes(out) + " is absolute",
                             "write it relative to the project file's folder");
    }
    std::error_code error;
    if (mustBeThere && !reading.folder().empty() &&
        !std::filesystem::is_regular_file(reading.folder() / file, error)) {
        return reading.wrong(thing + " " + inQuotes(out) + " is not there",
                             "put it beside the project file, or mend its name");
    }
    return true;
}

}  // namespace tenter::project
