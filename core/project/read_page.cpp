#include "project/project_json.h"
#include "project/rules.h"

namespace tenter::project {

namespace {

bool readShift(ReadContext& context, const Json& json, Shift& out) {
    ObjectReader object(context, json, out.fileKeys, {"percent", "px"});
    object.read("percent", out.percent);
    object.read("px", out.px);
    return context.isSound();
}

/// Reads a container or a change of one: they have the same members.
template <class AnyContainer>
bool readContainer(ReadContext& context, const Json& json, AnyContainer& out) {
    ObjectReader object(context, json, out.fileKeys,
                        {"width", "maxWidth", "addedWidth", "place", "shift", "padding", "background"});
    object.read("width", out.width);
    object.read("maxWidth", out.maxWidth);
    object.read("addedWidth", out.addedWidth);
    object.read("place", out.place);
    object.read("shift", out.shift);
    object.read("padding", out.padding);
    object.read("background", out.background);
    return context.isSound();
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, Scrollbar& out) {
    ObjectReader object(context, json, out.fileKeys, {"width", "always"});
    object.read("width", out.width);
    object.read("always", out.always);
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Shift& out) {
    return readShift(context, json, out);
}

bool readValue(ReadContext& context, const Json& json, Container& out) {
    return readContainer(context, json, out);
}

bool readValue(ReadContext& context, const Json& json, ContainerChange& out) {
    return readContainer(context, json, out);
}

bool readValue(ReadContext& context, const Json& json, PageRange& out) {
    ObjectReader object(context, json, out.fileKeys, {"upTo", "rootSize", "container"});
    object.read("upTo", out.upTo);
    object.read("rootSize", out.rootSize);
    object.read("container", out.container);
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, Page& out) {
    ObjectReader object(context, json, out.fileKeys,
                        {"scrollbar", "rootSize", "readerSize", "container", "ranges"});
    object.read("scrollbar", out.scrollbar);
    object.read("rootSize", out.rootSize);
    object.read("readerSize", out.readerSize);
    object.read("container", out.container);
    if (const Json* ranges = object.find("ranges")) {
        const ReadContext::Step step = context.at("ranges");
        readList(context, *ranges, mostPageRanges, out.ranges);
    }
    return context.isSound();
}

bool readValue(ReadContext& context, const Json& json, FontEntry& out) {
    ObjectReader object(context, json, out.fileKeys, {"family", "file", "weight", "slant"});
    object.require("family", out.family, "Add the name of the font family.");
    if (const Json* file = object.find("file")) {
        const ReadContext::Step step = context.at("file");
        readFileName(context, *file, "font", true, out.file);
    } else if (object.isObject()) {
        object.missing("file", "Add the name of the font file.");
    }
    if (const Json* weight = object.find("weight")) {
        const ReadContext::Step step = context.at("weight");
        if (weight->is_array()) {
            readPair(context, *weight, out.leastWeight, out.mostWeight, "[smallest, largest]");
        } else if (readValue(context, *weight, out.leastWeight)) {
            out.mostWeight = out.leastWeight;
        }
    }
    object.read("slant", out.slant);
    return context.isSound();
}

bool readFileName(ReadContext& context, const Json& json, const char* kind, bool mustBeThere,
                  std::string& out) {
    if (!readValue(context, json, out) || !checkFileName(context, out, kind)) return false;
    const std::filesystem::path file(out);
    if (file.is_absolute()) {
        return context.wrong("The file name " + inQuotes(out) + " is absolute.",
                             "Write it relative to the folder of the project file.");
    }
    std::error_code error;
    if (mustBeThere && !context.folder().empty() &&
        !std::filesystem::is_regular_file(context.folder() / file, error)) {
        return context.wrong(std::string("The ") + kind + " file " + inQuotes(out) + " does not exist.",
                             "Put it into the folder of the project file, or correct its name.");
    }
    return true;
}

}  // namespace tenter::project
