#include "project/project_json.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostParts = 50;

// A run that is an object: the key that says which kind it is, and its text.
bool readRun(Reading& reading, const Json& json, Run& run) {
    Remembered keys;
    ObjectReader object(reading, json, keys, {"strong", "emphasis", "link", "to", "break"});
    // A key that is not known has been told already.
    if (!object.isObject() || keys.keys.size() != json.size()) return false;
    const std::size_t wanted = object.find("link") == nullptr ? 1 : 2;
    if (json.size() != wanted) {
        return reading.wrong(
            "a run of copy is of one kind",
            R"(write one of {"strong": …}, {"emphasis": …}, {"link": …, "to": …}, {"break": true})");
    }
    if (object.find("strong") != nullptr) {
        run.kind = Run::Kind::Strong;
        return object.read("strong", run.text);
    }
    if (object.find("emphasis") != nullptr) {
        run.kind = Run::Kind::Emphasis;
        return object.read("emphasis", run.text);
    }
    if (object.find("link") != nullptr) {
        run.kind = Run::Kind::Link;
        return object.read("link", run.text) && object.require("to", run.to, "add where the link leads");
    }
    // A key that is not known has been told already.
    if (object.find("break") == nullptr && object.find("to") == nullptr) return false;
    run.kind = Run::Kind::Break;
    bool isBreak = false;
    if (object.read("break", isBreak) && isBreak) return true;
    return reading.wrong("this is no run of copy", R"(write {"break": true} for a line break)");
}

bool readText(Reading& reading, const Json& json, TextPart& out) {
    ObjectReader object(reading, json, out.remembered, {"role", "copy", "link", "name"});
    if (object.read("role", out.role) && !isRoleName(out.role)) {
        const Reading::Step step = reading.at("role");
        reading.wrong(inQuotes(out.role) + " is no name for a role",
                      "use small letters, digits and hyphens, a letter first; card and picture are taken");
    }
    object.read("copy", out.copy);
    object.read("link", out.link);
    object.read("name", out.name);
    return reading.isSound();
}

bool readPicture(Reading& reading, const Json& json, PicturePart& out) {
    ObjectReader object(reading, json, out.remembered, {"picture", "size", "ratio", "focus", "alt"});
    if (const Json* file = object.find("picture")) {
        const Reading::Step step = reading.at("picture");
        readFileName(reading, *file, "picture", !reading.picturesMayBeElsewhere(), out.file);
    }
    if (const Json* size = object.find("size")) {
        const Reading::Step step = reading.at("size");
        readPair(reading, *size, out.width, out.height, "write [width, height] in pixels");
    }
    Ratio ratio;
    if (object.read("ratio", ratio)) out.ratio = ratio;
    if (const Json* focus = object.find("focus")) {
        const Reading::Step step = reading.at("focus");
        readPair(reading, *focus, out.focusX, out.focusY, "write [across, down], each from 0 to 1");
    }
    object.read("alt", out.alt);
    return reading.isSound();
}

}  // namespace

bool readValue(Reading& reading, const Json& json, Copy& out) {
    out.clear();
    if (json.is_string()) {
        if (!json.get_ref<const std::string&>().empty())
            out.push_back({Run::Kind::Plain, json.get<std::string>(), {}});
        return true;
    }
    if (!json.is_array()) {
        return reading.wrong(kindOf(json) + " where copy is wanted",
                             "write text in quotes, or a list of runs");
    }
    for (std::size_t i = 0; i < json.size(); ++i) {
        const Reading::Step step = reading.at(i);
        Run run;
        if (json[i].is_string()) {
            run.text = json[i].get<std::string>();
        } else {
            readRun(reading, json[i], run);
        }
        out.push_back(std::move(run));
    }
    return reading.isSound();
}

bool readValue(Reading& reading, const Json& json, Part& out) {
    const bool isPicture = json.is_object() && json.contains("picture");
    const bool isText = json.is_object() && json.contains("role");
    if (isPicture == isText) {
        return reading.wrong("a part is a picture or text",
                             isPicture ? R"(write "picture" or "role", not both)"
                                       : R"(add "picture" with a file name, or "role" such as "heading")");
    }
    if (isPicture) return readPicture(reading, json, out.emplace<PicturePart>());
    return readText(reading, json, out.emplace<TextPart>());
}

bool readValue(Reading& reading, const Json& json, Card& out) {
    ObjectReader object(reading, json, out.remembered, {"parts"});
    if (const Json* parts = object.find("parts")) {
        const Reading::Step step = reading.at("parts");
        readList(reading, *parts, mostParts, out.parts);
    }
    return reading.isSound();
}

}  // namespace tenter::project
