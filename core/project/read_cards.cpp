#include "project/project_json.h"

namespace tenter::project {

namespace {

// A run that is an object: the key that names its kind, and its text.
bool readRun(ReadContext& context, const Json& json, Run& run) {
    FileKeys keys;
    ObjectReader object(context, json, keys, {"strong", "emphasis", "link", "to", "break"});
    // An unknown key is already a problem.
    if (!object.isObject() || keys.keys.size() != json.size()) return false;
    const std::size_t wanted = object.find("link") == nullptr ? 1 : 2;
    if (json.size() != wanted) {
        return context.wrong(
            R"(This piece of text has more than one of the keys "strong", "emphasis", "link" and "break".)",
            R"(Write one of {"strong": …}, {"emphasis": …}, {"link": …, "to": …} or {"break": true}.)");
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
        return object.read("link", run.text) &&
               object.require("to", run.to, "Add the address that the link leads to.");
    }
    // An unknown key is already a problem.
    if (object.find("break") == nullptr && object.find("to") == nullptr) return false;
    run.kind = Run::Kind::Break;
    bool isBreak = false;
    if (object.read("break", isBreak) && isBreak) return true;
    return context.wrong("This is not a piece of text.", R"(Write {"break": true} for a line break.)");
}

bool readText(ReadContext& context, const Json& json, TextPart& out) {
    ObjectReader object(context, json, out.fileKeys, {"role", "copy", "link", "name"});
    object.read("role", out.role);
    object.read("copy", out.copy);
    object.read("link", out.link);
    object.read("name", out.name);
    return context.isSound();
}

bool readPicture(ReadContext& context, const Json& json, PicturePart& out) {
    ObjectReader object(context, json, out.fileKeys, {"picture", "size", "ratio", "focus", "alt"});
    if (const Json* file = object.find("picture")) {
        const ReadContext::Step step = context.at("picture");
        readFileName(context, *file, "picture", !context.mayMissPictures(), out.file);
    }
    if (const Json* size = object.find("size")) {
        const ReadContext::Step step = context.at("size");
        readPair(context, *size, out.width, out.height, "[width, height] in pixels");
    }
    Ratio ratio;
    if (object.read("ratio", ratio)) out.ratio = ratio;
    if (const Json* focus = object.find("focus")) {
        const ReadContext::Step step = context.at("focus");
        readPair(context, *focus, out.focusX, out.focusY, "[across, down], each from 0 to 1");
    }
    object.read("alt", out.alt);
    return context.isSound();
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, Copy& out) {
    out.clear();
    if (json.is_string()) {
        if (!json.get_ref<const std::string&>().empty())
            out.push_back({Run::Kind::Plain, json.get<std::string>(), {}});
        return true;
    }
    if (!json.is_array()) {
        return context.mustBe("text in quotes, or a list of pieces of text", shown(json));
    }
    for (std::size_t i = 0; i < json.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        Run run;
        if (json[i].is_string()) {
            run.text = json[i].get<std::string>();
        } else {
            readRun(context, json[i], run);
        }
        out.push_back(std::move(run));
    }
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Part& out) {
    const bool isPicture = json.is_object() && json.contains("picture");
    const bool isText = json.is_object() && json.contains("role");
    if (isPicture == isText) {
        return context.wrong(isPicture ? "This part is a picture and a text at once."
                                       : "This part is neither a picture nor a text.",
                             isPicture ? R"(Keep "picture" or "role", not both.)"
                                       : R"(Add "picture" with a file name, or "role" such as "heading".)");
    }
    if (isPicture) return readPicture(context, json, out.emplace<PicturePart>());
    return readText(context, json, out.emplace<TextPart>());
}

bool readValue(ReadContext& context, const Json& json, Card& out) {
    ObjectReader object(context, json, out.fileKeys, {"parts"});
    if (const Json* parts = object.find("parts")) {
        const ReadContext::Step step = context.at("parts");
        readList(context, *parts, mostParts, out.parts);
    }
    return context.isSound();
}

}  // namespace tenter::project
