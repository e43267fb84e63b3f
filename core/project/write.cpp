#include <algorithm>

#include "project/file.h"
#include "project/json_text.h"
#include "project/project_json.h"

namespace tenter::project {

namespace {

Json pair(double first, double second) {
    return Json::array({written(first), written(second)});
}

Json written(const Run& run) {
    switch (run.kind) {
        case Run::Kind::Plain:
            return run.text;
        case Run::Kind::Strong:
            return {{"strong", run.text}};
        case Run::Kind::Emphasis:
            return {{"emphasis", run.text}};
        case Run::Kind::Link:
            return {{"link", run.text}, {"to", run.to}};
        case Run::Kind::Break:
            return {{"break", true}};
    }
    return nullptr;
}

Json written(const PicturePart& picture) {
    ObjectWriter object(picture.fileKeys);
    object.put("picture", picture.file, true);
    // A size that is not known is not written, because 0 is not a valid size.
    if (picture.width > 0 && picture.height > 0)
        object.put("size", pair(picture.width, picture.height), true);
    if (picture.ratio) object.put("ratio", project::written(*picture.ratio), true);
    object.put("focus", pair(picture.focusX, picture.focusY), picture.focusX != 0.5 || picture.focusY != 0.5);
    object.put("alt", picture.alt, !picture.alt.empty());
    return object.take();
}

Json written(const TextPart& text) {
    ObjectWriter object(text.fileKeys);
    object.put("role", text.role, true);
    object.put("copy", project::written(text.copy), !text.copy.empty());
    object.put("link", text.link, !text.link.empty());
    object.put("name", text.name, !text.name.empty());
    return object.take();
}

/// The oldest version of the format that can hold the project.
int versionOf(const Project& value) {
    const auto isList = [](const wording::Sentence& sentence) { return !sentence.isVerbatim(); };
    const bool hasLists = value.row().given && std::ranges::any_of(value.row().given->unread, isList);
    return hasLists ? 2 : 1;
}

}  // namespace

Json written(const Copy& value) {
    if (value.empty()) return "";
    if (value.size() == 1 && value.front().kind == Run::Kind::Plain) return value.front().text;
    Json runs = Json::array();
    for (const Run& run : value)
        runs.push_back(written(run));
    return runs;
}

Json written(const Part& value) {
    return std::visit([](const auto& part) { return written(part); }, value);
}

Json written(const Card& value) {
    ObjectWriter object(value.fileKeys);
    object.putUnlessEmpty("parts", writtenList(value.parts));
    return object.take();
}

Json written(const Band& value) {
    ObjectWriter object(value.fileKeys);
    if (value.upTo) object.put("upTo", written(*value.upTo), true);
    object.putUnlessEmpty("set", written(value.set));
    return object.take();
}

Json written(const Variant& value) {
    ObjectWriter object(value.fileKeys);
    object.put("class", value.className, true);
    object.put("name", value.name, !value.name.empty());
    object.putUnlessEmpty("set", written(value.set));
    object.put("bands", writtenList(value.bands), true);
    return object.take();
}

Json written(const Scrollbar& value) {
    const Scrollbar usual;
    ObjectWriter object(value.fileKeys);
    object.put("width", written(value.width), value.width != usual.width);
    object.put("always", value.always, value.always != usual.always);
    return object.take();
}

Json written(const Shift& value) {
    ObjectWriter object(value.fileKeys);
    object.put("percent", written(value.percent), value.percent != 0);
    object.put("px", written(value.px), value.px != 0);
    return object.take();
}

Json written(const Container& value) {
    const Container usual;
    ObjectWriter object(value.fileKeys);
    object.put("width", written(value.width), value.width != usual.width);
    object.put("maxWidth", written(value.maxWidth), value.maxWidth != usual.maxWidth);
    object.put("addedWidth", written(value.addedWidth), value.addedWidth != 0);
    object.put("place", written(value.place), value.place != usual.place);
    object.putUnlessEmpty("shift", written(value.shift));
    object.putUnlessEmpty("padding", written(value.padding));
    object.put("background", written(value.background), value.background != usual.background);
    return object.take();
}

Json written(const ContainerChange& value) {
    ObjectWriter object(value.fileKeys);
    if (value.width) object.put("width", written(*value.width), true);
    if (value.maxWidth) object.put("maxWidth", written(*value.maxWidth), true);
    if (value.addedWidth) object.put("addedWidth", written(*value.addedWidth), true);
    if (value.place) object.put("place", written(*value.place), true);
    if (value.shift) object.put("shift", written(*value.shift), true);
    object.putUnlessEmpty("padding", written(value.padding));
    if (value.background) object.put("background", written(*value.background), true);
    return object.take();
}

Json written(const PageRange& value) {
    ObjectWriter object(value.fileKeys);
    if (value.upTo) object.put("upTo", written(*value.upTo), true);
    if (value.rootSize) object.put("rootSize", written(*value.rootSize), true);
    object.putUnlessEmpty("container", written(value.container));
    return object.take();
}

Json written(const Page& value) {
    const Page usual;
    ObjectWriter object(value.fileKeys);
    object.putUnlessEmpty("scrollbar", written(value.scrollbar));
    object.put("rootSize", written(value.rootSize), value.rootSize != usual.rootSize);
    object.put("readerSize", written(value.readerSize), value.readerSize != usual.readerSize);
    object.putUnlessEmpty("container", written(value.container));
    object.putUnlessEmpty("ranges", writtenList(value.ranges));
    return object.take();
}

Json written(const FontEntry& value) {
    const FontEntry usual;
    ObjectWriter object(value.fileKeys);
    object.put("family", value.family, true);
    object.put("file", value.file, true);
    const bool oneWeight = value.leastWeight == value.mostWeight;
    object.put("weight", oneWeight ? written(value.leastWeight) : pair(value.leastWeight, value.mostWeight),
               !oneWeight || value.leastWeight != usual.leastWeight);
    object.put("slant", written(value.slant), value.slant != usual.slant);
    return object.take();
}

Json written(const wording::Sentence& value) {
    if (value.isVerbatim()) return value.text();
    Json list = Json::array({value.text()});
    for (const wording::Sentence& one : value.values())
        list.push_back(written(one));
    return list;
}

Json written(const Given& value) {
    ObjectWriter selectors(value.selectorsFileKeys);
    for (const auto& [role, selector] : value.selectors)
        selectors.put(role, selector, true);
    ObjectWriter object(value.fileKeys);
    object.put("markup", value.markup, true);
    object.put("selectors", selectors.take(), true);
    object.put("theme", value.theme, !value.theme.empty());
    if (value.levelBefore) object.put("levelBefore", *value.levelBefore, true);
    object.put("unread", writtenList(value.unread), !value.unread.empty());
    return object.take();
}

Json written(const RoleWishes& value) {
    ObjectWriter object(value.fileKeys);
    RoleWishes::members([&](const char* key, auto member) {
        Json json = written(value.*member);
        if (!json.is_null()) object.put(key, std::move(json), true);
    });
    return object.take();
}

Json written(const Wishes& value) {
    ObjectWriter object(value.fileKeys);
    const auto put = [&](const char* key, const auto& member) {
        if (member) object.put(key, written(*member), true);
    };
    put("aim", value.aim);
    put("grid", value.grid);
    put("reserve", value.reserve);
    put("slack", value.slack);
    put("narrowSlack", value.narrowSlack);
    object.putUnlessEmpty("without", writtenList(value.without));
    object.putUnlessEmpty("roles", writtenList(value.roles));
    return object.take();
}

Json written(const Limits& value) {
    const Limits usual;
    ObjectWriter object(value.fileKeys);
    Limits::members([&](const char* key, auto member) {
        object.put(key, written(value.*member), value.*member != usual.*member);
    });
    return object.take();
}

Json written(const Silence& value) {
    ObjectWriter object(value.fileKeys);
    object.put("check", value.check, true);
    object.put("reason", value.reason, true);
    return object.take();
}

Json written(const Checking& value) {
    ObjectWriter object(value.fileKeys);
    object.putUnlessEmpty("silenced", writtenList(value.silenced));
    object.putUnlessEmpty("limits", written(value.limits));
    return object.take();
}

Json written(const Project& value) {
    const Project usual;
    ObjectWriter range(value.rangeFileKeys);
    range.put("from", written(value.leastWidth), value.leastWidth != usual.leastWidth);
    range.put("to", written(value.mostWidth), value.mostWidth != usual.mostWidth);

    ObjectWriter object(value.fileKeys);
    object.put("format", "tenter-project", true);
    object.put("version", versionOf(value), true);
    object.put("name", value.name, true);
    object.put("row", value.row().name, value.row().name != usual.row().name);
    object.put("language", value.language, value.language != usual.language);
    object.put("direction", value.rightToLeft ? "rtl" : "ltr", value.rightToLeft != usual.rightToLeft);
    object.put("headingLevel", value.row().headingLevel,
               value.row().headingLevel != usual.row().headingLevel);
    object.put("unit", value.unit == units::Unit::Px ? "px" : "rem", value.unit != usual.unit);
    object.putUnlessEmpty("range", range.take());
    object.putUnlessEmpty("page", written(value.page));
    object.putUnlessEmpty("fonts", writtenList(value.fonts));
    object.putUnlessEmpty("style", written(value.row().style));
    object.put("cards", writtenList(value.row().cards), true);
    object.put("variants", writtenList(value.row().variants), true);
    if (value.row().wishes) object.put("wishes", written(*value.row().wishes), true);
    object.putUnlessEmpty("checks", written(value.checking));
    if (value.row().given) object.put("given", written(*value.row().given), true);
    return object.take();
}

std::string write(const Project& project) {
    return prettyJson(written(project));
}

}  // namespace tenter::project
