// The structs of a project as JSON: reading and writing.
#pragma once

#include "project/project.h"
#include "project/settings_json.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, Copy& out);
bool readValue(ReadContext& context, const Json& json, Part& out);
bool readValue(ReadContext& context, const Json& json, Card& out);
bool readValue(ReadContext& context, const Json& json, Band& out);
bool readValue(ReadContext& context, const Json& json, Variant& out);
bool readValue(ReadContext& context, const Json& json, Scrollbar& out);
bool readValue(ReadContext& context, const Json& json, Shift& out);
bool readValue(ReadContext& context, const Json& json, Container& out);
bool readValue(ReadContext& context, const Json& json, ContainerChange& out);
bool readValue(ReadContext& context, const Json& json, PageRange& out);
bool readValue(ReadContext& context, const Json& json, Page& out);
bool readValue(ReadContext& context, const Json& json, FontEntry& out);
bool readValue(ReadContext& context, const Json& json, Given& out);
bool readValue(ReadContext& context, const Json& json, wording::Sentence& out);
bool readValue(ReadContext& context, const Json& json, RoleWishes& out);
bool readValue(ReadContext& context, const Json& json, Wishes& out);
bool readValue(ReadContext& context, const Json& json, Limits& out);
bool readValue(ReadContext& context, const Json& json, Silence& out);
bool readValue(ReadContext& context, const Json& json, Checking& out);
bool readValue(ReadContext& context, const Json& json, Project& out);

Json written(const Copy& value);
Json written(const Part& value);
Json written(const Card& value);
Json written(const Band& value);
Json written(const Variant& value);
Json written(const Scrollbar& value);
Json written(const Container& value);
Json written(const ContainerChange& value);
Json written(const PageRange& value);
Json written(const Page& value);
Json written(const FontEntry& value);
Json written(const Given& value);
Json written(const wording::Sentence& value);
Json written(const RoleWishes& value);
Json written(const Wishes& value);
Json written(const Limits& value);
Json written(const Silence& value);
Json written(const Checking& value);
Json written(const Project& value);

/// The name of a file that belongs to the project. It must be relative. If `mustBeThere` and the project has
/// a folder, it must exist. `kind` names it in messages: `picture` or `font`.
bool readFileName(ReadContext& context, const Json& json, const char* kind, bool mustBeThere,
                  std::string& out);

/// A list of at most `most` values.
template <class T>
bool readList(ReadContext& context, const Json& json, std::size_t most, std::vector<T>& out) {
    if (!json.is_array()) return context.mustBe("a list, written in [ ]", shown(json));
    if (!checkCount(context, json.size(), most)) return false;
    out.clear();
    for (std::size_t i = 0; i < json.size(); ++i) {
        const ReadContext::Step step = context.at(i);
        readValue(context, json[i], out.emplace_back());
    }
    return context.isSound();
}

template <class T>
Json writtenList(const std::vector<T>& values) {
    Json list = Json::array();
    for (const T& value : values)
        list.push_back(written(value));
    return list;
}

}  // namespace tenter::project
